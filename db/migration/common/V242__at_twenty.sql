-- A coaxiality is a diameter: twice the distance of an axis from its datum.
alter table route_characteristic drop constraint route_characteristic_reduction_check;
alter table route_characteristic add constraint route_characteristic_reduction_check
    check (reduction in ('SINGLE', 'MEAN', 'WORST', 'SPAN', 'GREATEST', 'LEAST', 'ALL_BUT_FIFTH', 'ALL_BUT_UNDER_FIFTH',
        'COAXIAL'));
alter table characteristic drop constraint characteristic_reduction_check;
alter table characteristic add constraint characteristic_reduction_check
    check (reduction in ('SINGLE', 'MEAN', 'WORST', 'SPAN', 'GREATEST', 'LEAST', 'ALL_BUT_FIFTH', 'ALL_BUT_UNDER_FIFTH',
        'COAXIAL'));

-- What was added to a size that was read on a warm or cold part, to give it at 20 °C.
alter table reading add to_twenty numeric(14, 6);

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('part.temperature.span', 'Temperature of parts', 10, 'A part that is measured lies within', 'Either way of 20 °C. Where its temperature is not taken and the tolerance is narrow, this counts as doubt.', 'NUMBER', 'K', 0, 20),
('part.temperature.most', 'Temperature of parts', 11, 'A size is corrected over at most', 'Farther from 20 °C nothing is read.', 'NUMBER', 'K', 1, 40),
('part.temperature.u', 'Temperature of parts', 12, 'Doubt of the temperature of a part', 'Standard uncertainty of what is keyed.', 'NUMBER', 'K', 0, 10),
('gauge.temperature', 'Temperature of parts', 13, 'Gauges of sizes are at', 'As they were when set on their ring or block.', 'NUMBER', '°C', 0, 40),
('gauge.temperature.u', 'Temperature of parts', 14, 'Doubt of the temperature of a gauge', 'Standard uncertainty.', 'NUMBER', 'K', 0, 10),
('gauge.expansion', 'Temperature of parts', 15, 'Expansion of gauges', 'In millionths for each kelvin.', 'NUMBER', '10⁻⁶/K', 0, 40),
('expansion.u', 'Temperature of parts', 16, 'Doubt of an expansion', 'Standard uncertainty, in millionths for each kelvin.', 'NUMBER', '10⁻⁶/K', 0, 10),
('expansion.AL6061', 'Temperature of parts', 20, 'Expansion of EN AW-6061', 'In millionths for each kelvin.', 'NUMBER', '10⁻⁶/K', 1, 40),
('expansion.AL7005', 'Temperature of parts', 21, 'Expansion of EN AW-7005', 'In millionths for each kelvin.', 'NUMBER', '10⁻⁶/K', 1, 40),
('expansion.STEEL', 'Temperature of parts', 22, 'Expansion of 25CrMo4', 'In millionths for each kelvin.', 'NUMBER', '10⁻⁶/K', 1, 40),
('expansion.TI', 'Temperature of parts', 23, 'Expansion of Ti-3Al-2.5V', 'In millionths for each kelvin.', 'NUMBER', '10⁻⁶/K', 1, 40);

insert into setting (code, worth, source, reason, by_person, since) values
('part.temperature.span', '5', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('part.temperature.most', '20', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('part.temperature.u', '1', 'shop default, infrared or contact', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gauge.temperature', '20', 'shop default, kept in the measuring room', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gauge.temperature.u', '1', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gauge.expansion', '11.5', 'steel, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('expansion.u', '1', 'from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('expansion.AL6061', '23.6', 'data sheets, 20 to 100 °C', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('expansion.AL7005', '23.1', 'data sheets, 20 to 100 °C', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('expansion.STEEL', '12.2', 'of 4130, from memory', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('expansion.TI', '9.61', 'data pages, 20 to 100 °C', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
