-- What the cut list is computed by.
insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('saw.sizes', 'Cutting', 10, 'Hole saws at hand', 'Diameters in mm, parted by semicolons; the cut list names the next size up for each mate.', 'TEXT', '', null, null),
('saw.oversize', 'Cutting', 20, 'Oversize of a hole saw', 'So much larger than its mate a saw may be; more leaves a gap at the sides.', 'NUMBER', 'mm', 0, 2),
('saw.trim', 'Cutting', 30, 'Trim of a mitred end', 'Left on a blank beyond each end that is mitred.', 'NUMBER', 'mm', 0, 20),
('saw.butt_at_weld', 'Cutting', 40, 'Butt behind a weld', 'A butted tube keeps so much of its thick end behind the weld.', 'NUMBER', 'mm', 0, 200);

insert into setting (code, worth, source, reason, by_person, since) values
('saw.sizes', '28,6; 31,8; 34,9; 36; 38; 40; 42; 44; 46,4; 50; 54; 56', 'common tube sizes, to be set to the drawer of the shop', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('saw.oversize', '0.2', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('saw.trim', '3', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('saw.butt_at_weld', '60', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
