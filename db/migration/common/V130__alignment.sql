-- The sheet of the alignment table: raw figures as they were read, never what follows from them. A round ends where a
-- frame was bent; the next begins empty.
create table alignment_sheet (
    id bigint generated always as identity,
    operation_id bigint not null,
    traveller_id bigint not null,
    turn integer not null,
    at timestamp(6) with time zone not null,
    constraint alignment_sheet_id_pkey primary key (id),
    constraint alignment_sheet_operation_id_turn_key unique (operation_id, turn),
    constraint alignment_sheet_operation_id_fkey foreign key (operation_id) references operation (id)
);
comment on table alignment_sheet is 'append-only';

-- How a frame lies and is read; the newest of a sheet is in force.
create table alignment_set_up (
    id bigint generated always as identity,
    sheet_id bigint not null,
    datum varchar(20) not null,
    base varchar(20) not null,
    drive_up boolean not null,
    seat_low_mm numeric(9, 3) not null,
    seat_high_mm numeric(9, 3) not null,
    tube_base_mm numeric(9, 3) not null,
    mandrel_base_mm numeric(9, 3) not null,
    seat_diameter_mm numeric(9, 3),
    head_diameter_mm numeric(9, 3),
    mandrel_diameter_mm numeric(9, 3),
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint alignment_set_up_id_pkey primary key (id),
    constraint alignment_set_up_act_id_key unique (act_id),
    constraint alignment_set_up_sheet_id_fkey foreign key (sheet_id) references alignment_sheet (id),
    constraint alignment_set_up_datum_check check (datum in ('POST', 'FACES', 'POINTS')),
    constraint alignment_set_up_base_check check (base in ('TUBE', 'MANDREL'))
);
create index alignment_set_up_sheet_id_idx on alignment_set_up (sheet_id);
comment on table alignment_set_up is 'append-only';

-- A raw figure, or a point of an arm or probe. A correction names the one it replaces; one that was struck out has none.
create table alignment_reading (
    id bigint generated always as identity,
    sheet_id bigint not null,
    spot varchar(30) not null,
    name varchar(60) not null,
    mm numeric(12, 4),
    x_mm numeric(12, 4),
    y_mm numeric(12, 4),
    gauge_id bigint not null,
    gauge_code varchar(40) not null,
    gauge_kind varchar(40) not null,
    gauge_due_on date not null,
    u_mm numeric(18, 9) not null,
    temperature_deg_c numeric(6, 2),
    person_id bigint not null,
    device_id bigint,
    at timestamp(6) with time zone not null,
    device_at timestamp(6) with time zone,
    act_id uuid not null,
    place integer not null,
    replaces_id bigint,
    reason varchar(1000),
    constraint alignment_reading_id_pkey primary key (id),
    constraint alignment_reading_act_id_place_key unique (act_id, place),
    constraint alignment_reading_replaces_id_key unique (replaces_id),
    constraint alignment_reading_sheet_id_fkey foreign key (sheet_id) references alignment_sheet (id),
    constraint alignment_reading_replaces_id_fkey foreign key (replaces_id) references alignment_reading (id),
    constraint alignment_reading_reason_check check (replaces_id is null or length(trim(reason)) > 0),
    constraint alignment_reading_mm_check check (mm is not null or replaces_id is not null)
);
create index alignment_reading_sheet_id_idx on alignment_reading (sheet_id);
create index alignment_reading_gauge_id_idx on alignment_reading (gauge_id);
comment on table alignment_reading is 'append-only';

-- What was computed from them, and given to be judged, in one act.
create table alignment_reduction (
    id bigint generated always as identity,
    sheet_id bigint not null,
    set_up_id bigint not null,
    residual_mm numeric(12, 6),
    residual_most_mm numeric(12, 6) not null,
    farthest varchar(60),
    post_mm numeric(12, 4),
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint alignment_reduction_id_pkey primary key (id),
    constraint alignment_reduction_act_id_key unique (act_id),
    constraint alignment_reduction_sheet_id_fkey foreign key (sheet_id) references alignment_sheet (id),
    constraint alignment_reduction_set_up_id_fkey foreign key (set_up_id) references alignment_set_up (id)
);
create index alignment_reduction_sheet_id_idx on alignment_reduction (sheet_id);
comment on table alignment_reduction is 'append-only';

