-- What a figure of a tube may be off where no characteristic of its route judges it.
insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('cut.own.blank', 'Cutting', 73, 'How far a blank may be off where no characteristic judges it', 'Beyond it the gate stays shut until it is decided.', 'NUMBER', 'mm', 0, 10),
('cut.own.angle', 'Cutting', 74, 'How far an angle may be off where no characteristic judges it', 'Beyond it the gate stays shut until it is decided.', 'NUMBER', '°', 0, 5),
('cut.own.phase', 'Cutting', 75, 'How far a second cut may stand off its phase where no characteristic judges it', 'Beyond it the gate stays shut until it is decided.', 'NUMBER', '°', 0, 5),
('cut.own.gap', 'Cutting', 76, 'How wide a gap may be where no characteristic judges it', 'Beyond it the gate stays shut until it is decided.', 'NUMBER', 'mm', 0, 5),
('cut.own.wall', 'Cutting', 77, 'How far a wall may be off where no characteristic judges it', 'Beyond it the gate stays shut until it is decided.', 'NUMBER', 'mm', 0, 1);

insert into setting (code, worth, source, reason, by_person, since) values
('cut.own.blank', '0.5', 'starter routes', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('cut.own.angle', '0.2', 'starter routes', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('cut.own.phase', '0.3', 'starter routes', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('cut.own.gap', '0.15', 'starter routes', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('cut.own.wall', '0.05', 'starter routes', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
