-- Bores that a design gives. A route asks for a narrower tolerance where a bearing is pressed in.
insert into tolerance_class (code, sequence, name, explanation, unit) values
('BORE', 125, 'Bore as reamed', 'Head tube seats, seat tube, pivot bores; never less than what goes in.', 'mm');

insert into tolerance (class_code, lower_deviation, upper_deviation, source, reason, by_person, since) values
('BORE', 0, 0.1, 'shop default; the drawing of what goes in decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
