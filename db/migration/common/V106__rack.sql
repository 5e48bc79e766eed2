-- Bars and remnants of tube on the rack, by lot: what the saw plan lays its blanks into. What is left of a bar is a row of
-- the same lot.
create table tube_bar (
    id bigint generated always as identity,
    version bigint not null,
    lot_id bigint not null,
    outside numeric(8, 3) not null,
    wall numeric(8, 3) not null,
    length numeric(9, 3) not null,
    bars integer not null,
    remnant boolean not null,
    butted boolean not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint tube_bar_id_pkey primary key (id),
    constraint tube_bar_lot_id_fkey foreign key (lot_id) references lot (id),
    constraint tube_bar_outside_check check (outside > 0),
    constraint tube_bar_wall_check check (wall > 0 and 2 * wall < outside),
    constraint tube_bar_length_check check (length > 0 and length <= 20000),
    constraint tube_bar_bars_check check (bars >= 0 and bars <= 10000)
);

create index tube_bar_lot_id_idx on tube_bar (lot_id);

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('saw.kerf', 'Cutting', 50, 'Kerf of the saw', 'What each cut takes.', 'NUMBER', 'mm', 0, 20),
('saw.keep_from', 'Cutting', 60, 'Shortest remnant', 'What is left of a bar goes back to the rack from this length on.', 'NUMBER', 'mm', 0, 5000),
('saw.operation', 'Cutting', 70, 'Operation that saws', 'Code of the operation of the routes whose blanks the saw plan lays; a frame past it wants none.', 'TEXT', '', null, null);

insert into setting (code, worth, source, reason, by_person, since) values
('saw.kerf', '2', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('saw.keep_from', '300', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('saw.operation', '030', 'the starter routes', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
