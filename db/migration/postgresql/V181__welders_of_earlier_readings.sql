-- Who welded what was read before this program: somebody of the crew by their number, anybody else by a name that is kept
-- apart and can be erased.
create table drift_welder (
    history_id bigint not null,
    person_id bigint,
    words_id bigint,
    constraint drift_welder_history_id_pkey primary key (history_id),
    constraint drift_welder_history_id_fkey foreign key (history_id) references drift_history (id),
    constraint drift_welder_words_id_fkey foreign key (words_id) references kept_words (id),
    constraint drift_welder_person_id_words_id_check check ((person_id is null) <> (words_id is null))
);
comment on table drift_welder is 'append-only';

create table moved_welder (act_id uuid, words varchar(40), person_id bigint, salt varchar(64), at timestamp(6) with time zone);
insert into moved_welder
    select w.act_id, w.welder, p.id, replace(gen_random_uuid()::text || gen_random_uuid()::text, '-', ''), w.at
    from (select act_id, welder, min(at) as at from drift_history where welder is not null group by act_id, welder) w
        left join person p on p.initials = upper(trim(w.welder));
insert into kept_words (sha256, kept_at) select encode(sha256(convert_to(salt || chr(10) || words, 'UTF8')), 'hex'), at from moved_welder where person_id is null;
insert into kept_words_text (words_id, salt, words)
    select k.id, m.salt, m.words from moved_welder m join kept_words k on k.sha256 = encode(sha256(convert_to(m.salt || chr(10) || m.words, 'UTF8')), 'hex');
insert into drift_welder (history_id, person_id, words_id)
    select h.id, m.person_id, k.id
    from drift_history h
        join moved_welder m on m.act_id = h.act_id and m.words = h.welder
        left join kept_words k on m.person_id is null and k.sha256 = encode(sha256(convert_to(m.salt || chr(10) || m.words, 'UTF8')), 'hex');
drop table moved_welder;

alter table drift_history drop column welder;
