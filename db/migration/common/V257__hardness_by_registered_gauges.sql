-- Hardness is read with a gauge of the register that is in date, or comes with the report of a laboratory outside.
alter table oven_hardness alter column gauge set data type varchar(40);
alter table oven_hardness add column report varchar(60);
alter table oven_hardness add constraint oven_hardness_report_check check (length(gauge) > 0 or report is not null);