-- The raw figures a reduction was computed from.
create table alignment_used (
    reduction_id bigint not null,
    reading_id bigint not null,
    constraint alignment_used_reduction_id_reading_id_pkey primary key (reduction_id, reading_id),
    constraint alignment_used_reduction_id_fkey foreign key (reduction_id) references alignment_reduction (id),
    constraint alignment_used_reading_id_fkey foreign key (reading_id) references alignment_reading (id)
);
create index alignment_used_reading_id_idx on alignment_used (reading_id);
comment on table alignment_used is 'append-only';

-- A deviation of a reduction: what is judged, and its uncertainty with and without what the figures share.
create table alignment_deviation (
    id bigint generated always as identity,
    reduction_id bigint not null,
    deviation varchar(40) not null,
    amount numeric(20, 12) not null,
    u numeric(18, 9) not null,
    u_independent numeric(18, 9) not null,
    constraint alignment_deviation_id_pkey primary key (id),
    constraint alignment_deviation_reduction_id_deviation_key unique (reduction_id, deviation),
    constraint alignment_deviation_reduction_id_fkey foreign key (reduction_id) references alignment_reduction (id)
);
comment on table alignment_deviation is 'append-only';

-- Its budget, line by line.
create table alignment_budget (
    deviation_id bigint not null,
    kind varchar(30) not null,
    u numeric(18, 9) not null,
    u_independent numeric(18, 9) not null,
    share numeric(9, 6) not null,
    constraint alignment_budget_deviation_id_kind_pkey primary key (deviation_id, kind),
    constraint alignment_budget_deviation_id_fkey foreign key (deviation_id) references alignment_deviation (id)
);
comment on table alignment_budget is 'append-only';

-- Which characteristics are deviations of the table, by the name they have on the routes; the newest of a name is in
-- force, and one without deviations is measured elsewhere.
create table alignment_characteristic (
    id bigint generated always as identity,
    name varchar(120) not null,
    deviations varchar(200) not null,
    source varchar(400) not null,
    by_person bigint not null,
    since timestamp(6) with time zone not null,
    constraint alignment_characteristic_id_pkey primary key (id),
    constraint alignment_characteristic_source_check check (length(trim(source)) > 0)
);
comment on table alignment_characteristic is 'append-only: what a characteristic is on the alignment table';

