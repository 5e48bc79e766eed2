-- What is done to a frame from the operation on that joins its parts: it goes on only while all of them are finished.
alter table operation add column since_join boolean default false not null;
update operation set since_join = true where exists (
  select 1 from operation j
  where j.traveller_id = operation.traveller_id and j.joins and j.position <= operation.position
);
