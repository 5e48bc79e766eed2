-- Brushes, files, cloths and cleaners, each kept for one family of metals.
create table metal_tool (
    id bigint generated always as identity,
    code varchar(20) not null,
    kind varchar(20) not null,
    what varchar(100) not null,
    family varchar(20) not null,
    chlorinated boolean not null,
    retired_on date,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    version bigint not null,
    constraint metal_tool_id_pkey primary key (id),
    constraint metal_tool_code_key unique (code),
    constraint metal_tool_act_id_key unique (act_id),
    constraint metal_tool_kind_check check (kind in ('BRUSH', 'FILE', 'CLOTH', 'CLEANER')),
    constraint metal_tool_family_check check (family in ('ALUMINIUM', 'STEEL', 'TITANIUM'))
);

-- What touched the metal of a frame.
create table metal_tool_use (
    id bigint generated always as identity,
    operation_id bigint not null,
    tool varchar(20) not null,
    kind varchar(20) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint metal_tool_use_id_pkey primary key (id),
    constraint metal_tool_use_act_id_key unique (act_id),
    constraint metal_tool_use_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index metal_tool_use_operation_id_idx on metal_tool_use (operation_id);
create index metal_tool_use_tool_idx on metal_tool_use (tool);
comment on table metal_tool_use is 'append-only: everything that touched the metal stays on record';

-- Air and metal before the arc, and how far the metal was from the point at which water or ice settles on it.
create table metal_air (
    id bigint generated always as identity,
    operation_id bigint not null,
    air_degc numeric(8, 3) not null,
    humidity_percent numeric(8, 3) not null,
    metal_degc numeric(8, 3) not null,
    point_degc numeric(8, 2) not null,
    over_ice boolean not null,
    margin_k numeric(8, 2) not null,
    wanted_k numeric(8, 2) not null,
    least_degc numeric(8, 2) not null,
    least_metal_degc numeric(8, 2) not null,
    source varchar(4000) not null,
    air_gauge varchar(40) not null,
    metal_gauge varchar(40) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint metal_air_id_pkey primary key (id),
    constraint metal_air_act_id_key unique (act_id),
    constraint metal_air_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index metal_air_operation_id_idx on metal_air (operation_id);
comment on table metal_air is 'append-only: the newest of an operation stands';

-- The serial as somebody read it from the metal who did not strike it; what is not the serial of the frame is refused.
create table serial_read (
    id bigint generated always as identity,
    operation_id bigint not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint serial_read_id_pkey primary key (id),
    constraint serial_read_act_id_key unique (act_id),
    constraint serial_read_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index serial_read_operation_id_idx on serial_read (operation_id);
comment on table serial_read is 'append-only: the newest of an operation stands';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('prep.margin', 'Prep', 10, 'Metal above the dew point before the arc', 'Cold metal sweats, and damp metal welds with pores. Judged plain. Below 0 °C it is the frost point.', 'NUMBER', 'K', 0, 20),
('prep.metal', 'Prep', 11, 'Least temperature of the metal before the arc', 'Below it the clean parts are not bagged. Judged plain.', 'NUMBER', '°C', -20, 60),
('prep.minutes', 'Prep', 12, 'How long air and metal stand before the arc', 'Measured longer ago, they are measured again.', 'WHOLE', 'min', 1, 240);

insert into setting (code, worth, source, reason, by_person, since) values
('prep.margin', '3', 'common practice, as for coats', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('prep.metal', '15', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('prep.minutes', '30', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