insert into alignment_characteristic (name, deviations, source, by_person, since) values
('Twist, head tube against seat tube', 'TWIST', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Head tube centre offset', 'HEAD_TUBE_OFFSET', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Rear axle centre offset', 'REAR_AXLE_OFFSET', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Axle width inside', 'AXLE_WIDTH', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Dropouts parallel over 60 mm', 'DROPOUTS_FORE_AFT;DROPOUTS_UP_DOWN', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Chainstays, drive less non-drive', 'CHAINSTAY_DIFFERENCE', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Head angle as built', 'HEAD_ANGLE', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Seat angle as built', 'SEAT_ANGLE', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Stack as built', 'STACK', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Reach as built', 'REACH', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Lean of seat tube', 'SEAT_TUBE_LEAN', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Lean of head tube', 'HEAD_TUBE_LEAN', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Axle against pivot bores', 'REAR_YAW', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('Axle centre offset from pivot', 'REAR_AXLE_OFFSET', 'the starter routes', 0, timestamp with time zone '2000-01-01 00:00:00+00');

-- Several readings may come of one act: a reduction gives them together. Each says which reduction it came from.
alter table reading drop constraint reading_act_id_key;
alter table reading add constraint reading_act_id_characteristic_id_key unique (act_id, characteristic_id);
alter table reading add column reduction_id bigint;
alter table reading add constraint reading_reduction_id_fkey foreign key (reduction_id) references alignment_reduction (id);

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('table.repeatability', 'Alignment table', 10, 'Repeatability of a height', 'Standard uncertainty of reading the same place again.', 'NUMBER', 'mm', 0, 1),
('table.plate', 'Alignment table', 20, 'Surface plate', 'Standard uncertainty of a height from the flatness of the plate.', 'NUMBER', 'mm', 0, 1),
('table.clamp', 'Alignment table', 30, 'Clamping', 'Standard uncertainty of a height from how the frame lies after it was clamped anew.', 'NUMBER', 'mm', 0, 1),
('table.ovality', 'Alignment table', 40, 'Tube out of round', 'Standard uncertainty of a height on a tube; a mandrel has none of it.', 'NUMBER', 'mm', 0, 1),
('table.mandrel', 'Alignment table', 50, 'Form of mandrel and dummy axle', 'Standard uncertainty of a height on them.', 'NUMBER', 'mm', 0, 1),
('table.length', 'Alignment table', 60, 'Repeatability of a length', 'Standard uncertainty of setting a calliper on a frame again.', 'NUMBER', 'mm', 0, 1),
('table.point', 'Alignment table', 70, 'Repeatability of a point', 'Standard uncertainty of each coordinate of an arm or probe.', 'NUMBER', 'mm', 0, 1),
('table.temperature', 'Alignment table', 80, 'Temperature of frame and gauge', 'Standard uncertainty of how far they are apart; it acts on all heights together.', 'NUMBER', 'K', 0, 20),
('table.shared', 'Alignment table', 90, 'Causes that all heights of a sheet share', 'Of GAUGE, PLATE, CLAMP, parted by semicolons: what is off for all of them alike, and so falls out of differences.', 'TEXT', '', null, null),
('table.post', 'Alignment table', 100, 'Middle of the shell on its post', 'Height above the plate, where it was not read.', 'NUMBER', 'mm', 1, 600),
('table.post.u', 'Alignment table', 110, 'Height of the post', 'Standard uncertainty of that height.', 'NUMBER', 'mm', 0, 1),
('table.post.tilt', 'Alignment table', 120, 'Seat of the shell on its post', 'Standard uncertainty of how truly it stands, in each of two directions.', 'NUMBER', '°', 0, 1),
('table.residual', 'Alignment table', 130, 'Faces of the shell', 'So far a point may lie off the plane of its face; more means clean or face it first.', 'NUMBER', 'mm', 0.001, 1),
('table.height.kind', 'Alignment table', 140, 'Gauges that read a height', 'Kinds of the register, parted by semicolons.', 'TEXT', '', null, null),
('table.length.kind', 'Alignment table', 150, 'Gauges that read a length', 'Kinds of the register, parted by semicolons.', 'TEXT', '', null, null),
('table.point.kind', 'Alignment table', 160, 'Arms and probes', 'Kinds of the register, parted by semicolons.', 'TEXT', '', null, null),
('table.seat.low', 'Alignment table', 170, 'Lower station of the seat tube', 'Distance along its axis from the foot, where a sheet says nothing else.', 'NUMBER', 'mm', 0, 900),
('table.seat.high', 'Alignment table', 180, 'Upper station of the seat tube', 'Distance along its axis from the foot, where a sheet says nothing else.', 'NUMBER', 'mm', 1, 900),
('table.tube.base', 'Alignment table', 190, 'Stations of the head tube apart', 'On the tube itself, about its middle, where a sheet says nothing else.', 'NUMBER', 'mm', 1, 500),
('table.mandrel.base', 'Alignment table', 200, 'Stations of the mandrel apart', 'About the middle of the head tube, where a sheet says nothing else.', 'NUMBER', 'mm', 1, 1000),
('table.gap.span', 'Alignment table', 210, 'Span of the gaps between the dropouts', 'Between fore and aft, and between up and down.', 'NUMBER', 'mm', 10, 200),
('table.height.doubt', 'Alignment table', 220, 'Height that is asked about', 'A height on a tube so far from the post is asked about before it is kept.', 'NUMBER', 'mm', 0.1, 200);

insert into setting (code, worth, source, reason, by_person, since)
select code,
    case code when 'table.repeatability' then '0.03' when 'table.plate' then '0.006' when 'table.clamp' then '0.03'
        when 'table.ovality' then '0.04' when 'table.mandrel' then '0.005' when 'table.length' then '0.01'
        when 'table.point' then '0.02' when 'table.temperature' then '0' when 'table.shared' then 'GAUGE'
        when 'table.post' then '150' when 'table.post.u' then '0.02' when 'table.post.tilt' then '0'
        when 'table.residual' then '0.03' when 'table.height.kind' then 'HEIGHT'
        when 'table.length.kind' then 'LONG-CALLIPER; CALLIPER; SCALE-RULE' when 'table.point.kind' then 'ARM'
        when 'table.seat.low' then '100' when 'table.seat.high' then '400' when 'table.tube.base' then '90'
        when 'table.mandrel.base' then '300' when 'table.gap.span' then '60' else '5' end,
    case when unit = '' or code like 'table.seat%' or code like '%base' then 'the starter set-up of the table, to be set to the shop''s own'
        else 'common practice, to be replaced by a trial of the shop' end,
    'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'
from setting_definition where code like 'table.%';

insert into gauge_kind (code, name) values ('ARM', 'Measuring arm or probe');
