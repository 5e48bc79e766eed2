-- What was done under an older revision and is no longer part of the route keeps what was said of it.
alter table carry_over alter column new_operation_id drop not null;
