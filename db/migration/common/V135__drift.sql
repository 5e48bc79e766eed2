-- An axis watched on a jig: a characteristic by its code, over all frames that were set up there.
create table drift_series (
    id bigint generated always as identity,
    jig_code varchar(10) not null,
    characteristic_code varchar(20) not null,
    name varchar(120) not null,
    unit varchar(20) not null,
    scaled boolean not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint drift_series_id_pkey primary key (id),
    constraint drift_series_act_id_key unique (act_id),
    constraint drift_series_jig_code_characteristic_code_key unique (jig_code, characteristic_code),
    constraint drift_series_jig_code_fkey foreign key (jig_code) references jig (code)
);
comment on table drift_series is 'append-only';

-- What the limits of a series are made of; the newest of a series is in force. Frozen: later readings change none of it.
create table drift_base (
    id bigint generated always as identity,
    series_id bigint not null,
    kind varchar(10) not null,
    centre numeric(20, 10) not null,
    sigma numeric(20, 10) not null,
    readings integer not null,
    starts_at timestamp(6) with time zone,
    ends_at timestamp(6) with time zone,
    weight numeric(6, 4) not null,
    width numeric(6, 4) not null,
    slack numeric(6, 4) not null,
    decision numeric(6, 4) not null,
    stops_jig boolean not null,
    source varchar(400) not null,
    reason varchar(1000) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint drift_base_id_pkey primary key (id),
    constraint drift_base_act_id_key unique (act_id),
    constraint drift_base_series_id_fkey foreign key (series_id) references drift_series (id),
    constraint drift_base_kind_check check (kind in ('FIRST', 'PERIOD', 'GIVEN')),
    constraint drift_base_sigma_check check (sigma > 0),
    constraint drift_base_source_check check (length(trim(source)) > 0),
    constraint drift_base_reason_check check (length(trim(reason)) > 0)
);
create index drift_base_series_id_idx on drift_base (series_id);
comment on table drift_base is 'append-only';

-- Readings from before this program, as they were written down then.
create table drift_history (
    id bigint generated always as identity,
    series_id bigint not null,
    place integer not null,
    frame varchar(60) not null,
    amount numeric(18, 6) not null,
    nominal numeric(18, 6) not null,
    lower_limit numeric(18, 6) not null,
    upper_limit numeric(18, 6) not null,
    read_at timestamp(6) with time zone not null,
    welder varchar(40),
    tube_set varchar(60),
    source varchar(400) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint drift_history_id_pkey primary key (id),
    constraint drift_history_act_id_place_key unique (act_id, place),
    constraint drift_history_series_id_fkey foreign key (series_id) references drift_series (id),
    constraint drift_history_lower_limit_upper_limit_check check (lower_limit < upper_limit),
    constraint drift_history_source_check check (length(trim(source)) > 0)
);
create index drift_history_series_id_idx on drift_history (series_id);
comment on table drift_history is 'append-only';

-- In which jig a frame, or a part of one, was set up; the newest of a traveller counts.
create table jig_use (
    id bigint generated always as identity,
    traveller_id bigint not null,
    serial varchar(40) not null,
    part varchar(20) not null,
    jig_code varchar(10) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint jig_use_id_pkey primary key (id),
    constraint jig_use_act_id_key unique (act_id),
    constraint jig_use_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint jig_use_jig_code_fkey foreign key (jig_code) references jig (code)
);
create index jig_use_traveller_id_idx on jig_use (traveller_id);
create index jig_use_jig_code_idx on jig_use (jig_code);
comment on table jig_use is 'append-only';

-- An alarm somebody was called for. A drift that goes on calls nobody again.
create table drift_alarm (
    id bigint generated always as identity,
    base_id bigint not null,
    point varchar(30) not null,
    words varchar(1000) not null,
    jig_stopped boolean not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint drift_alarm_id_pkey primary key (id),
    constraint drift_alarm_base_id_point_key unique (base_id, point),
    constraint drift_alarm_base_id_fkey foreign key (base_id) references drift_base (id)
);
comment on table drift_alarm is 'append-only';
