-- Limits of the swing arm's room at the design gate, usual sag, and what a joined rear end may be off.
insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('gate.swing.tyre', 'Design gate', 22, 'Swinging tyre to a tube', 'Least room over the whole travel to seat tube and down tube, for mud and for what the frame gives.', 'NUMBER', 'mm', 0, 100),
('gate.swing.arm', 'Design gate', 24, 'Swing arm to a tube', 'Least room over the whole travel to seat tube and down tube.', 'NUMBER', 'mm', 0, 100),
('gate.swing.shock', 'Design gate', 26, 'Shock to a tube', 'Least room over the whole travel to seat tube and down tube.', 'NUMBER', 'mm', 0, 100),
('suspension.sag', 'Suspension', 10, 'Sag where the drawing gives none', 'Share of the shock''s stroke that the rider''s weight takes.', 'NUMBER', '%', 1, 90),
('join.front', 'Suspension', 20, 'Front triangle, off the middle plane at the pivot', 'Most that it may be off; one of the four that add up to the wheel''s offset.', 'NUMBER', 'mm', 0, 10),
('join.arm', 'Suspension', 30, 'Swing arm, axle off the middle of its pivot bores', 'Most that it may be off; the arm is measured from its own pivot bores.', 'NUMBER', 'mm', 0, 10),
('join.bearing', 'Suspension', 40, 'Bearings and their seats, along the pivot', 'Most that they may be off.', 'NUMBER', 'mm', 0, 10),
('join.dropout', 'Suspension', 50, 'Dropout faces', 'Most that they may be off.', 'NUMBER', 'mm', 0, 10);

insert into setting (code, worth, source, reason, by_person, since) values
('gate.swing.tyre', '6', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.swing.arm', '2', 'shop default: twice what joined parts may be off together', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.swing.shock', '2', 'shop default: twice what joined parts may be off together', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('suspension.sag', '30', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('join.front', '0.3', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('join.arm', '0.3', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('join.bearing', '0.1', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('join.dropout', '0.2', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
