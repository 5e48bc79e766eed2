-- What a frame should weigh is computed by these, and a weighed one compared.
insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('mass.density.al6061', 'Expected mass', 10, 'Density of aluminium 6061', 'What a cubic metre of it weighs.', 'NUMBER', 'kg/m³', 500, 25000),
('mass.density.al7005', 'Expected mass', 20, 'Density of aluminium 7005', 'What a cubic metre of it weighs.', 'NUMBER', 'kg/m³', 500, 25000),
('mass.density.steel', 'Expected mass', 30, 'Density of steel 25CrMo4', 'What a cubic metre of it weighs.', 'NUMBER', 'kg/m³', 500, 25000),
('mass.density.ti', 'Expected mass', 40, 'Density of titanium Ti-3Al-2.5V', 'What a cubic metre of it weighs.', 'NUMBER', 'kg/m³', 500, 25000),
('mass.wall', 'Expected mass', 50, 'Half width of a wall', 'So far a wall may lie from the drawing to either side, every value as likely as the next.', 'NUMBER', 'mm', 0, 1),
('mass.u.parts', 'Expected mass', 60, 'Doubt about dropouts or pivot parts', 'Standard uncertainty of the mass of all of them in a frame.', 'NUMBER', 'g', 0, 500),
('mass.u.weld', 'Expected mass', 70, 'Doubt about the weld', 'Standard uncertainty of what welding or brazing adds to a frame.', 'NUMBER', 'g', 0, 500),
('mass.flag', 'Expected mass', 80, 'Difference that is looked into', 'A weighed frame further from its expected mass than so many standard uncertainties of the difference.', 'NUMBER', '', 0.5, 10),
('mass.walls', 'Expected mass', 90, 'Walls of tube on hand', 'In mm, parted by semicolons: a tube taken from the wrong rack has one of these.', 'TEXT', '', null, null),
('mass.weld.shares', 'Expected mass', 100, 'Amounts of weld looked at', 'As shares of the usual amount, parted by semicolons.', 'TEXT', '', null, null);

insert into setting (code, worth, source, reason, by_person, since) values
('mass.density.al6061', '2700', 'handbook value, from memory; the mill''s sheet decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.density.al7005', '2780', 'handbook value, from memory; the mill''s sheet decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.density.steel', '7850', 'handbook value, from memory; the mill''s sheet decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.density.ti', '4480', 'handbook value, from memory; the mill''s sheet decides', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.wall', '0.05', 'common practice for drawn tube of frames', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.u.parts', '5', 'shop default, until the shop has weighed its own', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.u.weld', '10', 'shop default, until the shop has weighed its own', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.flag', '3', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.walls', '0,65; 0,7; 0,72; 0,75; 0,78; 0,85; 0,9; 0,95; 1; 1,1; 1,15; 1,2; 1,25; 1,3; 1,35; 1,4; 1,5; 1,6; 1,8; 2', 'common walls of frame tube, to be set to the rack of the shop', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('mass.weld.shares', '0,5; 1,5; 2', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');

insert into tolerance_class (code, sequence, name, explanation, unit) values
('MASS', 140, 'Mass uncoated', 'Weighed dry and clean, before the blast.', 'g');

insert into tolerance (class_code, lower_deviation, upper_deviation, source, reason, by_person, since) values
('MASS', -47, 47, 'three times the doubt of the computed mass of a usual frame; shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
