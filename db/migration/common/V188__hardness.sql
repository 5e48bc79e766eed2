-- What was found of the coupon of a run, or of a frame of it; nothing is converted from one scale to another.
create table oven_hardness (
    id bigint generated always as identity,
    run_id bigint not null,
    traveller_id bigint,
    method varchar(20) not null,
    figure numeric(10, 2) not null,
    scale varchar(60) not null,
    least numeric(10, 2),
    most numeric(10, 2),
    place varchar(60) not null,
    gauge varchar(20) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint oven_hardness_id_pkey primary key (id),
    constraint oven_hardness_act_id_key unique (act_id),
    constraint oven_hardness_run_id_fkey foreign key (run_id) references oven_run (id),
    constraint oven_hardness_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint oven_hardness_method_check check (method in ('BRINELL', 'VICKERS', 'ROCKWELL_B', 'HAND_PENETROMETER', 'REBOUND', 'CONDUCTIVITY')),
    constraint oven_hardness_figure_check check (figure > 0),
    constraint oven_hardness_least_check check (least <= most)
);
create index oven_hardness_run_id_idx on oven_hardness (run_id);
comment on table oven_hardness is 'append-only: hardness and conductivity of coupons and frames';
