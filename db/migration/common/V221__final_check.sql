-- What joining, fitting, the final check and packing ask for. A revision in force is never changed, only superseded.
create table build_rules (
    id bigint generated always as identity,
    letter varchar(3) not null,
    join_operations varchar(200) not null,
    fit_operations varchar(200) not null,
    final_operations varchar(200) not null,
    pack_operations varchar(200) not null,
    front_mm numeric(8, 3) not null,
    arm_mm numeric(8, 3) not null,
    bearing_mm numeric(8, 3) not null,
    dropout_mm numeric(8, 3) not null,
    bedding_stops integer not null,
    bedding_kmh numeric(6, 1) not null,
    country_items varchar(4000) not null,
    source varchar(400) not null,
    set_by bigint not null,
    set_at timestamp(6) with time zone not null,
    superseded_at timestamp(6) with time zone,
    act_id uuid not null,
    version bigint not null,
    constraint build_rules_id_pkey primary key (id),
    constraint build_rules_letter_key unique (letter),
    constraint build_rules_act_id_key unique (act_id),
    constraint build_rules_bedding_stops_check check (bedding_stops > 0),
    constraint build_rules_bedding_kmh_check check (bedding_kmh > 0)
);

-- Which parts were joined to a frame, and how far off its wheel may stand by what each part contributes.
create table join_record (
    id bigint generated always as identity,
    operation_id bigint not null,
    parts varchar(200) not null,
    front_mm numeric(8, 3) not null,
    arm_mm numeric(8, 3) not null,
    bearing_mm numeric(8, 3) not null,
    dropout_mm numeric(8, 3) not null,
    rss_mm numeric(8, 2) not null,
    worst_mm numeric(8, 3) not null,
    words varchar(200) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint join_record_id_pkey primary key (id),
    constraint join_record_act_id_key unique (act_id),
    constraint join_record_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index join_record_operation_id_idx on join_record (operation_id);
comment on table join_record is 'append-only: the newest of an operation stands';

-- A brake bedded: stops and speed beside what its pads' own sheet asks for.
create table bedding_record (
    id bigint generated always as identity,
    operation_id bigint not null,
    brake varchar(10) not null,
    stops integer not null,
    kmh numeric(6, 1) not null,
    asked_stops integer not null,
    asked_kmh numeric(6, 1) not null,
    source varchar(200) not null,
    clear boolean not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint bedding_record_id_pkey primary key (id),
    constraint bedding_record_act_id_key unique (act_id),
    constraint bedding_record_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint bedding_record_brake_check check (brake in ('FRONT', 'REAR'))
);
create index bedding_record_operation_id_idx on bedding_record (operation_id);
comment on table bedding_record is 'append-only: the newest of a brake stands';

create table ride_record (
    id bigint generated always as identity,
    operation_id bigint not null,
    rider_id bigint not null,
    good boolean not null,
    words varchar(400) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint ride_record_id_pkey primary key (id),
    constraint ride_record_act_id_key unique (act_id),
    constraint ride_record_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index ride_record_operation_id_idx on ride_record (operation_id);
comment on table ride_record is 'append-only: the newest of an operation stands';

-- What the country of the order asks for, ticked one by one.
create table country_tick (
    id bigint generated always as identity,
    operation_id bigint not null,
    item varchar(120) not null,
    there boolean not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint country_tick_id_pkey primary key (id),
    constraint country_tick_act_id_key unique (act_id),
    constraint country_tick_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index country_tick_operation_id_idx on country_tick (operation_id);
comment on table country_tick is 'append-only: the newest of an item stands';

-- Frame, box and paper scanned: one serial.
create table pack_record (
    id bigint generated always as identity,
    operation_id bigint not null,
    serial varchar(20) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint pack_record_id_pkey primary key (id),
    constraint pack_record_act_id_key unique (act_id),
    constraint pack_record_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index pack_record_operation_id_idx on pack_record (operation_id);
comment on table pack_record is 'append-only: the newest of an operation stands';

-- A customer's own part as it came: its condition, number and picture, measured against the figure of the frame's design.
create table own_part_check (
    id bigint generated always as identity,
    own_part_id bigint not null,
    order_id bigint not null,
    condition varchar(400) not null,
    maker_serial varchar(80) not null,
    photo varchar(64),
    figure varchar(20),
    measured_mm numeric(10, 3),
    nominal_mm numeric(10, 3),
    within_mm numeric(8, 3),
    conforming boolean not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint own_part_check_id_pkey primary key (id),
    constraint own_part_check_act_id_key unique (act_id),
    constraint own_part_check_own_part_id_fkey foreign key (own_part_id) references own_part (id),
    constraint own_part_check_order_id_fkey foreign key (order_id) references shop_order (id)
);
create index own_part_check_order_id_idx on own_part_check (order_id);
comment on table own_part_check is 'append-only: the newest of a part stands';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('own.part.within', 'Assembly', 10, 'Customer''s own part off the drawing', 'A fork or shock of the customer that measures further from the figure the frame was drawn for is not fitted.', 'NUMBER', 'mm', 0, 20);

insert into setting (code, worth, source, reason, by_person, since) values
('own.part.within', '2', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
