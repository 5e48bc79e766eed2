-- What people write of a run is kept apart and can be erased: why a frame was kept back or taken out, notes on doors and
-- the quench.
alter table oven_run_frame add column words_id bigint;
alter table oven_run_frame add constraint oven_run_frame_words_id_fkey foreign key (words_id) references kept_words (id);
alter table oven_run_door add column words_id bigint;
alter table oven_run_door add constraint oven_run_door_words_id_fkey foreign key (words_id) references kept_words (id);
alter table oven_run_quench add column words_id bigint;
alter table oven_run_quench add constraint oven_run_quench_words_id_fkey foreign key (words_id) references kept_words (id);

create table moved_words (of_what varchar(20), row_id bigint, salt varchar(64), words varchar(4000), at timestamp(6) with time zone, sha256 varchar(64));
insert into moved_words (of_what, row_id, salt, words, at)
    select 'FRAME', id, replace(gen_random_uuid()::text || gen_random_uuid()::text, '-', ''), words, coalesce(decided_at, loaded_at) from oven_run_frame where words <> ''
    union all select 'DOOR', id, replace(gen_random_uuid()::text || gen_random_uuid()::text, '-', ''), words, at from oven_run_door where words <> ''
    union all select 'QUENCH', id, replace(gen_random_uuid()::text || gen_random_uuid()::text, '-', ''), words, at from oven_run_quench where words <> '';
update moved_words set sha256 = encode(sha256(convert_to(salt || chr(10) || words, 'UTF8')), 'hex');
insert into kept_words (sha256, kept_at) select sha256, at from moved_words;
insert into kept_words_text (words_id, salt, words) select k.id, m.salt, m.words from moved_words m join kept_words k on k.sha256 = m.sha256;
update oven_run_frame r set words_id =
    (select k.id from moved_words m join kept_words k on k.sha256 = m.sha256 where m.of_what = 'FRAME' and m.row_id = r.id);
update oven_run_door r set words_id =
    (select k.id from moved_words m join kept_words k on k.sha256 = m.sha256 where m.of_what = 'DOOR' and m.row_id = r.id);
update oven_run_quench r set words_id =
    (select k.id from moved_words m join kept_words k on k.sha256 = m.sha256 where m.of_what = 'QUENCH' and m.row_id = r.id);
drop table moved_words;

alter table oven_run_frame drop column words;
alter table oven_run_door drop column words;
alter table oven_run_quench drop column words;

-- The hold of a frame that was kept back had the same words once more.
update hold set words = 'kept back from run ' || source || '; its sheet says why' where reason = 'OVEN_TRACE' and words like 'kept back from run ' || source || ': %';
