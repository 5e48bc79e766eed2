-- How frames are blasted and coated: what their operations ask for. A revision in force is never changed, only superseded.
create table coat_finish (
    id bigint generated always as identity,
    code varchar(20) not null,
    letter varchar(3) not null,
    what varchar(200) not null,
    metals varchar(200) not null,
    blast_operations varchar(200) not null,
    coat_operations varchar(200) not null,
    masks varchar(2000) not null,
    most_bar numeric(6, 2) not null,
    most_earth_mohm numeric(8, 3),
    source varchar(400) not null,
    set_by bigint not null,
    set_at timestamp(6) with time zone not null,
    superseded_at timestamp(6) with time zone,
    act_id uuid not null,
    version bigint not null,
    constraint coat_finish_id_pkey primary key (id),
    constraint coat_finish_code_letter_key unique (code, letter),
    constraint coat_finish_act_id_key unique (act_id),
    constraint coat_finish_most_bar_check check (most_bar > 0),
    constraint coat_finish_most_earth_mohm_check check (most_earth_mohm > 0),
    constraint coat_finish_source_check check (length(trim(source)) > 0)
);
create index coat_finish_superseded_at_idx on coat_finish (superseded_at);

-- A mask that was put on or taken off again, by its landmark.
create table coat_mask (
    id bigint generated always as identity,
    operation_id bigint not null,
    landmark varchar(60) not null,
    fitted boolean not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint coat_mask_id_pkey primary key (id),
    constraint coat_mask_act_id_key unique (act_id),
    constraint coat_mask_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index coat_mask_operation_id_idx on coat_mask (operation_id);
comment on table coat_mask is 'append-only: the newest of a landmark stands';

-- What a frame was blasted with and what its surface was like after.
create table coat_blast (
    id bigint generated always as identity,
    operation_id bigint not null,
    metal varchar(20) not null,
    lot varchar(40) not null,
    pressure_bar numeric(8, 3) not null,
    most_bar numeric(6, 2) not null,
    gauge varchar(40) not null,
    cleanliness varchar(200) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint coat_blast_id_pkey primary key (id),
    constraint coat_blast_act_id_key unique (act_id),
    constraint coat_blast_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index coat_blast_operation_id_idx on coat_blast (operation_id);
create index coat_blast_lot_idx on coat_blast (lot);
comment on table coat_blast is 'append-only: the newest of an operation stands';

-- Air and metal, and how far the metal was from the point at which water or ice settles on it.
create table coat_air (
    id bigint generated always as identity,
    operation_id bigint not null,
    air_degc numeric(8, 3) not null,
    humidity_percent numeric(8, 3) not null,
    metal_degc numeric(8, 3) not null,
    point_degc numeric(8, 2) not null,
    over_ice boolean not null,
    margin_k numeric(8, 2) not null,
    wanted_k numeric(8, 2) not null,
    least_metal_degc numeric(8, 1) not null,
    source varchar(4000) not null,
    air_gauge varchar(40) not null,
    metal_gauge varchar(40) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint coat_air_id_pkey primary key (id),
    constraint coat_air_act_id_key unique (act_id),
    constraint coat_air_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index coat_air_operation_id_idx on coat_air (operation_id);
comment on table coat_air is 'append-only: the newest of an operation stands';

-- What is sprayed, and whether the frame is earthed where that is asked for.
create table coat_spray (
    id bigint generated always as identity,
    operation_id bigint not null,
    lot varchar(40) not null,
    expires_on date,
    earth_mohm numeric(12, 4),
    most_earth_mohm numeric(8, 3),
    gauge varchar(40),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint coat_spray_id_pkey primary key (id),
    constraint coat_spray_act_id_key unique (act_id),
    constraint coat_spray_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index coat_spray_operation_id_idx on coat_spray (operation_id);
comment on table coat_spray is 'append-only: the newest of an operation stands';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('coat.margin', 'Coat', 10, 'Metal above the dew point', 'Nothing is sprayed on metal that is less above it. Judged plain. Below 0 °C it is the frost point.', 'NUMBER', 'K', 0, 20),
('coat.margin.minutes', 'Coat', 11, 'How long air and metal stand', 'Measured longer ago, they are measured again before a frame is sprayed.', 'WHOLE', 'min', 1, 240);

insert into setting (code, worth, source, reason, by_person, since) values
('coat.margin', '3', 'ISO 8502-4, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('coat.margin.minutes', '30', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
