-- What a test covers: the frames of its family may be so long, so tall, under so heavy a rider. Rows are only added, the
-- newest of a code is in force. A limit that is left out is not compared.
create table test_family (
    id bigint generated always as identity,
    code varchar(60) not null,
    covers varchar(200) not null,
    longest_fork_mm numeric(14, 4),
    heaviest_rider_kg numeric(14, 4),
    least_stack_mm numeric(14, 4),
    most_stack_mm numeric(14, 4),
    source varchar(4000) not null,
    by_person bigint not null,
    since timestamp(6) with time zone not null,
    constraint test_family_id_pkey primary key (id),
    constraint test_family_source_check check (length(trim(source)) > 0),
    constraint test_family_most_stack_mm_check check (most_stack_mm >= least_stack_mm)
);

create index test_family_code_id_idx on test_family (code, id);

comment on table test_family is 'append-only: what a test covered';
