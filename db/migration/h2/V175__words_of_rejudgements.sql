-- What people write of a re-judgement, what an owner was told included, is kept apart and can be erased.
alter table rejudgement add column closed_words_id bigint;
alter table rejudgement add constraint rejudgement_closed_words_id_fkey foreign key (closed_words_id) references kept_words (id);
alter table rejudged_frame add column result_words_id bigint;
alter table rejudged_frame add constraint rejudged_frame_result_words_id_fkey foreign key (result_words_id) references kept_words (id);

create table moved_words (rejudgement_id bigint, serial varchar(20), salt varchar(64), words varchar(4000), at timestamp(6) with time zone, sha256 varchar(64));
insert into moved_words (rejudgement_id, serial, salt, words, at)
    select rejudgement_id, serial, lower(rawtohex(secure_rand(32))), result_words, coalesce(result_at, current_timestamp) from rejudged_frame where result_words is not null
    -- What the program wrote itself, because nothing had been read with the gauge, it still says.
    union all select id, null, lower(rawtohex(secure_rand(32))), closed_words, coalesce(closed_at, current_timestamp) from rejudgement where closed_words is not null and closed_by <> 0;
update moved_words set sha256 = lower(rawtohex(hash('SHA-256', stringtoutf8(salt || char(10) || words))));
insert into kept_words (sha256, kept_at) select sha256, at from moved_words;
insert into kept_words_text (words_id, salt, words) select k.id, m.salt, m.words from moved_words m join kept_words k on k.sha256 = m.sha256;
update rejudged_frame f set result_words_id =
    (select k.id from moved_words m join kept_words k on k.sha256 = m.sha256 where m.rejudgement_id = f.rejudgement_id and m.serial = f.serial)
    where result_words is not null;
update rejudgement r set closed_words_id =
    (select k.id from moved_words m join kept_words k on k.sha256 = m.sha256 where m.rejudgement_id = r.id and m.serial is null)
    where closed_words is not null and closed_by <> 0;
drop table moved_words;

alter table rejudgement drop column closed_words;
alter table rejudged_frame drop column result_words;

-- The hold that a result lifted had the same words once more.
update hold set lift_words = source || ': measured again' where source like 'RJ-%' and lift_words like 'measured again: %';
update hold set lift_words = source || ': decided without measuring' where source like 'RJ-%' and lift_words like 'decided without measuring: %';
update hold set lift_words = source || ': owner contacted' where source like 'RJ-%' and lift_words like 'owner contacted: %';
