-- Hole saws of the shop, each by its own label.
create table hole_saw (
    id bigint generated always as identity,
    code varchar(20) not null,
    what varchar(100) not null,
    diameter_mm numeric(8, 3) not null,
    retired_on date,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    version bigint not null,
    constraint hole_saw_id_pkey primary key (id),
    constraint hole_saw_code_key unique (code),
    constraint hole_saw_act_id_key unique (act_id),
    constraint hole_saw_diameter_mm_check check (diameter_mm > 0)
);

-- A hole saw as it was measured over its teeth, and until when that stands.
create table hole_saw_check (
    id bigint generated always as identity,
    saw varchar(20) not null,
    measured_mm numeric(8, 3) not null,
    worn_mm numeric(8, 3) not null,
    most_worn_mm numeric(8, 3) not null,
    due_on date not null,
    gauge varchar(40) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint hole_saw_check_id_pkey primary key (id),
    constraint hole_saw_check_act_id_key unique (act_id)
);
create index hole_saw_check_saw_idx on hole_saw_check (saw);
comment on table hole_saw_check is 'append-only: the newest of a saw stands';

-- A tube of a frame as it was measured after saw and mitre, beside what its own drawing asks of it.
create table tube_cut (
    id bigint generated always as identity,
    operation_id bigint not null,
    piece varchar(30) not null,
    called varchar(60) not null,
    blank_mm numeric(8, 2) not null,
    wanted_mm numeric(8, 2) not null,
    length_gauge varchar(40) not null,
    phase_deg numeric(8, 2),
    phase_gauge varchar(40),
    angle_gauge varchar(40),
    gap_gauge varchar(40),
    wall_gauge varchar(40),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint tube_cut_id_pkey primary key (id),
    constraint tube_cut_act_id_key unique (act_id),
    constraint tube_cut_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index tube_cut_operation_id_idx on tube_cut (operation_id);
comment on table tube_cut is 'append-only: the newest of a piece at an operation stands';

-- A mitred end of it.
create table tube_cut_end (
    id bigint generated always as identity,
    tube_cut_id bigint not null,
    place smallint not null,
    mate varchar(60) not null,
    saw varchar(20) not null,
    angle_deg numeric(8, 2) not null,
    wanted_deg numeric(8, 2) not null,
    wall_mm numeric(8, 3) not null,
    wanted_wall_mm numeric(8, 3) not null,
    gaps_mm varchar(200) not null,
    constraint tube_cut_end_id_pkey primary key (id),
    constraint tube_cut_end_tube_cut_id_place_key unique (tube_cut_id, place),
    constraint tube_cut_end_tube_cut_id_fkey foreign key (tube_cut_id) references tube_cut (id)
);
comment on table tube_cut_end is 'append-only: measured once with its tube';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('cut.operations', 'Cutting', 70, 'Operations at which cuts are recorded', 'Codes parted by semicolons. There every tube of a frame is measured against its own drawing, as soon as a hole saw is registered.', 'TEXT', '', null, null),
('cut.saw.worn', 'Cutting', 71, 'How far a hole saw may be worn', 'So much below its mark; a smaller saw leaves the cut standing off its mate.', 'NUMBER', 'mm', 0, 2),
('cut.saw.days', 'Cutting', 72, 'How long a hole saw stands as it was measured', 'Then it is measured again before it cuts.', 'WHOLE', 'd', 1, 90);

insert into setting (code, worth, source, reason, by_person, since) values
('cut.operations', '030', 'starter routes', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('cut.saw.worn', '0.2', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('cut.saw.days', '7', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
