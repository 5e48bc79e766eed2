-- A reading may come from the record of a run or of a coat. What it was read with then need not stand in the register of
-- gauges, such as a thermocouple of an oven; the record is named instead. A map of a film has more figures than a hand keys.
alter table reading alter column gauge_id drop not null;
alter table reading alter column gauge_due_on drop not null;
alter table reading alter column raw_values set data type varchar(20000);
alter table reading add column record varchar(60);
alter table reading add constraint reading_gauge_id_check check (gauge_id is not null or record is not null);

-- Which characteristics a programme's runs and a finish's records give: a line to a figure, its name and the codes.
alter table oven_programme_revision add column gives varchar(1000) default '' not null;
alter table coat_finish add column gives varchar(1000) default '' not null;

-- A nonconformance about what is recorded of an operation, such as its coat: a concession may let that stay as it is.
alter table nonconformance add column of_record boolean default false not null;
