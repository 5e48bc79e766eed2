-- What the shop has decided for itself. A definition says what a value may be; the values are only added to, the newest
-- one is in force. Every value carries its source, because a number without one cannot be argued for. In a unit, ¤ stands
-- for the shop's currency.
create table setting_definition (
    code varchar(60) not null,
    place varchar(40) not null,
    sequence integer not null,
    name varchar(120) not null,
    explanation varchar(400) not null,
    kind varchar(30) not null,
    unit varchar(20) not null,
    lowest numeric(14, 4),
    highest numeric(14, 4),
    constraint setting_definition_code_pkey primary key (code),
    constraint setting_definition_kind_check check (kind in ('NUMBER', 'WHOLE', 'TEXT', 'ZONE', 'LOCALE', 'CURRENCY'))
);

create table setting (
    id bigint generated always as identity,
    code varchar(60) not null,
    worth varchar(200) not null,
    source varchar(4000) not null,
    reason varchar(4000) not null,
    by_person bigint not null,
    since timestamp(6) with time zone not null,
    constraint setting_id_pkey primary key (id),
    constraint setting_code_fkey foreign key (code) references setting_definition (code),
    constraint setting_source_check check (length(trim(source)) > 0)
);

create index setting_code_id_idx on setting (code, id);

comment on table setting is 'append-only: the values a setting had';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('shop.name', 'Shop', 10, 'Name of the shop', 'Printed on travellers and papers.', 'TEXT', '', null, null),
('shop.locale', 'Shop', 20, 'Language and region of figures and dates', 'Decides decimal sign, first day of the week and clock.', 'LOCALE', '', null, null),
('shop.currency', 'Shop', 30, 'Currency', 'Prices and costs are entered and shown in it.', 'CURRENCY', '', null, null),
('shop.zone', 'Shop', 40, 'Time zone', 'Decides when a day ends: gauges and lots are valid through their date in this zone.', 'ZONE', '', null, null),
('shop.frames.limit', 'Shop', 50, 'Most frames at work at once', 'Above it the run of the shop warns before a release.', 'WHOLE', 'frames', 1, 1000),
('promise.percentile', 'Shop', 60, 'Percentile a date is promised at', 'Of a hundred such forecasts, this many should be kept.', 'WHOLE', 'in 100', 50, 99),
('cost.hour', 'Shop', 70, 'Cost of an hour of work', 'Used for the cost of an order and of a nonconformance.', 'NUMBER', '¤ per h', 0, 10000),
('scrap.owner.cost', 'Shop', 80, 'Scrap above this cost needs the owner', 'Below it the QA lead decides scrap alone.', 'NUMBER', '¤', 0, 1000000),
('guard.factor', 'Verdicts', 110, 'Guard band factor', 'Guard band g = factor × u. 1,65 is the one-sided 95 % point of the normal distribution.', 'NUMBER', '', 1, 3),
('gauge.share.guarded', 'Verdicts', 120, 'Share of the tolerance above which the guarded rule is forced', 'U over half the tolerance.', 'NUMBER', '', 0.01, 1),
('gauge.share.warns', 'Verdicts', 130, 'Share of the tolerance above which a gauge is called coarse', 'U over half the tolerance; warned when a design is released and when the gauge is chosen.', 'NUMBER', '', 0.01, 1),
('gauge.resolution.share', 'Verdicts', 140, 'Share of the tolerance a gauge''s step may take', 'A gauge whose resolution is coarser than this share of the tolerance width is warned about.', 'NUMBER', '', 0.01, 1),
('plausibility.tolerances', 'Verdicts', 150, 'Reading this far off is asked about before it is taken', 'Distance from the nominal in tolerances.', 'NUMBER', 'tolerances', 1, 100),
('triage.tolerances', 'Verdicts', 160, 'Limit of an early reading', 'An early reading further off than this many tolerances calls the QA lead; it judges nothing.', 'NUMBER', 'tolerances', 1, 100),
('readings.alike', 'Verdicts', 170, 'Equal readings in a row that are asked about', 'The same figures typed this often in a row ask whether the gauge was really used.', 'WHOLE', 'readings', 2, 20),
('undo.free.minutes', 'Stations', 210, 'Free undo', 'Within this time a person may take back an own tick without a reason.', 'WHOLE', 'min', 0, 10),
('signon.lock.minutes', 'Stations', 220, 'Tablet locks after', 'Time without a touch after which everybody is signed off.', 'WHOLE', 'min', 1, 120),
('witness.wait.minutes', 'Stations', 230, 'Witness point may be passed after', 'Time a witness is waited for after the call.', 'WHOLE', 'min', 0, 1440),
('hold.second.minutes', 'Stations', 240, 'Second signature follows within', 'A hold point signed by one person only is asked for again after this time.', 'WHOLE', 'min', 1, 1440),
('gauge.warn.days', 'Warnings', 310, 'Gauge falls due: warn before', '', 'WHOLE', 'days', 0, 365),
('lot.warn.days', 'Warnings', 320, 'Lot expires: warn before', '', 'WHOLE', 'days', 0, 365),
('qualification.warn.days', 'Warnings', 330, 'Qualification ends: warn before', '', 'WHOLE', 'days', 0, 365),
('backup.warn.hours', 'Warnings', 340, 'Back-up older than this is warned about', '', 'WHOLE', 'h', 1, 8760);

insert into setting (code, worth, source, reason, by_person, since)
select d.code, v.worth, v.source, 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'
from setting_definition d
join (values
    ('shop.name', 'The shop', 'shop default, to be set by the owner'),
    ('shop.locale', 'sv-SE', 'shop default, to be set by the owner'),
    ('shop.currency', 'EUR', 'shop default, to be set by the owner'),
    ('shop.zone', 'Europe/Stockholm', 'shop default, to be set by the owner'),
    ('shop.frames.limit', '18', 'shop default, to be owned by the owner'),
    ('promise.percentile', '85', 'shop default, to be owned by the owner'),
    ('cost.hour', '62', 'shop default, to be owned by the owner'),
    ('scrap.owner.cost', '300', 'shop default, to be owned by the owner'),
    ('guard.factor', '1.65', 'ISO 14253-1 (edition and clause to be filled in by the QA lead); one-sided 95 %'),
    ('gauge.share.guarded', '0.1', 'shop default, to be owned by the QA lead'),
    ('gauge.share.warns', '0.25', 'shop default, to be owned by the QA lead'),
    ('gauge.resolution.share', '0.1', 'shop default, to be owned by the QA lead'),
    ('plausibility.tolerances', '5', 'shop default, to be owned by the QA lead'),
    ('triage.tolerances', '3', 'shop default, to be owned by the QA lead'),
    ('readings.alike', '3', 'shop default, to be owned by the QA lead'),
    ('undo.free.minutes', '2', 'shop default, to be owned by the QA lead'),
    ('signon.lock.minutes', '10', 'shop default, to be owned by the QA lead'),
    ('witness.wait.minutes', '30', 'shop default, to be owned by the QA lead'),
    ('hold.second.minutes', '30', 'shop default, to be owned by the QA lead'),
    ('gauge.warn.days', '30', 'shop default, to be owned by the QA lead'),
    ('lot.warn.days', '30', 'shop default, to be owned by the QA lead'),
    ('qualification.warn.days', '30', 'shop default, to be owned by the QA lead'),
    ('backup.warn.hours', '26', 'shop default, to be owned by the owner')
) as v (code, worth, source) on v.code = d.code
order by d.sequence;
