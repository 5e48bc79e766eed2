-- How long a load took from the door to the water, as it was timed; the newest of a run counts.
create table oven_run_quench (
    id bigint generated always as identity,
    run_id bigint not null,
    delay_s numeric(8, 2) not null,
    words varchar(400) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint oven_run_quench_id_pkey primary key (id),
    constraint oven_run_quench_act_id_key unique (act_id),
    constraint oven_run_quench_run_id_fkey foreign key (run_id) references oven_run (id),
    constraint oven_run_quench_delay_s_check check (delay_s > 0)
);
create index oven_run_quench_run_id_idx on oven_run_quench (run_id);
comment on table oven_run_quench is 'append-only: times from door to water';
