-- What becomes of a weld afterwards is read from the frame's own route, by the codes of its operations; a frame of neither is
-- used as welded only where the QA lead signed that for it.
create table material_as_welded (
    id bigint generated always as identity,
    serial varchar(20) not null,
    reason varchar(4000) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint material_as_welded_id_pkey primary key (id),
    constraint material_as_welded_serial_key unique (serial),
    constraint material_as_welded_act_id_key unique (act_id)
);
comment on table material_as_welded is 'append-only';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('weld.solution.operations', 'Weld', 10, 'Operations that solution treat', 'Codes as the routes have them, a space between them. A frame whose route holds one is welded with a filler that responds to it.', 'TEXT', '', null, null),
('weld.ageing.operations', 'Weld', 11, 'Operations that age', 'Codes as the routes have them, a space between them.', 'TEXT', '', null, null);
insert into setting (code, worth, source, reason, by_person, since) values
('weld.solution.operations', '090a', 'routes shipped with the program', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('weld.ageing.operations', '110a', 'routes shipped with the program', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');

-- The lines that came with the program say what was read where, and what was only remembered.
update material_fit set source = 'wire listed in ISO 18273; filler articles of the trade: gains strength by solution and ageing, in thick welds too; to be owned by the QA lead'
    where by_person = 0 and class_code = 'ER4643' and metal = 'AL6061';
update material_fit set source = 'wire listed in ISO 18273; G. Mathers, The Welding of Aluminium and its Alloys, 2002, table 3.3: 6061, least cracking; gains by dilution up to about 9.5 mm where solution treated and aged, none by ageing alone, filler articles of the trade; to be owned by the QA lead'
    where by_person = 0 and class_code = 'ER4043' and metal = 'AL6061';
update material_fit set source = 'wire listed in ISO 18273; G. Mathers, The Welding of Aluminium and its Alloys, 2002, table 3.3: 6061, strength and ductility; does not respond to heat treatment, so only for a frame used as welded; to be owned by the QA lead'
    where by_person = 0 and class_code = 'ER5356' and metal = 'AL6061';
update material_fit set source = 'wire listed in ISO 18273; G. Mathers, The Welding of Aluminium and its Alloys, 2002, table 3.2: 7005 to itself 5556, 5356, 5183; ageing after the weld from memory; to be owned by the QA lead'
    where by_person = 0 and metal = 'AL7005' and class_code in ('ER5356', 'ER5183', 'ER5556');
update material_fit set source = source || '; from memory'
    where by_person = 0 and class_code in ('ER70S', 'ER80S', 'BRAZE-SILVER', 'BRAZE-BRASS', 'BRAZE-FLUX', 'TI-CP', 'TI-3AL-2.5V', 'ARGON', 'ARGON-HELIUM');
-- Ageing alone gives a bead of 4043 nothing.
update material_fit set after_weld = 'SOLUTION_AGE' where by_person = 0 and class_code = 'ER4043' and metal = 'AL6061';
insert into material_fit (class_code, metal, process, after_weld, source, by_person, since) values
('ER4043', 'AL6061', 'TIG', 'NONE', 'G. Mathers, The Welding of Aluminium and its Alloys, 2002, table 3.3: 6061, least cracking; to be owned by the QA lead', 0, timestamp with time zone '2000-01-01 00:00:00+00');
