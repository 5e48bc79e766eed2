-- A setting has four decimals; kept with two, a margin could meet the limit on the next look that it had missed.
alter table metal_air alter column wanted_k set data type numeric(10, 4);
alter table metal_air alter column least_degc set data type numeric(10, 4);
alter table metal_air alter column least_metal_degc set data type numeric(10, 4);
-- It asks for no measurement at the arc itself.
update setting_definition set
    name = 'How long air and metal stand before the tick',
    explanation = 'Measured longer ago, they are measured again before the clean parts are bagged. From the bag to the arc the clock of the route counts.'
where code = 'prep.minutes';
