-- The shop's routes, as revisions. A released revision never changes; a new one takes its place.
create table route (
    id bigint generated always as identity,
    code varchar(20) not null,
    name varchar(120) not null,
    metal varchar(30) not null,
    kind varchar(30) not null,
    constraint route_id_pkey primary key (id),
    constraint route_code_key unique (code),
    constraint route_code_check check (code = upper(code) and length(trim(code)) > 0),
    constraint route_metal_check check (metal in ('AL6061', 'AL7005', 'STEEL', 'TI', 'ANY'))
);

-- draft_of keeps a route to one draft, released_of to one released revision: each is the route's id in that state only.
create table route_revision (
    id bigint generated always as identity,
    route_id bigint not null,
    ordinal integer not null,
    letter varchar(4) not null,
    state varchar(30) not null,
    draft_of bigint,
    released_of bigint,
    origin varchar(400) not null,
    drawn_by bigint not null,
    drawn_at timestamp(6) with time zone not null,
    released_by bigint,
    released_at timestamp(6) with time zone,
    reason_words bigint,
    content_sha256 varchar(64),
    superseded_at timestamp(6) with time zone,
    edits integer not null,
    version bigint not null,
    constraint route_revision_id_pkey primary key (id),
    constraint route_revision_route_id_fkey foreign key (route_id) references route (id),
    constraint route_revision_route_id_ordinal_key unique (route_id, ordinal),
    constraint route_revision_draft_of_key unique (draft_of),
    constraint route_revision_released_of_key unique (released_of),
    constraint route_revision_state_check check (state in ('DRAFT', 'RELEASED', 'SUPERSEDED', 'WITHDRAWN')),
    constraint route_revision_draft_of_check check ((state = 'DRAFT') = (draft_of is not null)),
    constraint route_revision_released_of_check check ((state = 'RELEASED') = (released_of is not null)),
    constraint route_revision_content_sha256_check
        check ((state in ('RELEASED', 'SUPERSEDED')) = (content_sha256 is not null))
);

create index route_revision_state_idx on route_revision (state);

create table route_operation (
    id bigint generated always as identity,
    revision_id bigint not null,
    sequence integer not null,
    code varchar(12) not null,
    name varchar(120) not null,
    station_code varchar(10) not null,
    point varchar(30) not null,
    signers varchar(120) not null,
    qualification varchar(40),
    together boolean not null,
    outside boolean not null,
    irreversible boolean not null,
    joins boolean not null,
    repeat_limit integer,
    caution varchar(160) not null,
    constraint route_operation_id_pkey primary key (id),
    constraint route_operation_revision_id_fkey foreign key (revision_id) references route_revision (id),
    constraint route_operation_revision_id_code_key unique (revision_id, code),
    constraint route_operation_point_check check (point in ('NONE', 'HOLD', 'WITNESS')),
    constraint route_operation_repeat_limit_check check (repeat_limit between 1 and 99)
);

create table route_step (
    id bigint generated always as identity,
    operation_id bigint not null,
    sequence integer not null,
    text varchar(120) not null,
    instruction varchar(400) not null,
    photo boolean not null,
    irreversible boolean not null,
    lot_kind varchar(30),
    starts_clock varchar(30),
    qualification varchar(40),
    constraint route_step_id_pkey primary key (id),
    constraint route_step_operation_id_fkey foreign key (operation_id) references route_operation (id)
);

create index route_step_operation_id_idx on route_step (operation_id);

