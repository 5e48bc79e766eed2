-- How far the metal of a frame lay from the point at which water or ice settles on it, before the arc and before the coat:
-- one table for both, with every place that was measured. The coldest place judges.
create table dew_margin (
    id bigint generated always as identity,
    operation_id bigint not null,
    purpose varchar(10) not null,
    air_degc numeric(8, 3) not null,
    humidity_percent numeric(8, 3) not null,
    metal_degc numeric(8, 3) not null,
    point_degc numeric(8, 2) not null,
    over_ice boolean not null,
    margin_k numeric(8, 2) not null,
    wanted_k numeric(10, 4) not null,
    least_degc numeric(10, 4),
    least_metal_degc numeric(10, 4) not null,
    source varchar(4000) not null,
    air_gauge varchar(40) not null,
    metal_gauge varchar(40) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint dew_margin_id_pkey primary key (id),
    constraint dew_margin_act_id_operation_id_key unique (act_id, operation_id),
    constraint dew_margin_purpose_check check (purpose in ('ARC', 'COAT')),
    constraint dew_margin_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index dew_margin_operation_id_idx on dew_margin (operation_id);
comment on table dew_margin is 'append-only: the newest of an operation stands';

create table dew_place (
    id bigint generated always as identity,
    dew_margin_id bigint not null,
    place varchar(60) not null,
    metal_degc numeric(8, 3) not null,
    constraint dew_place_id_pkey primary key (id),
    constraint dew_place_dew_margin_id_place_key unique (dew_margin_id, place),
    constraint dew_place_dew_margin_id_fkey foreign key (dew_margin_id) references dew_margin (id)
);
comment on table dew_place is 'append-only: measured with its margin';

insert into dew_margin (operation_id, purpose, air_degc, humidity_percent, metal_degc, point_degc, over_ice, margin_k,
    wanted_k, least_degc, least_metal_degc, source, air_gauge, metal_gauge, by_person, at, act_id)
select operation_id, 'COAT', air_degc, humidity_percent, metal_degc, point_degc, over_ice, margin_k, wanted_k, null,
    least_metal_degc, source, air_gauge, metal_gauge, by_person, at, act_id
from coat_air order by id;
insert into dew_margin (operation_id, purpose, air_degc, humidity_percent, metal_degc, point_degc, over_ice, margin_k,
    wanted_k, least_degc, least_metal_degc, source, air_gauge, metal_gauge, by_person, at, act_id)
select operation_id, 'ARC', air_degc, humidity_percent, metal_degc, point_degc, over_ice, margin_k, wanted_k, least_degc,
    least_metal_degc, source, air_gauge, metal_gauge, by_person, at, act_id
from metal_air order by id;
drop table coat_air;
drop table metal_air;
