-- Ovens, the thermocouples fitted to them, and what surveys and accuracy tests found of them.
create table oven (
    id bigint generated always as identity,
    code varchar(20) not null,
    what varchar(200) not null,
    uniformity_k numeric(6, 2) not null,
    length_mm integer not null,
    width_mm integer not null,
    height_mm integer not null,
    most_kg numeric(8, 2) not null,
    state varchar(20) not null,
    state_reason varchar(1000) not null,
    state_since timestamp(6) with time zone not null,
    version bigint not null,
    constraint oven_id_pkey primary key (id),
    constraint oven_code_key unique (code),
    constraint oven_state_check check (state in ('IN_USE', 'BLOCKED', 'RETIRED')),
    constraint oven_uniformity_k_check check (uniformity_k > 0),
    constraint oven_length_mm_check check (length_mm > 0),
    constraint oven_width_mm_check check (width_mm > 0),
    constraint oven_height_mm_check check (height_mm > 0),
    constraint oven_most_kg_check check (most_kg > 0)
);

-- A thermocouple in an oven, with what it does there. Another role or another oven is another row.
create table oven_thermocouple (
    id bigint generated always as identity,
    oven_id bigint not null,
    code varchar(20) not null,
    role varchar(20) not null,
    fitted_by bigint not null,
    fitted_at timestamp(6) with time zone not null,
    removed_by bigint,
    removed_at timestamp(6) with time zone,
    removed_why varchar(1000) not null,
    act_id uuid not null,
    constraint oven_thermocouple_id_pkey primary key (id),
    constraint oven_thermocouple_act_id_key unique (act_id),
    constraint oven_thermocouple_oven_id_fkey foreign key (oven_id) references oven (id),
    constraint oven_thermocouple_role_check check (role in ('CONTROL', 'LOAD', 'OVER_TEMPERATURE')),
    constraint oven_thermocouple_removed_at_check check (removed_at >= fitted_at)
);
create index oven_thermocouple_oven_id_idx on oven_thermocouple (oven_id);
create index oven_thermocouple_code_idx on oven_thermocouple (code);

-- A survey finds how much colder and hotter than its set temperature the oven is in its places; an accuracy test how
-- much too high a thermocouple reads, with its whole line up to the display.
create table oven_test (
    id bigint generated always as identity,
    oven_id bigint not null,
    kind varchar(20) not null,
    thermocouple varchar(20),
    tested_at timestamp(6) with time zone not null,
    due_on date,
    good boolean not null,
    lowest_k numeric(8, 3),
    highest_k numeric(8, 3),
    error_k numeric(8, 3),
    at_degc numeric(8, 2) not null,
    report varchar(200) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint oven_test_id_pkey primary key (id),
    constraint oven_test_act_id_key unique (act_id),
    constraint oven_test_oven_id_fkey foreign key (oven_id) references oven (id),
    constraint oven_test_kind_check check (kind in ('SURVEY', 'ACCURACY')),
    constraint oven_test_lowest_k_check check (kind <> 'SURVEY' or lowest_k is not null),
    constraint oven_test_highest_k_check check (kind <> 'SURVEY' or highest_k >= lowest_k),
    constraint oven_test_error_k_check check (kind <> 'ACCURACY' or error_k is not null),
    constraint oven_test_thermocouple_check check (kind <> 'ACCURACY' or thermocouple is not null),
    constraint oven_test_due_on_check check (not good or due_on is not null)
);
create index oven_test_oven_id_idx on oven_test (oven_id);
create index oven_test_thermocouple_idx on oven_test (thermocouple);
comment on table oven_test is 'append-only: surveys and accuracy tests of ovens';

-- What an oven has to do, as revisions. An approved one is never changed again.
create table oven_programme (
    id bigint generated always as identity,
    code varchar(30) not null,
    purpose varchar(20) not null,
    constraint oven_programme_id_pkey primary key (id),
    constraint oven_programme_code_key unique (code),
    constraint oven_programme_purpose_check check (purpose in ('SOLUTION', 'AGEING', 'CURE', 'OTHER'))
);

create table oven_programme_revision (
    id bigint generated always as identity,
    programme_id bigint not null,
    letter varchar(3) not null,
    state varchar(20) not null,
    what varchar(200) not null,
    metals varchar(200) not null,
    guards varchar(200) not null,
    never_degc numeric(8, 2),
    reference_degc numeric(8, 2),
    least_h numeric(10, 4),
    most_h numeric(10, 4),
    natural_ageing_h numeric(8, 2),
    quench_delay_s numeric(8, 2),
    quench_to_age_h numeric(8, 2),
    counts_survey boolean not null,
    source varchar(400) not null,
    drafted_by bigint not null,
    drafted_at timestamp(6) with time zone not null,
    approved_by bigint,
    approved_at timestamp(6) with time zone,
    superseded_at timestamp(6) with time zone,
    changes integer not null,
    version bigint not null,
    constraint oven_programme_revision_id_pkey primary key (id),
    constraint oven_programme_revision_programme_id_letter_key unique (programme_id, letter),
    constraint oven_programme_revision_programme_id_fkey foreign key (programme_id) references oven_programme (id),
    constraint oven_programme_revision_state_check check (state in ('DRAFT', 'APPROVED', 'SUPERSEDED')),
    constraint oven_programme_revision_approved_at_check check (state = 'DRAFT' or approved_at is not null),
    constraint oven_programme_revision_source_check check (length(trim(source)) > 0)
);
create index oven_programme_revision_state_idx on oven_programme_revision (state);

