-- How far the shell stands out of the tube it is tacked to: half of what it is wider, from the design.
insert into tolerance_class (code, sequence, name, explanation, unit) values
('SHELL_PROUD', 122, 'Shell proud of a tube', 'From a face of the shell to the side of the tube, as it is tacked.', 'mm');

insert into tolerance (class_code, lower_deviation, upper_deviation, source, reason, by_person, since) values
('SHELL_PROUD', -0.2, 0.2, 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
