-- What a customer's own part was measured with; null where the drawing says nothing of it, and before it was asked for.
alter table own_part_check add column gauge varchar(40);
