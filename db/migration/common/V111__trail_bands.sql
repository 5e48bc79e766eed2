-- Trail by category of use: between the two a frame of that category usually steers as is wanted of it. The shop's own
-- rules; a category without a band is answered by people.
insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('gate.trail.city_and_trekking.least', 'Design gate', 120, 'Least trail, city and trekking', 'Below it the frame passes by a decision in writing only.', 'NUMBER', 'mm', 0, 250),
('gate.trail.city_and_trekking.most', 'Design gate', 121, 'Greatest trail, city and trekking', 'Above it the frame passes by a decision in writing only.', 'NUMBER', 'mm', 0, 250),
('gate.trail.young_adult.least', 'Design gate', 122, 'Least trail, young adult', 'Below it the frame passes by a decision in writing only.', 'NUMBER', 'mm', 0, 250),
('gate.trail.young_adult.most', 'Design gate', 123, 'Greatest trail, young adult', 'Above it the frame passes by a decision in writing only.', 'NUMBER', 'mm', 0, 250),
('gate.trail.mountain.least', 'Design gate', 124, 'Least trail, mountain', 'Below it the frame passes by a decision in writing only.', 'NUMBER', 'mm', 0, 250),
('gate.trail.mountain.most', 'Design gate', 125, 'Greatest trail, mountain', 'Above it the frame passes by a decision in writing only.', 'NUMBER', 'mm', 0, 250),
('gate.trail.racing.least', 'Design gate', 126, 'Least trail, racing', 'Below it the frame passes by a decision in writing only.', 'NUMBER', 'mm', 0, 250),
('gate.trail.racing.most', 'Design gate', 127, 'Greatest trail, racing', 'Above it the frame passes by a decision in writing only.', 'NUMBER', 'mm', 0, 250);

insert into setting (code, worth, source, reason, by_person, since) values
('gate.trail.city_and_trekking.least', '40', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.trail.city_and_trekking.most', '80', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.trail.young_adult.least', '40', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.trail.young_adult.most', '110', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.trail.mountain.least', '80', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.trail.mountain.most', '145', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.trail.racing.least', '45', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.trail.racing.most', '75', 'common practice, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
