-- What was recorded of each node of a frame while it was welded or brazed. A node is a step of its operation that cannot be
-- undone; it is opened before the arc and closed after it.
create table weld_purge (
    id bigint generated always as identity,
    operation_id bigint not null,
    oxygen_ppm numeric(10, 2) not null,
    guard_ppm numeric(10, 2) not null,
    most_ppm numeric(8, 1) not null,
    room_l numeric(10, 3),
    flow_l_per_min numeric(8, 2),
    volumes numeric(8, 2) not null,
    minutes numeric(8, 1),
    gauge varchar(40) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint weld_purge_id_pkey primary key (id),
    constraint weld_purge_act_id_key unique (act_id),
    constraint weld_purge_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index weld_purge_operation_id_idx on weld_purge (operation_id);
comment on table weld_purge is 'append-only: the newest of an operation stands';

create table weld_node_opened (
    id bigint generated always as identity,
    operation_id bigint not null,
    step_id bigint not null,
    node varchar(400) not null,
    procedure_id bigint not null,
    fillers varchar(400) not null,
    gases varchar(400) not null,
    interpass_degc numeric(8, 1),
    most_interpass_degc numeric(6, 1),
    gauge varchar(40),
    reason varchar(1000),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint weld_node_opened_id_pkey primary key (id),
    constraint weld_node_opened_act_id_key unique (act_id),
    constraint weld_node_opened_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint weld_node_opened_procedure_id_fkey foreign key (procedure_id) references weld_procedure (id)
);
create index weld_node_opened_operation_id_idx on weld_node_opened (operation_id);
comment on table weld_node_opened is 'append-only: the newest of a node stands';

create table weld_node_done (
    id bigint generated always as identity,
    opened_id bigint not null,
    operation_id bigint not null,
    step_id bigint not null,
    node varchar(400) not null,
    amps_least numeric(6, 1),
    amps_most numeric(6, 1),
    volts numeric(6, 2),
    amps numeric(6, 1),
    length_mm numeric(8, 1),
    seconds numeric(8, 1),
    efficiency numeric(4, 3),
    heat_kj_per_mm numeric(8, 4),
    colour varchar(20),
    fillet_mm numeric(6, 2),
    gauge varchar(40),
    words varchar(2000) not null,
    nonconformance varchar(20),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint weld_node_done_id_pkey primary key (id),
    constraint weld_node_done_act_id_key unique (act_id),
    constraint weld_node_done_opened_id_key unique (opened_id),
    constraint weld_node_done_opened_id_fkey foreign key (opened_id) references weld_node_opened (id)
);
create index weld_node_done_operation_id_idx on weld_node_done (operation_id);
comment on table weld_node_done is 'append-only';

-- A node that is cut open and welded again. One beyond the number that the procedure allows has a nonconformance.
create table weld_repair (
    id bigint generated always as identity,
    opened_id bigint not null,
    operation_id bigint not null,
    step_id bigint not null,
    node varchar(400) not null,
    number integer not null,
    reason varchar(1000) not null,
    nonconformance varchar(20),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint weld_repair_id_pkey primary key (id),
    constraint weld_repair_act_id_key unique (act_id),
    constraint weld_repair_opened_id_fkey foreign key (opened_id) references weld_node_opened (id),
    constraint weld_repair_number_check check (number > 0)
);
create index weld_repair_operation_id_idx on weld_repair (operation_id);
comment on table weld_repair is 'append-only';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('weld.purge.minutes', 'Weld', 12, 'How long a reading of the purge stands', 'Read longer ago, oxygen is read again before the next node.', 'WHOLE', 'min', 1, 240);
insert into setting (code, worth, source, reason, by_person, since) values
('weld.purge.minutes', '30', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
