-- Clocks of a frame that lies in a cold store stand still; which ones, and how cold it must be, are settings.
alter table frame_clock add column stopped_at timestamp(6) with time zone;
alter table frame_clock add column left_ms bigint;
alter table frame_clock add column stood_ms bigint default 0 not null;

create table cold_store_move (
    id bigint generated always as identity,
    traveller_id bigint not null,
    serial varchar(40) not null,
    part varchar(20) not null,
    mark varchar(40) not null,
    went_in boolean not null,
    degc numeric(8, 3) not null,
    most_degc numeric(8, 3) not null,
    counts boolean not null,
    gauge varchar(40) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint cold_store_move_id_pkey primary key (id),
    constraint cold_store_move_act_id_key unique (act_id),
    constraint cold_store_move_traveller_id_fkey foreign key (traveller_id) references traveller (id)
);
create index cold_store_move_traveller_id_idx on cold_store_move (traveller_id);
comment on table cold_store_move is 'append-only: frames put into a cold store and taken out of it';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('cold.store', 'Heat', 60, 'Cold store, at most', 'Aluminium that was quenched or welded ages slower in the cold. Above this no clock stands still.', 'NUMBER', '°C', -80, 0),
('cold.store.clocks', 'Heat', 61, 'Clocks that stand still in the cold store', 'Codes as the routes have them, parted by spaces.', 'TEXT', '', null, null);

insert into setting (code, worth, source, reason, by_person, since) values
('cold.store', '-18', 'common practice, from memory; shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('cold.store.clocks', 'COLD-SET AGE-BY NATURAL-AGE', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
