-- What people write of a trace of a thermocouple, what an owner was told included, is kept apart and can be erased. And a
-- frame whose run is in doubt stays as it is only where as many agree as to a concession.
alter table oven_trace add column widened_words_id bigint;
alter table oven_trace add constraint oven_trace_widened_words_id_fkey foreign key (widened_words_id) references kept_words (id);
alter table oven_trace add column closed_words_id bigint;
alter table oven_trace add constraint oven_trace_closed_words_id_fkey foreign key (closed_words_id) references kept_words (id);
alter table oven_trace_frame add column result_words_id bigint;
alter table oven_trace_frame add constraint oven_trace_frame_result_words_id_fkey foreign key (result_words_id) references kept_words (id);

create table moved_words (of_what varchar(20), row_id bigint, salt varchar(64), words varchar(4000), at timestamp(6) with time zone, sha256 varchar(64));
insert into moved_words (of_what, row_id, salt, words, at)
    select 'RESULT', id, replace(gen_random_uuid()::text || gen_random_uuid()::text, '-', ''), result_words, coalesce(result_at, current_timestamp) from oven_trace_frame where result_words is not null
    union all select 'WIDENING', id, replace(gen_random_uuid()::text || gen_random_uuid()::text, '-', ''), widened_words, current_timestamp from oven_trace where widened_words is not null
    -- What the program wrote itself, because nothing was in doubt, it still says.
    union all select 'CLOSING', id, replace(gen_random_uuid()::text || gen_random_uuid()::text, '-', ''), closed_words, coalesce(closed_at, current_timestamp) from oven_trace
        where closed_words is not null and closed_words <> 'No run was judged, steered or watched by it since it was last right.';
update moved_words set sha256 = encode(sha256(convert_to(salt || chr(10) || words, 'UTF8')), 'hex');
insert into kept_words (sha256, kept_at) select sha256, at from moved_words;
insert into kept_words_text (words_id, salt, words) select k.id, m.salt, m.words from moved_words m join kept_words k on k.sha256 = m.sha256;
update oven_trace_frame f set result_words_id =
    (select k.id from moved_words m join kept_words k on k.sha256 = m.sha256 where m.of_what = 'RESULT' and m.row_id = f.id);
update oven_trace t set widened_words_id =
    (select k.id from moved_words m join kept_words k on k.sha256 = m.sha256 where m.of_what = 'WIDENING' and m.row_id = t.id);
update oven_trace t set closed_words_id =
    (select k.id from moved_words m join kept_words k on k.sha256 = m.sha256 where m.of_what = 'CLOSING' and m.row_id = t.id);
drop table moved_words;

alter table oven_trace drop column widened_words;
alter table oven_trace drop column closed_words;
alter table oven_trace_frame drop column result_words;

-- The hold that a result lifted had the same words once more.
update hold set lift_words = source || ': hardness was measured' where reason = 'OVEN_TRACE' and source like 'OT-%' and lift_words like 'hardness was measured: %';
update hold set lift_words = source || ': aged further' where reason = 'OVEN_TRACE' and source like 'OT-%' and lift_words like 'aged further: %';
update hold set lift_words = source || ': owner contacted' where reason = 'OVEN_TRACE' and source like 'OT-%' and lift_words like 'owner contacted: %';
update hold set lift_words = source || ': decided otherwise' where reason = 'OVEN_TRACE' and source like 'OT-%' and lift_words like 'decided otherwise: %';

-- What is put forward has a number: nobody agrees to another that took its place.
create table oven_trace_decision (
    id bigint generated always as identity,
    frame_id bigint not null,
    number integer not null,
    words_id bigint not null,
    changes_what_was_ordered boolean not null,
    customer_words_id bigint,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint oven_trace_decision_id_pkey primary key (id),
    constraint oven_trace_decision_frame_id_number_key unique (frame_id, number),
    constraint oven_trace_decision_frame_id_fkey foreign key (frame_id) references oven_trace_frame (id),
    constraint oven_trace_decision_words_id_fkey foreign key (words_id) references kept_words (id),
    constraint oven_trace_decision_customer_words_id_fkey foreign key (customer_words_id) references kept_words (id),
    constraint oven_trace_decision_changes_what_was_ordered_check check (customer_words_id is not null or not changes_what_was_ordered)
);
comment on table oven_trace_decision is 'append-only';

create table oven_trace_agreement (
    id bigint generated always as identity,
    decision_id bigint not null,
    person_id bigint not null,
    agreed_as varchar(20) not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint oven_trace_agreement_id_pkey primary key (id),
    constraint oven_trace_agreement_decision_id_agreed_as_key unique (decision_id, agreed_as),
    constraint oven_trace_agreement_decision_id_fkey foreign key (decision_id) references oven_trace_decision (id)
);
comment on table oven_trace_agreement is 'append-only';