-- Nominal and deviations carry the unit of their own row.
create table route_characteristic (
    id bigint generated always as identity,
    operation_id bigint not null,
    sequence integer not null,
    code varchar(20) not null,
    name varchar(120) not null,
    unit varchar(20) not null,
    decimals integer not null,
    from_design boolean not null,
    nominal numeric(16, 6),
    lower_deviation numeric(16, 6),
    upper_deviation numeric(16, 6),
    gauge_kind varchar(30) not null,
    points varchar(2000) not null,
    reduction varchar(30) not null,
    rule varchar(30) not null,
    signers varchar(120) not null,
    sided boolean not null,
    read_back boolean not null,
    second_person boolean not null,
    deciding boolean not null,
    cold_set_clock varchar(30),
    cold_set_attempts integer not null,
    triage_tolerances numeric(8, 3),
    cold_set_amount numeric(16, 6),
    source varchar(400) not null,
    constraint route_characteristic_id_pkey primary key (id),
    constraint route_characteristic_operation_id_fkey foreign key (operation_id) references route_operation (id),
    constraint route_characteristic_gauge_kind_fkey foreign key (gauge_kind) references gauge_kind (code),
    constraint route_characteristic_reduction_check
        check (reduction in ('SINGLE', 'MEAN', 'WORST', 'SPAN', 'GREATEST', 'LEAST')),
    constraint route_characteristic_rule_check check (rule in ('GUARDED', 'PLAIN')),
    constraint route_characteristic_decimals_check check (decimals between 0 and 6),
    constraint route_characteristic_cold_set_attempts_check check (cold_set_attempts between 0 and 9)
);

create index route_characteristic_operation_id_idx on route_characteristic (operation_id);

create table route_clock (
    id bigint generated always as identity,
    revision_id bigint not null,
    sequence integer not null,
    code varchar(30) not null,
    name varchar(120) not null,
    kind varchar(30) not null,
    minutes bigint not null,
    started_by varchar(12) not null,
    gates varchar(400) not null,
    source varchar(400) not null,
    constraint route_clock_id_pkey primary key (id),
    constraint route_clock_revision_id_fkey foreign key (revision_id) references route_revision (id),
    constraint route_clock_revision_id_code_key unique (revision_id, code),
    constraint route_clock_kind_check check (kind in ('WINDOW', 'WAIT')),
    constraint route_clock_minutes_check check (minutes between 1 and 525600)
);

-- child_revision_id is empty in a draft and is set at release to the child's revision in force then.
create table route_child (
    id bigint generated always as identity,
    revision_id bigint not null,
    sequence integer not null,
    part varchar(10) not null,
    name varchar(120) not null,
    child_route_id bigint not null,
    child_revision_id bigint,
    constraint route_child_id_pkey primary key (id),
    constraint route_child_revision_id_fkey foreign key (revision_id) references route_revision (id),
    constraint route_child_revision_id_part_key unique (revision_id, part),
    constraint route_child_child_route_id_fkey foreign key (child_route_id) references route (id),
    constraint route_child_child_revision_id_fkey foreign key (child_revision_id) references route_revision (id)
);

-- Codes that a later revision left out. Readings are on record under them, so they are not given again.
create table route_retired (
    id bigint generated always as identity,
    route_id bigint not null,
    thing varchar(30) not null,
    code varchar(30) not null,
    name varchar(120) not null,
    last_letter varchar(4) not null,
    retired_at timestamp(6) with time zone not null,
    constraint route_retired_id_pkey primary key (id),
    constraint route_retired_route_id_fkey foreign key (route_id) references route (id),
    constraint route_retired_route_id_thing_code_key unique (route_id, thing, code),
    constraint route_retired_thing_check check (thing in ('OPERATION', 'CHARACTERISTIC'))
);

-- Gauge kinds whose gauges have no stated uncertainty: their readings can only be judged on the plain limits.
insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('gauge.aids', 'Verdicts', 180, 'Gauge kinds without uncertainty', 'A route may judge what these read by the plain rule only.', 'TEXT', '', null, null);

insert into setting (code, worth, source, reason, by_person, since) values
('gauge.aids', 'FEELER, GO-NO-GO, JIG-SCALE, LEVEL, OHM, TAPE, TIMER', 'shop default, to be owned by the QA lead', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');

-- What the starter routes read with beside the gauges of the register.
insert into gauge_kind (code, name) values
('OVEN-LOG', 'Log of an oven run, evaluated'),
('METER', 'Meters of a welding set');