create table oven_programme_step (
    id bigint generated always as identity,
    revision_id bigint not null,
    position integer not null,
    set_degc numeric(8, 2) not null,
    below_k numeric(8, 2) not null,
    above_k numeric(8, 2) not null,
    soak_h numeric(10, 4) not null,
    longest_h numeric(10, 4),
    unbroken boolean not null,
    overshoot_k numeric(8, 2),
    spread_k numeric(8, 2),
    rise_k_per_h numeric(10, 2),
    constraint oven_programme_step_id_pkey primary key (id),
    constraint oven_programme_step_revision_id_position_key unique (revision_id, position),
    constraint oven_programme_step_revision_id_fkey foreign key (revision_id) references oven_programme_revision (id)
);

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('heat.al6061.energy', 'Heat', 10, 'Activation energy of ageing, 6061', 'Judges equivalent times. No one value is agreed on.', 'NUMBER', 'kJ/mol', 20, 400),
('heat.al6061.energy.low', 'Heat', 11, 'The least held possible, 6061', 'Every equivalent time is told with it.', 'NUMBER', 'kJ/mol', 20, 400),
('heat.al6061.energy.high', 'Heat', 12, 'The greatest held possible, 6061', 'Every equivalent time is told with it.', 'NUMBER', 'kJ/mol', 20, 400),
('heat.al6061.reference', 'Heat', 13, 'Temperature at which heat is counted, 6061', 'That of the usual age.', 'NUMBER', '°C', 50, 300),
('heat.al6061.age', 'Heat', 14, 'Hours of the usual age, 6061', 'At the temperature at which heat is counted; what comes later is told as a share of it.', 'NUMBER', 'h', 0.1, 200),
('heat.al6061.share', 'Heat', 15, 'Heat after the age, 6061', 'A bake that brings the sum above this share of the age is refused before loading.', 'NUMBER', '%', 0, 100),
('heat.al6061.overaged', 'Heat', 16, 'A programme is refused above, 6061', 'Times the longest published age. Below it the programme is taken and hardness is asked for in words.', 'NUMBER', 'times', 1, 1000),
('heat.al7005.energy', 'Heat', 30, 'Activation energy of ageing, 7005', 'Judges equivalent times. No one value is agreed on.', 'NUMBER', 'kJ/mol', 20, 400),
('heat.al7005.energy.low', 'Heat', 31, 'The least held possible, 7005', 'Every equivalent time is told with it.', 'NUMBER', 'kJ/mol', 20, 400),
('heat.al7005.energy.high', 'Heat', 32, 'The greatest held possible, 7005', 'Every equivalent time is told with it.', 'NUMBER', 'kJ/mol', 20, 400),
('heat.al7005.reference', 'Heat', 33, 'Temperature at which heat is counted, 7005', 'That of the last step of the usual age.', 'NUMBER', '°C', 50, 300),
('heat.al7005.age', 'Heat', 34, 'Hours of the usual age, 7005', 'At the temperature at which heat is counted; what comes later is told as a share of it.', 'NUMBER', 'h', 0.1, 200),
('heat.al7005.share', 'Heat', 35, 'Heat after the age, 7005', 'A bake that brings the sum above this share of the age is refused before loading.', 'NUMBER', '%', 0, 100),
('heat.al7005.overaged', 'Heat', 36, 'A programme is refused above, 7005', 'Times the longest published age. Below it the programme is taken and hardness is asked for in words.', 'NUMBER', 'times', 1, 1000),
('heat.gap', 'Heat', 50, 'Longest gap between readings', 'Time between readings further apart counts as not recorded.', 'NUMBER', 'min', 0.1, 60);

insert into setting (code, worth, source, reason, by_person, since) values
('heat.al6061.energy', '115', 'shop default amid 100 to 130 in the literature, from memory; a metallurgist decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al6061.energy.low', '80', 'shop default, from memory; a metallurgist decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al6061.energy.high', '130', 'shop default, from memory; a metallurgist decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al6061.reference', '177', 'usual age to T6, metal suppliers'' sheets', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al6061.age', '8', 'usual age to T6, metal suppliers'' sheets', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al6061.share', '25', 'shop default, until the shop has hardness of its own', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al6061.overaged', '5', 'shop default of the QA lead''s rule', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al7005.energy', '115', 'shop default amid 100 to 130 in the literature, from memory; a metallurgist decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al7005.energy.low', '80', 'shop default, from memory; a metallurgist decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al7005.energy.high', '130', 'shop default, from memory; a metallurgist decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al7005.reference', '149', 'last step of the usual age to T53, handbook, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al7005.age', '16', 'last step of the usual age to T53, handbook, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al7005.share', '25', 'shop default, until the shop has hardness of its own', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.al7005.overaged', '5', 'shop default of the QA lead''s rule', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('heat.gap', '2', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
