-- Contact points are measured at the last check against the fit sheet; a formed end against the drawing.
insert into tolerance_class (code, sequence, name, explanation, unit) values
('FORMED_AXIS', 45, 'Axis of a formed end', 'Short and long axis of an end that is formed.', 'mm'),
('CONTACT_POINT', 140, 'Contact points of the rider', 'Saddle and bar as they stand at the last check.', 'mm');

insert into tolerance (class_code, lower_deviation, upper_deviation, source, reason, by_person, since) values
('FORMED_AXIS', -0.3, 0.3, 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('CONTACT_POINT', -5, 5, 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
