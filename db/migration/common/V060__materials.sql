-- Material from its certificate to its place in a frame. What may meet which metal is a table with a source; the one
-- rule that is no table, that a metal's filler never goes onto another metal, is in the code and here in the family.
create table material_class (
    code varchar(30) not null,
    kind varchar(30) not null,
    name varchar(120) not null,
    family varchar(30) not null,
    constraint material_class_code_pkey primary key (code),
    constraint material_class_kind_check check (kind in ('FILLER', 'FLUX', 'GAS', 'MEDIA', 'POWDER')),
    constraint material_class_family_check check (family in ('ALUMINIUM', 'STEEL', 'TITANIUM', 'ANY'))
);

create table material_fit (
    id bigint generated always as identity,
    class_code varchar(30) not null,
    metal varchar(30) not null,
    process varchar(30),
    after_weld varchar(30) not null,
    source varchar(4000) not null,
    by_person bigint not null,
    since timestamp(6) with time zone not null,
    ended_by bigint,
    ended_at timestamp(6) with time zone,
    ended_reason varchar(4000),
    constraint material_fit_id_pkey primary key (id),
    constraint material_fit_class_code_fkey foreign key (class_code) references material_class (code),
    constraint material_fit_metal_check check (metal in ('AL6061', 'AL7005', 'STEEL', 'TI')),
    constraint material_fit_after_weld_check check (after_weld in ('ANY', 'SOLUTION_AGE', 'AGE', 'NONE')),
    constraint material_fit_source_check check (length(trim(source)) > 0)
);

create index material_fit_class_code_idx on material_fit (class_code);

create table lot (
    id bigint generated always as identity,
    code varchar(40) not null,
    kind varchar(30) not null,
    what varchar(400) not null,
    metal varchar(30),
    class_code varchar(30),
    grade varchar(120) not null,
    heat varchar(80) not null,
    reserved_for varchar(30),
    supplier varchar(200) not null,
    received_on date not null,
    expires_on date,
    certificate_type varchar(30) not null,
    certificate varchar(200) not null,
    certificate_file varchar(64),
    quantity numeric(14, 3),
    quantity_left numeric(14, 3),
    unit varchar(20) not null,
    state varchar(30) not null,
    state_reason varchar(4000) not null,
    state_since timestamp(6) with time zone not null,
    used_up boolean not null,
    received_by bigint not null,
    version bigint not null,
    constraint lot_id_pkey primary key (id),
    constraint lot_code_key unique (code),
    constraint lot_class_code_fkey foreign key (class_code) references material_class (code),
    constraint lot_kind_check check (kind in ('TUBE', 'FITTING', 'FILLER', 'FLUX', 'GAS', 'MEDIA', 'POWDER', 'PAINT',
        'BATH', 'BEARING', 'ADHESIVE', 'COMPONENT')),
    constraint lot_metal_check check (metal in ('AL6061', 'AL7005', 'STEEL', 'TI')),
    constraint lot_reserved_for_check check (reserved_for in ('ALUMINIUM', 'STEEL', 'TITANIUM')),
    constraint lot_state_check check (state in ('QUARANTINED', 'RELEASED', 'BLOCKED', 'USED_UP')),
    constraint lot_quantity_left_check check (quantity_left >= 0 and quantity_left <= quantity)
);

create index lot_state_expires_on_idx on lot (state, expires_on);

create table lot_remnant (
    id bigint generated always as identity,
    lot_id bigint not null,
    number integer not null,
    use_id bigint not null,
    quantity numeric(14, 3) not null,
    quantity_left numeric(14, 3) not null,
    unit varchar(20) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint lot_remnant_id_pkey primary key (id),
    constraint lot_remnant_lot_id_fkey foreign key (lot_id) references lot (id),
    constraint lot_remnant_lot_id_number_key unique (lot_id, number),
    constraint lot_remnant_quantity_check check (quantity > 0),
    constraint lot_remnant_quantity_left_check check (quantity_left >= 0 and quantity_left <= quantity)
);

-- A use stays, scrapped or not: a bad lot must be found in what was thrown away too.
create table lot_use (
    id bigint generated always as identity,
    lot_id bigint not null,
    remnant_id bigint,
    serial varchar(20) not null,
    part varchar(20) not null,
    operation varchar(20) not null,
    position varchar(200) not null,
    quantity numeric(14, 3),
    unit varchar(20) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    scrapped boolean not null,
    scrapped_by bigint,
    scrapped_at timestamp(6) with time zone,
    scrapped_reason varchar(4000),
    constraint lot_use_id_pkey primary key (id),
    constraint lot_use_lot_id_fkey foreign key (lot_id) references lot (id),
    constraint lot_use_remnant_id_fkey foreign key (remnant_id) references lot_remnant (id),
    constraint lot_use_quantity_check check (quantity > 0)
);

create index lot_use_lot_id_serial_idx on lot_use (lot_id, serial);
create index lot_use_serial_idx on lot_use (serial);

alter table lot_remnant add constraint lot_remnant_use_id_fkey foreign key (use_id) references lot_use (id);

