-- On which inputs a check of the design gate was answered, as a hash. An answer given on others does not count; one
-- given before this was kept names none and is given again.
alter table design_check add column given_on varchar(64) default '' not null;
