-- Limits of the design gate: the shop's own rules, each with its source. Nothing here is a standard's but what says so.
insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('gate.stack.off', 'Design gate', 10, 'Stack off what was asked for', 'So far the computed stack may lie from the stack asked for.', 'NUMBER', 'mm', 0, 50),
('gate.tyre', 'Design gate', 20, 'Rear tyre to seat tube', 'Least room between them, for mud and for what the frame gives.', 'NUMBER', 'mm', 0, 100),
('gate.pedal', 'Design gate', 30, 'Pedal axle to front tyre', 'Least distance where the pedals do not hold the feet; where they do, it is not judged.', 'NUMBER', 'mm', 0, 300),
('gate.crank', 'Design gate', 40, 'Crank where the drawing gives none', 'Length the distance to the front tyre is computed with.', 'NUMBER', 'mm', 100, 220),
('gate.standover.spare', 'Design gate', 50, 'Standover below the inseam', 'Least that is left between top tube and rider.', 'NUMBER', 'mm', 0, 300),
('gate.standover.ahead', 'Design gate', 60, 'Where the rider stands', 'So far ahead of the shell the height over the top tube is taken.', 'NUMBER', 'mm', -200, 400),
('gate.weld.toes', 'Design gate', 70, 'Weld toes apart', 'Least distance between the welds of two tubes on one head tube.', 'NUMBER', 'mm', 0, 100),
('gate.head.edge', 'Design gate', 80, 'Tube edge inside the head tube''s end', 'Least distance of a tube''s edge from the end of the head tube, on its surface.', 'NUMBER', 'mm', 0, 50),
('gate.oven.length', 'Design gate', 90, 'Longest line an oven takes', 'Of the shortest oven that a frame enters, inside.', 'NUMBER', 'mm', 300, 10000),
('gate.levers.left', 'Design gate', 100, 'Countries with the front brake lever on the left', 'Two letters each, parted by semicolons. A country in neither list is answered by people.', 'TEXT', '', null, null),
('gate.levers.right', 'Design gate', 110, 'Countries with the front brake lever on the right', 'Two letters each, parted by semicolons.', 'TEXT', '', null, null);

insert into setting (code, worth, source, reason, by_person, since) values
('gate.stack.off', '1', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.tyre', '6', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.pedal', '100', 'ISO 4210-2, where the feet are not retained; from memory, edition and clause to be entered', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.crank', '170', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.standover.spare', '25', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.standover.ahead', '20', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.weld.toes', '8', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.head.edge', '4', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.oven.length', '1500', 'common practice, to be set to the ovens of the shop', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.levers.left', 'AT; BE; CH; CZ; DE; DK; ES; FI; FR; NL; NO; PL; SE; US', 'common practice, from memory; local rules decide', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('gate.levers.right', 'AU; GB; IE; JP; NZ; ZA', 'common practice, from memory; local rules decide', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');

-- What a check was answered on: value, limit and margin, and the setting the limit came from. Nothing of the rider.
create table design_check_figure (
    check_id bigint not null,
    line integer not null,
    label varchar(80) not null,
    unit varchar(10) not null,
    decimals integer not null,
    amount numeric(14, 4),
    bound varchar(20) not null,
    limit_amount numeric(14, 4),
    said varchar(60),
    wanted varchar(60),
    met boolean,
    personal boolean not null,
    setting_id bigint,
    source varchar(4000),
    constraint design_check_figure_check_id_line_pkey primary key (check_id, line),
    constraint design_check_figure_check_id_fkey foreign key (check_id) references design_check (id),
    constraint design_check_figure_bound_check check (bound in ('AT_LEAST', 'AT_MOST', 'INFORMATION'))
);
