-- What was read with a gauge that was found wrong, judged again over the whole span of its possible error.
create table rejudgement (
    id bigint generated always as identity,
    gauge_id bigint not null,
    gauge_code varchar(20) not null,
    means varchar(4000) not null,
    last_good_on date,
    found_on date not null,
    since timestamp(6) with time zone not null,
    until timestamp(6) with time zone not null,
    error numeric(16, 6),
    unit varchar(20) not null,
    error_at numeric(16, 6),
    least numeric(16, 6),
    greatest numeric(16, 6),
    equal_within_mm numeric(10, 3) not null,
    readings bigint not null,
    last_reading_id bigint not null,
    judged bigint not null,
    reached_id bigint not null,
    state varchar(20) not null,
    opened_by bigint not null,
    opened_at timestamp(6) with time zone not null,
    closed_by bigint,
    closed_at timestamp(6) with time zone,
    closed_words varchar(4000),
    version bigint not null,
    constraint rejudgement_id_pkey primary key (id),
    constraint rejudgement_gauge_id_fkey foreign key (gauge_id) references gauge (id),
    constraint rejudgement_state_check check (state in ('JUDGING', 'OPEN', 'CLOSED')),
    constraint rejudgement_least_check check (least <= 0 and greatest >= 0)
);
create index rejudgement_state_idx on rejudgement (state);
create index reading_gauge_id_id_idx on reading (gauge_id, id);
create index characteristic_reading_id_idx on characteristic (reading_id);

-- place sorts: what is to be measured again stands first.
create table rejudged_reading (
    rejudgement_id bigint not null,
    reading_id bigint not null,
    place integer not null,
    serial varchar(20) not null,
    least numeric(20, 12),
    greatest numeric(20, 12),
    outcome varchar(20) not null,
    ground varchar(20) not null,
    in_doubt boolean not null,
    constraint rejudged_reading_rejudgement_id_reading_id_pkey primary key (rejudgement_id, reading_id),
    constraint rejudged_reading_rejudgement_id_fkey foreign key (rejudgement_id) references rejudgement (id),
    constraint rejudged_reading_reading_id_fkey foreign key (reading_id) references reading (id),
    constraint rejudged_reading_outcome_check check (outcome in ('CLEARED', 'MEASURE_AGAIN'))
);
create index rejudged_reading_place_idx on rejudged_reading (rejudgement_id, place, serial, reading_id);
create index rejudged_reading_serial_idx on rejudged_reading (rejudgement_id, serial);
comment on table rejudged_reading is 'append-only';

create table rejudged_frame (
    rejudgement_id bigint not null,
    serial varchar(20) not null,
    place integer not null,
    outcome varchar(20) not null,
    readings bigint not null,
    to_measure bigint not null,
    result varchar(20),
    result_words varchar(4000),
    result_by bigint,
    result_at timestamp(6) with time zone,
    version bigint not null,
    constraint rejudged_frame_rejudgement_id_serial_pkey primary key (rejudgement_id, serial),
    constraint rejudged_frame_rejudgement_id_fkey foreign key (rejudgement_id) references rejudgement (id),
    constraint rejudged_frame_outcome_check check (outcome in ('CLEARED', 'MEASURE_AGAIN', 'CONTACT_OWNER')),
    constraint rejudged_frame_result_check check (result in ('MEASURED_AGAIN', 'DECIDED', 'OWNER_CONTACTED'))
);
create index rejudged_frame_place_idx on rejudged_frame (rejudgement_id, place, serial);

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('gauge.error.equal', 'Verdicts', 190, 'Heights with the same gauge error', 'Readings of one gauge that lie so near each other have the same error, which cancels in their difference; further apart each has its own.', 'NUMBER', 'mm', 0, 1000);

insert into setting (code, worth, source, reason, by_person, since) values
('gauge.error.equal', '20', 'shop rule', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
