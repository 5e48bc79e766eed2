-- Readings and cold-sets: only added to.
create table reading (
    id bigint generated always as identity,
    characteristic_id bigint not null,
    operation_id bigint not null,
    traveller_id bigint not null,
    characteristic_code varchar(20) not null,
    raw_values varchar(2000) not null,
    reading_value numeric(20, 12) not null,
    unit varchar(20) not null,
    u numeric(18, 9),
    gauge_id bigint not null,
    gauge_code varchar(40) not null,
    gauge_due_on date not null,
    temperature_deg_c numeric(6, 2),
    nominal numeric(14, 6),
    lower_limit numeric(14, 6),
    upper_limit numeric(14, 6),
    rule_asked varchar(20) not null,
    rule_used varchar(20) not null,
    factor numeric(8, 4),
    factor_setting_id bigint,
    guard_band numeric(18, 9) not null,
    verdict varchar(20) not null,
    deciding boolean not null,
    confirmed boolean not null,
    alike boolean not null,
    person_id bigint not null,
    device_id bigint,
    at timestamp(6) with time zone not null,
    device_at timestamp(6) with time zone,
    act_id uuid not null,
    replaces_id bigint,
    reason varchar(1000),
    constraint reading_id_pkey primary key (id),
    constraint reading_act_id_key unique (act_id),
    constraint reading_replaces_id_key unique (replaces_id),
    constraint reading_characteristic_id_fkey foreign key (characteristic_id) references characteristic (id),
    constraint reading_replaces_id_fkey foreign key (replaces_id) references reading (id),
    constraint reading_verdict_check check (verdict in ('CONFORMING', 'NOT_CONFORMING', 'UNDECIDED', 'NOTED'))
);
create index reading_characteristic_id_idx on reading (characteristic_id);
create index reading_operation_id_idx on reading (operation_id);
create index reading_traveller_id_idx on reading (traveller_id);
comment on table reading is 'append-only';

create table cold_set (
    id bigint generated always as identity,
    characteristic_id bigint not null,
    operation_id bigint not null,
    traveller_id bigint not null,
    attempt integer not null,
    reading_before_id bigint not null,
    amount numeric(14, 6) not null,
    push_mm numeric(10, 3),
    late boolean not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    device_at timestamp(6) with time zone,
    act_id uuid not null,
    constraint cold_set_id_pkey primary key (id),
    constraint cold_set_act_id_key unique (act_id),
    constraint cold_set_reading_before_id_fkey foreign key (reading_before_id) references reading (id),
    constraint cold_set_amount_check check (amount > 0)
);
create index cold_set_operation_id_idx on cold_set (operation_id);
comment on table cold_set is 'append-only';
