-- Who took a qualification back and why; what was taken back before nobody was asked for a reason has neither.
alter table qualification add column ended_by bigint;
alter table qualification add column end_reason_id bigint;
alter table qualification add constraint qualification_ended_by_fkey foreign key (ended_by) references person (id);
alter table qualification add constraint qualification_end_reason_id_fkey
    foreign key (end_reason_id) references kept_words (id);
