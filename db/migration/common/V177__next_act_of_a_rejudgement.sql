-- The act id of the next portion is drawn at random and kept with the re-judgement. It followed from the numbers of both,
-- so anybody could use it up beforehand and the portion was never judged.
alter table rejudgement add column next_act uuid default gen_random_uuid() not null;
alter table rejudgement alter column next_act drop default;
