-- How far a kind of characteristic may lie from what the drawing says. Values are only added to, the newest is in force.
create table tolerance_class (
    code varchar(40) not null,
    sequence integer not null,
    name varchar(120) not null,
    explanation varchar(400) not null,
    unit varchar(20) not null,
    constraint tolerance_class_code_pkey primary key (code)
);

create table tolerance (
    id bigint generated always as identity,
    class_code varchar(40) not null,
    lower_deviation numeric(14, 4),
    upper_deviation numeric(14, 4),
    source varchar(4000) not null,
    reason varchar(4000) not null,
    by_person bigint not null,
    since timestamp(6) with time zone not null,
    constraint tolerance_id_pkey primary key (id),
    constraint tolerance_class_code_fkey foreign key (class_code) references tolerance_class (code),
    constraint tolerance_source_check check (length(trim(source)) > 0),
    constraint tolerance_upper_deviation_check check (upper_deviation >= lower_deviation)
);

create index tolerance_class_code_id_idx on tolerance (class_code, id);

comment on table tolerance is 'append-only: the values a tolerance class had';

-- Characteristics whose nominal a draft took from its drawing; one that was typed stands in no line here.
create table design_from_drawing (
    revision_id bigint not null,
    characteristic varchar(40) not null,
    constraint design_from_drawing_revision_id_characteristic_pkey primary key (revision_id, characteristic),
    constraint design_from_drawing_revision_id_fkey foreign key (revision_id) references design_revision (id)
);

insert into tolerance_class (code, sequence, name, explanation, unit) values
('TUBE_OUTSIDE', 10, 'Outside of a tube', 'As it comes into the shop.', 'mm'),
('TUBE_WALL', 20, 'Wall of a tube', 'As it comes into the shop.', 'mm'),
('CUT_LENGTH', 30, 'Length of a blank', 'As it is sawn.', 'mm'),
('CUT_ANGLE', 40, 'Angle of a mitre', 'On the fixture and on the part.', '°'),
('JIG_PLACE', 50, 'Place in the jig', 'As it is read back, by two people.', 'mm'),
('JIG_ANGLE', 60, 'Angle in the jig', 'As it is read back, by two people.', '°'),
('BUILT_PLACE', 70, 'Stack and reach as built', 'After welding and heat treatment.', 'mm'),
('BUILT_ANGLE', 80, 'Angle as built', 'After welding and heat treatment.', '°'),
('WHEELBASE', 90, 'Wheelbase', 'Between the axles, as built.', 'mm'),
('AXLE_HEIGHT', 100, 'Height of an axle over the shell', 'As built.', 'mm'),
('AXLE_WIDTH', 110, 'Width inside the dropouts', 'Never less than the hub wants.', 'mm'),
('SHELL_WIDTH', 120, 'Width of the shell', 'Faced.', 'mm'),
('SHOCK_LENGTH', 130, 'Shock, eye to eye', 'With its bushings in.', 'mm');

insert into tolerance (class_code, lower_deviation, upper_deviation, source, reason, by_person, since)
select code,
    case code when 'TUBE_OUTSIDE' then -0.1 when 'TUBE_WALL' then -0.05 when 'CUT_LENGTH' then -0.5 when 'CUT_ANGLE' then -0.2
        when 'JIG_PLACE' then -0.3 when 'JIG_ANGLE' then -0.1 when 'BUILT_PLACE' then -2 when 'BUILT_ANGLE' then -0.3
        when 'WHEELBASE' then -3 when 'AXLE_HEIGHT' then -1 when 'AXLE_WIDTH' then 0 when 'SHELL_WIDTH' then -0.1 else -0.5 end,
    case code when 'TUBE_OUTSIDE' then 0.1 when 'TUBE_WALL' then 0.05 when 'CUT_LENGTH' then 0.5 when 'CUT_ANGLE' then 0.2
        when 'JIG_PLACE' then 0.3 when 'JIG_ANGLE' then 0.1 when 'BUILT_PLACE' then 2 when 'BUILT_ANGLE' then 0.3
        when 'WHEELBASE' then 3 when 'AXLE_HEIGHT' then 1 when 'AXLE_WIDTH' then 0.5 when 'SHELL_WIDTH' then 0.2 else 0.5 end,
    'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'
from tolerance_class;
