-- Orders. What a customer or rider told about themselves lies in customer and rider, which can be emptied.
create table customer (
    id bigint generated always as identity,
    name varchar(200),
    contact varchar(400),
    country varchar(2) not null,
    consent_on date,
    salt varchar(32),
    erased_at timestamp(6) with time zone,
    version bigint not null,
    constraint customer_id_pkey primary key (id),
    constraint customer_country_check check (country = upper(country))
);

create table shop_order (
    id bigint generated always as identity,
    number varchar(20) not null,
    customer_id bigint not null,
    state varchar(30) not null,
    description varchar(200) not null,
    metal varchar(20) not null,
    kind varchar(40) not null,
    category varchar(30) not null,
    country varchar(2) not null,
    country_rules varchar(500) not null,
    front_brake_lever varchar(30) not null,
    price_amount numeric(12, 2),
    price_currency varchar(3) not null,
    promised_on date,
    promised_percentile numeric(5, 2),
    serial varchar(12),
    returned_frame boolean not null,
    design_id bigint,
    design_revision_id bigint,
    route_code varchar(40),
    ordered_by bigint not null,
    ordered_at timestamp(6) with time zone not null,
    entered_act uuid not null,
    began_at timestamp(6) with time zone,
    finished_at timestamp(6) with time zone,
    shipped_at timestamp(6) with time zone,
    returned_at timestamp(6) with time zone,
    closed_at timestamp(6) with time zone,
    cancelled_by bigint,
    cancelled_at timestamp(6) with time zone,
    cancelled_words bigint,
    version bigint not null,
    constraint shop_order_id_pkey primary key (id),
    constraint shop_order_cancelled_words_fkey foreign key (cancelled_words) references kept_words (id),
    constraint shop_order_number_key unique (number),
    constraint shop_order_entered_act_key unique (entered_act),
    constraint shop_order_design_id_key unique (design_id),
    constraint shop_order_customer_id_fkey foreign key (customer_id) references customer (id),
    constraint shop_order_design_id_fkey foreign key (design_id) references design (id),
    constraint shop_order_design_revision_id_fkey foreign key (design_revision_id) references design_revision (id),
    constraint shop_order_state_check check (state in ('ORDERED', 'DESIGNING', 'APPROVED', 'IN_WORK', 'READY_TO_SHIP',
        'SHIPPED', 'RETURNED', 'CANCELLED')),
    constraint shop_order_category_check check (category in ('CITY_AND_TREKKING', 'YOUNG_ADULT', 'MOUNTAIN', 'RACING',
        'OTHER')),
    constraint shop_order_front_brake_lever_check check (front_brake_lever in ('LEFT', 'RIGHT', 'NONE')),
    constraint shop_order_country_check check (country = upper(country)),
    constraint shop_order_price_amount_check check (price_amount >= 0)
);

create index shop_order_state_promised_on_idx on shop_order (state, promised_on);
create index shop_order_closed_at_id_idx on shop_order (closed_at, id);
create index shop_order_serial_idx on shop_order (serial);
create index shop_order_customer_id_idx on shop_order (customer_id);

-- Rider data in whole millimetres and kilograms; emptied with the customer.
create table rider (
    order_id bigint not null,
    height_mm numeric(7, 1),
    inseam_mm numeric(7, 1),
    arm_mm numeric(7, 1),
    foot_mm numeric(7, 1),
    mass_kg numeric(6, 1),
    flexibility varchar(500),
    version bigint not null,
    constraint rider_order_id_pkey primary key (order_id),
    constraint rider_order_id_fkey foreign key (order_id) references shop_order (id)
);

create table order_component (
    order_id bigint not null,
    line integer not null,
    what varchar(60) not null,
    description varchar(200) not null,
    constraint order_component_order_id_line_pkey primary key (order_id, line),
    constraint order_component_order_id_fkey foreign key (order_id) references shop_order (id)
);

-- A part of the customer's own: measured when it comes, never taken from memory; in our custody until it goes back.
create table own_part (
    id bigint generated always as identity,
    order_id bigint not null,
    what varchar(60) not null,
    description varchar(200) not null,
    due_on date,
    state varchar(30) not null,
    arrived_at timestamp(6) with time zone,
    arrived_by bigint,
    measured_words bigint,
    ended_at timestamp(6) with time zone,
    ended_by bigint,
    ended_words bigint,
    version bigint not null,
    constraint own_part_id_pkey primary key (id),
    constraint own_part_measured_words_fkey foreign key (measured_words) references kept_words (id),
    constraint own_part_ended_words_fkey foreign key (ended_words) references kept_words (id),
    constraint own_part_order_id_fkey foreign key (order_id) references shop_order (id),
    constraint own_part_state_check check (state in ('EXPECTED', 'WITH_US', 'GIVEN_BACK', 'LOST'))
);

