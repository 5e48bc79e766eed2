-- The register of gauges. A row is a gauge or a measuring set-up made of several gauges; both are means of measuring
-- with one number, so a reading names either in the same way. What a gauge can measure stands in its ranges: one gauge
-- may read two quantities, or be better in one part of its range than in another.
create table gauge_kind (
    code varchar(30) not null,
    name varchar(120) not null,
    constraint gauge_kind_code_pkey primary key (code),
    constraint gauge_kind_code_check check (code = upper(code) and length(trim(code)) > 0)
);

create table gauge (
    id bigint generated always as identity,
    code varchar(20) not null,
    what varchar(200) not null,
    setup boolean not null,
    aid boolean not null,
    maker_number varchar(80),
    location varchar(120) not null,
    state varchar(30) not null,
    state_reason varchar(4000) not null,
    state_since timestamp(6) with time zone not null,
    calibrated_on date,
    due_on date,
    certificate varchar(200),
    version bigint not null,
    constraint gauge_id_pkey primary key (id),
    constraint gauge_code_key unique (code),
    constraint gauge_maker_number_key unique (maker_number),
    constraint gauge_state_check check (state in ('IN_USE', 'BLOCKED', 'FAILED', 'RETIRED')),
    constraint gauge_due_on_check check (due_on >= calibrated_on)
);

create index gauge_due_on_code_idx on gauge (due_on, code);

-- u is the standard uncertainty in the unit of the range, or in per cent of the value read; none for an aid.
create table gauge_range (
    id bigint generated always as identity,
    gauge_id bigint not null,
    kind varchar(30) not null,
    unit varchar(20) not null,
    lowest numeric(16, 6),
    highest numeric(16, 6),
    resolution numeric(16, 6),
    u numeric(16, 8),
    u_percent numeric(10, 4),
    u_source varchar(400) not null,
    constraint gauge_range_id_pkey primary key (id),
    constraint gauge_range_gauge_id_fkey foreign key (gauge_id) references gauge (id),
    constraint gauge_range_kind_fkey foreign key (kind) references gauge_kind (code),
    constraint gauge_range_highest_check check (highest > lowest),
    constraint gauge_range_resolution_check check (resolution > 0),
    constraint gauge_range_u_check check (u > 0),
    constraint gauge_range_u_percent_check check (u_percent > 0),
    constraint gauge_range_u_u_percent_check check (u is null or u_percent is null)
);

create index gauge_range_gauge_id_idx on gauge_range (gauge_id);
create index gauge_range_kind_unit_idx on gauge_range (kind, unit);

create table gauge_part (
    setup_id bigint not null,
    part_id bigint not null,
    constraint gauge_part_setup_id_part_id_pkey primary key (setup_id, part_id),
    constraint gauge_part_setup_id_fkey foreign key (setup_id) references gauge (id),
    constraint gauge_part_part_id_fkey foreign key (part_id) references gauge (id),
    constraint gauge_part_setup_id_part_id_check check (setup_id <> part_id)
);

create index gauge_part_part_id_idx on gauge_part (part_id);

create table gauge_calibration (
    id bigint generated always as identity,
    gauge_id bigint not null,
    calibrated_on date not null,
    due_on date not null,
    certificate varchar(200) not null,
    as_found varchar(4000) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint gauge_calibration_id_pkey primary key (id),
    constraint gauge_calibration_gauge_id_fkey foreign key (gauge_id) references gauge (id),
    constraint gauge_calibration_gauge_id_calibrated_on_key unique (gauge_id, calibrated_on),
    constraint gauge_calibration_due_on_check check (due_on >= calibrated_on)
);

-- What was found when a gauge failed: everything needed to judge again what was read with it since it was last good.
create table gauge_failure (
    id bigint generated always as identity,
    gauge_id bigint not null,
    found_on date not null,
    last_good_on date,
    error numeric(16, 6),
    unit varchar(20) not null,
    error_at numeric(16, 6),
    note varchar(4000) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint gauge_failure_id_pkey primary key (id),
    constraint gauge_failure_gauge_id_fkey foreign key (gauge_id) references gauge (id)
);

create index gauge_failure_gauge_id_idx on gauge_failure (gauge_id);

comment on table gauge_calibration is 'append-only: calibrations of gauges';
comment on table gauge_failure is 'append-only: what was found wrong with gauges';

insert into gauge_kind (code, name) values
('CALLIPER', 'Calliper'),
('LONG-CALLIPER', 'Long calliper or beam trammel'),
('SCALE-RULE', 'Steel rule or long scale'),
('TAPE', 'Tape or stop with scale'),
('HEIGHT', 'Height gauge'),
('PLATE', 'Surface plate'),
('MANDREL', 'Mandrel or dummy axle'),
('PROTRACTOR', 'Protractor'),
('LEVEL', 'Level'),
('BORE', 'Bore gauge'),
('BALL-MIC', 'Ball micrometer'),
('WALL', 'Wall thickness gauge'),
('FEELER', 'Feeler'),
('DIAL', 'Dial indicator'),
('GO-NO-GO', 'Go and no-go gauge'),
('JIG-SCALE', 'Scale of a jig'),
('JIG-CHECK', 'Jig check with master bar'),
('TORQUE', 'Torque tool'),
('FILM-EDDY', 'Coating gauge, eddy current'),
('FILM-MAGNETIC', 'Coating gauge, magnetic'),
('CONDUCTIVITY', 'Conductivity meter'),
('HARDNESS', 'Hardness tester'),
('SCALE', 'Weighing scale'),
('HYGRO', 'Temperature and humidity meter'),
('OXYGEN', 'Purge oxygen meter'),
('THERMOCOUPLE', 'Thermocouple with its instrument'),
('IR-TEMP', 'Infrared thermometer'),
('CONTACT-TEMP', 'Contact thermometer'),
('PRESSURE', 'Pressure gauge'),
('FLOW', 'Gas flow meter'),
('TIMER', 'Timer'),
('OHM', 'Resistance meter'),
('GLOSS', 'Gloss or colour meter'),
('TWIST', 'Set-up for twist'),
('LEAN', 'Set-up for lean'),
('OFFSET', 'Set-up for an offset from the median plane'),
('AXLE-OFFSET', 'Set-up for the rear axle''s offset'),
('YAW', 'Set-up for yaw of the axle'),
('PARALLEL', 'Set-up for parallelism'),
('RUN-OUT', 'Set-up for run-out'),
('HANGER', 'Hanger alignment set-up');
