-- What the charts of a series show of each reading, and where they stand after it: a further reading then costs the same
-- however many came before it. Nothing here is a record. It is made of what was read and made anew where that changes.
create table drift_point (
    series_id bigint not null,
    place integer not null,
    point varchar(30) not null,
    piece_id bigint,
    frame varchar(60) not null,
    part varchar(20),
    amount numeric(20, 12) not null,
    nominal numeric(18, 6),
    lower_limit numeric(18, 6),
    upper_limit numeric(18, 6),
    read_at timestamp(6) with time zone not null,
    source varchar(400) not null,
    shown double precision,
    number integer,
    weighted_mean double precision,
    sum_above double precision,
    sum_below double precision,
    alarms integer,
    drifts_since integer,
    constraint drift_point_series_id_place_pkey primary key (series_id, place),
    constraint drift_point_series_id_point_key unique (series_id, point),
    constraint drift_point_series_id_fkey foreign key (series_id) references drift_series (id)
);
create index drift_point_series_id_number_idx on drift_point (series_id, number);
create index drift_point_series_id_read_at_idx on drift_point (series_id, read_at);
create index drift_point_piece_id_idx on drift_point (piece_id);
create index drift_point_frame_idx on drift_point (frame);

-- Where a series stands: how many of its readings are charted, are older than its base, cannot be charted; how many raised
-- an alarm, since which it drifts, the first
-- alarm of each chart, and the reading whose alarm tells most of it, all by number. What adds to it locks it.
create table drift_stand (
    series_id bigint not null,
    charted integer not null,
    before_base integer not null,
    not_charted integer not null,
    alarms integer not null,
    drifts_since integer,
    first_of_readings integer,
    first_of_means integer,
    first_of_sums integer,
    told integer,
    stale boolean not null,
    constraint drift_stand_series_id_pkey primary key (series_id),
    constraint drift_stand_series_id_fkey foreign key (series_id) references drift_series (id)
);
insert into drift_stand (series_id, charted, before_base, not_charted, alarms, stale)
    select id, 0, 0, 0, 0, true from drift_series;

create index cold_set_traveller_id_idx on cold_set (traveller_id);
