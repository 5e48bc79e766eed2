-- What a push was made on, so that the next on such a tube can be told from it.
alter table cold_set add column characteristic_name varchar(160);
alter table cold_set add column metal varchar(20);
create index cold_set_characteristic_name_idx on cold_set (characteristic_name);

-- Pushes the shop noted elsewhere, as on paper before it worked with this program.
create table push_noted (
    id bigint generated always as identity,
    deviation varchar(40) not null,
    metal varchar(20) not null,
    outside_mm numeric(6, 2) not null,
    wall_mm numeric(6, 3) not null,
    push_mm numeric(10, 3) not null,
    set_mm numeric(10, 3) not null,
    source varchar(400) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint push_noted_id_pkey primary key (id),
    constraint push_noted_act_id_key unique (act_id),
    constraint push_noted_push_mm_check check (push_mm > 0),
    constraint push_noted_set_mm_check check (set_mm >= 0 and set_mm < push_mm),
    constraint push_noted_source_check check (length(trim(source)) > 0)
);
comment on table push_noted is 'append-only';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('cold-set.bar', 'Cold-set', 10, 'Where the bar is pushed', 'Distance from the axis of the head tube at which a lean or twist is pushed and its set is told.', 'NUMBER', 'mm', 50, 1500),
('cold-set.yield.AL6061', 'Cold-set', 20, 'Yield of 6061 when it is set', 'Freshly quenched.', 'NUMBER', 'MPa', 10, 2000),
('cold-set.yield.AL7005', 'Cold-set', 30, 'Yield of 7005 when it is set', 'Within a day of welding.', 'NUMBER', 'MPa', 10, 2000),
('cold-set.yield.STEEL', 'Cold-set', 40, 'Yield of steel when it is set', 'Beside a weld of 25CrMo4, as welded.', 'NUMBER', 'MPa', 10, 2000),
('cold-set.yield.TI', 'Cold-set', 50, 'Yield of titanium when it is set', 'Ti-3Al-2.5V, cold worked and stress relieved.', 'NUMBER', 'MPa', 10, 2000),
('cold-set.note.AL6061', 'Cold-set', 60, 'What holds for 6061', 'Said with every push.', 'TEXT', '', null, null),
('cold-set.note.AL7005', 'Cold-set', 70, 'What holds for 7005', 'Said with every push.', 'TEXT', '', null, null),
('cold-set.note.STEEL', 'Cold-set', 80, 'What holds for steel', 'Said with every push.', 'TEXT', '', null, null),
('cold-set.note.TI', 'Cold-set', 90, 'What holds for titanium', 'Said with every push.', 'TEXT', '', null, null);

insert into setting (code, worth, source, reason, by_person, since)
select code,
    case code when 'cold-set.bar' then '250' when 'cold-set.yield.AL6061' then '60' when 'cold-set.yield.AL7005' then '150'
        when 'cold-set.yield.STEEL' then '450' when 'cold-set.yield.TI' then '725'
        when 'cold-set.note.AL6061' then 'Only between quench and ageing. Load lugs and mandrel, never the middle of a tube.'
        when 'cold-set.note.AL7005' then 'Only within a day of welding, before it hardens. Load lugs and mandrel, never the middle of a tube.'
        when 'cold-set.note.STEEL' then 'Before facing. Load lugs and mandrel, never a brazed fillet, never the middle of a thin tube.'
        else 'Before stress relief. It springs back three to four times as far as steel: small steps, clean gloves, no steel against it.' end,
    'common practice, from memory; to be replaced by a trial of the shop',
    'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'
from setting_definition where code like 'cold-set.%';