create index own_part_order_id_idx on own_part (order_id);

create table order_promise (
    id bigint generated always as identity,
    order_id bigint not null,
    promised_on date not null,
    percentile numeric(5, 2) not null,
    reason_words bigint not null,
    promised_by bigint not null,
    promised_at timestamp(6) with time zone not null,
    constraint order_promise_id_pkey primary key (id),
    constraint order_promise_reason_words_fkey foreign key (reason_words) references kept_words (id),
    constraint order_promise_order_id_fkey foreign key (order_id) references shop_order (id),
    constraint order_promise_percentile_check check (percentile > 0 and percentile < 100)
);

create index order_promise_order_id_idx on order_promise (order_id);

create table order_price (
    id bigint generated always as identity,
    order_id bigint not null,
    amount numeric(12, 2) not null,
    currency varchar(3) not null,
    reason_words bigint not null,
    priced_by bigint not null,
    priced_at timestamp(6) with time zone not null,
    constraint order_price_id_pkey primary key (id),
    constraint order_price_reason_words_fkey foreign key (reason_words) references kept_words (id),
    constraint order_price_order_id_fkey foreign key (order_id) references shop_order (id)
);

create index order_price_order_id_idx on order_price (order_id);

create table order_cost (
    id bigint generated always as identity,
    order_id bigint not null,
    kind varchar(30) not null,
    hours numeric(9, 2),
    hour_rate numeric(12, 2),
    amount numeric(12, 2),
    currency varchar(3) not null,
    reason_words bigint not null,
    entered_by bigint not null,
    entered_at timestamp(6) with time zone not null,
    constraint order_cost_id_pkey primary key (id),
    constraint order_cost_reason_words_fkey foreign key (reason_words) references kept_words (id),
    constraint order_cost_order_id_fkey foreign key (order_id) references shop_order (id),
    constraint order_cost_kind_check check (kind in ('WORK', 'REWORK', 'MATERIAL', 'OUTSIDE'))
);

create index order_cost_order_id_idx on order_cost (order_id);

-- A change the customer asks for, and what the owner answered.
create table order_change (
    id bigint generated always as identity,
    order_id bigint not null,
    state varchar(30) not null,
    asked_words bigint not null,
    asked_by bigint not null,
    asked_at timestamp(6) with time zone not null,
    answer_words bigint,
    answered_by bigint,
    answered_at timestamp(6) with time zone,
    version bigint not null,
    constraint order_change_id_pkey primary key (id),
    constraint order_change_asked_words_fkey foreign key (asked_words) references kept_words (id),
    constraint order_change_answer_words_fkey foreign key (answer_words) references kept_words (id),
    constraint order_change_order_id_fkey foreign key (order_id) references shop_order (id),
    constraint order_change_state_check check (state in ('ASKED', 'AGREED', 'DECLINED'))
);

create index order_change_order_id_idx on order_change (order_id);

-- Serials ever given by this shop, one row each, and how far each year's series has gone.
create table frame_serial (
    serial varchar(12) not null,
    order_id bigint not null,
    given_at timestamp(6) with time zone not null,
    constraint frame_serial_serial_pkey primary key (serial),
    constraint frame_serial_order_id_key unique (order_id),
    constraint frame_serial_order_id_fkey foreign key (order_id) references shop_order (id)
);

create table serial_series (
    prefix varchar(2) not null,
    year_of_century varchar(2) not null,
    last_number integer not null,
    version bigint not null,
    constraint serial_series_prefix_year_of_century_pkey primary key (prefix, year_of_century),
    constraint serial_series_last_number_check check (last_number between 0 and 999)
);

-- One row: the last order number given, and what tells this database from any other, so that the mark of serials kept
-- outside it is never read for a different one.
create table order_series (
    id integer not null,
    installation uuid not null,
    last_number integer not null,
    version bigint not null,
    constraint order_series_id_pkey primary key (id),
    constraint order_series_id_check check (id = 1)
);

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('serial.prefix', 'Shop', 90, 'Letters of the serials', 'Two letters that begin every frame''s serial.', 'TEXT', '', null, null);

insert into setting (code, worth, source, reason, by_person, since) values
('serial.prefix', 'FR', 'shop default, to be set by the owner', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');

comment on table order_promise is 'append-only: every date ever promised';
comment on table order_price is 'append-only: every price ever agreed';
comment on table order_cost is 'append-only: a wrong cost is put right by one with a minus';
comment on table frame_serial is 'append-only: a serial is given once';