insert into material_class (code, kind, name, family) values
('ER4043', 'FILLER', 'Al-Si 4043', 'ALUMINIUM'),
('ER4643', 'FILLER', 'Al-Si-Mg 4643', 'ALUMINIUM'),
('ER5183', 'FILLER', 'Al-Mg 5183', 'ALUMINIUM'),
('ER5356', 'FILLER', 'Al-Mg 5356', 'ALUMINIUM'),
('ER5556', 'FILLER', 'Al-Mg 5556', 'ALUMINIUM'),
('ER70S', 'FILLER', 'Steel rod, 70 class', 'STEEL'),
('ER80S', 'FILLER', 'Steel rod, 80 class', 'STEEL'),
('BRAZE-SILVER', 'FILLER', 'Silver brazing rod, cadmium-free', 'STEEL'),
('BRAZE-BRASS', 'FILLER', 'Brass brazing rod', 'STEEL'),
('TI-CP', 'FILLER', 'Titanium rod, commercially pure', 'TITANIUM'),
('TI-3AL-2.5V', 'FILLER', 'Titanium rod, Ti-3Al-2.5V', 'TITANIUM'),
('BRAZE-FLUX', 'FLUX', 'Brazing flux', 'STEEL'),
('ARGON', 'GAS', 'Argon', 'ANY'),
('ARGON-HELIUM', 'GAS', 'Argon-helium', 'ANY'),
('GLASS-BEAD', 'MEDIA', 'Glass bead', 'ANY'),
('ALUMINA', 'MEDIA', 'Alumina', 'ANY'),
('STEEL-SHOT', 'MEDIA', 'Steel shot', 'STEEL'),
('LOW-BAKE', 'POWDER', 'Powder, cures at 160 °C metal', 'ANY'),
('HIGH-BAKE', 'POWDER', 'Powder, cures at 190 °C metal', 'ANY');

insert into material_fit (class_code, metal, process, after_weld, source, by_person, since)
select v.class_code, v.metal, v.process, v.after_weld, v.source, 0, timestamp with time zone '2000-01-01 00:00:00+00'
from (values
    ('ER4643', 'AL6061', 'TIG', 'ANY', 'wire listed in ISO 18273; responds to solution and ageing; shop default, to be owned by the QA lead'),
    ('ER4043', 'AL6061', 'TIG', 'ANY', 'wire listed in ISO 18273; relies on dilution in thin walls; shop default, to be owned by the QA lead'),
    ('ER5356', 'AL6061', 'TIG', 'NONE', 'wire listed in ISO 18273; does not age, so only for a frame used as welded; shop default, to be owned by the QA lead'),
    ('ER5356', 'AL7005', 'TIG', 'ANY', 'wire listed in ISO 18273; shop default, to be owned by the QA lead'),
    ('ER5183', 'AL7005', 'TIG', 'ANY', 'wire listed in ISO 18273; shop default, to be owned by the QA lead'),
    ('ER5556', 'AL7005', 'TIG', 'ANY', 'wire listed in ISO 18273; shop default, to be owned by the QA lead'),
    ('ER70S', 'STEEL', 'TIG', 'ANY', 'rod class of ISO 636; shop default, to be owned by the QA lead'),
    ('ER80S', 'STEEL', 'TIG', 'ANY', 'rod class of ISO 636; shop default, to be owned by the QA lead'),
    ('BRAZE-SILVER', 'STEEL', 'BRAZE', 'ANY', 'filler class of ISO 17672; shop default, to be owned by the QA lead'),
    ('BRAZE-BRASS', 'STEEL', 'BRAZE', 'ANY', 'filler class of ISO 17672; shop default, to be owned by the QA lead'),
    ('BRAZE-FLUX', 'STEEL', 'BRAZE', 'ANY', 'shop default, to be owned by the QA lead'),
    ('TI-CP', 'TI', 'TIG', 'ANY', 'rod class of ISO 24034; shop default, to be owned by the QA lead'),
    ('TI-3AL-2.5V', 'TI', 'TIG', 'ANY', 'rod class of ISO 24034; shop default, to be owned by the QA lead'),
    ('ARGON', 'AL6061', 'TIG', 'ANY', 'gas group of ISO 14175; shop default, to be owned by the QA lead'),
    ('ARGON', 'AL7005', 'TIG', 'ANY', 'gas group of ISO 14175; shop default, to be owned by the QA lead'),
    ('ARGON', 'STEEL', 'TIG', 'ANY', 'gas group of ISO 14175; shop default, to be owned by the QA lead'),
    ('ARGON', 'TI', 'TIG', 'ANY', 'gas group of ISO 14175; shop default, to be owned by the QA lead'),
    ('ARGON-HELIUM', 'AL6061', 'TIG', 'ANY', 'gas group of ISO 14175; shop default, to be owned by the QA lead'),
    ('ARGON-HELIUM', 'AL7005', 'TIG', 'ANY', 'gas group of ISO 14175; shop default, to be owned by the QA lead'),
    ('GLASS-BEAD', 'AL6061', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('GLASS-BEAD', 'AL7005', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('GLASS-BEAD', 'STEEL', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('GLASS-BEAD', 'TI', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('ALUMINA', 'AL6061', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('ALUMINA', 'AL7005', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('ALUMINA', 'STEEL', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('ALUMINA', 'TI', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('STEEL-SHOT', 'STEEL', null, 'ANY', 'shop default, to be owned by the QA lead'),
    ('LOW-BAKE', 'AL6061', null, 'ANY', 'powder sheet; shop default, to be owned by the QA lead'),
    ('LOW-BAKE', 'AL7005', null, 'ANY', 'powder sheet; shop default, to be owned by the QA lead'),
    ('LOW-BAKE', 'STEEL', null, 'ANY', 'powder sheet; shop default, to be owned by the QA lead'),
    ('LOW-BAKE', 'TI', null, 'ANY', 'powder sheet; shop default, to be owned by the QA lead'),
    ('HIGH-BAKE', 'AL6061', null, 'ANY', 'powder sheet; the cure bake ages the metal on; shop default, to be owned by the QA lead'),
    ('HIGH-BAKE', 'STEEL', null, 'ANY', 'powder sheet; shop default, to be owned by the QA lead'),
    ('HIGH-BAKE', 'TI', null, 'ANY', 'powder sheet; shop default, to be owned by the QA lead')
) as v (class_code, metal, process, after_weld, source);
