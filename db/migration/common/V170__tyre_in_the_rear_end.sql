-- Least room of the rear tyre beside what holds its wheel, as a limit of the design gate.
insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('gate.tyre.stays', 'Design gate', 21, 'Rear tyre in the rear end', 'Least room to the chainstays, or to the sides and the bridge of a swing arm, for mud and for a wheel that is out of true.', 'NUMBER', 'mm', 0, 100);

insert into setting (code, worth, source, reason, by_person, since) values
('gate.tyre.stays', '6', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
