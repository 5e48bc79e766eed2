-- A customer's own part that was lost or never came may be replaced by the shop's, as the customer agreed.
alter table own_part drop constraint own_part_state_check;
alter table own_part add constraint own_part_state_check check (state in ('EXPECTED', 'WITH_US', 'GIVEN_BACK', 'LOST', 'REPLACED'));
alter table own_part add column agreed_words bigint;
alter table own_part add column replaced_at timestamp(6) with time zone;
alter table own_part add column replaced_by bigint;
alter table own_part add constraint own_part_agreed_words_fkey foreign key (agreed_words) references kept_words (id);
