-- Taps at the quench: the door's first move, and the last of the load under water. The time between them follows from both
-- clocks that saw them; what is entered by hand afterwards says so.
create table oven_run_quench_tap (
    id bigint generated always as identity,
    run_id bigint not null,
    mark varchar(10) not null,
    device_id bigint,
    device_at timestamp(6) with time zone,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint oven_run_quench_tap_id_pkey primary key (id),
    constraint oven_run_quench_tap_act_id_key unique (act_id),
    constraint oven_run_quench_tap_run_id_fkey foreign key (run_id) references oven_run (id),
    constraint oven_run_quench_tap_mark_check check (mark in ('OUT', 'IN'))
);
create index oven_run_quench_tap_run_id_idx on oven_run_quench_tap (run_id);
comment on table oven_run_quench_tap is 'append-only: taps at the door and at the water';

alter table oven_run_quench add column least_s numeric(8, 2);
alter table oven_run_quench add column late boolean default true not null;
alter table oven_run_quench add constraint oven_run_quench_least_s_check check (least_s <= delay_s);
