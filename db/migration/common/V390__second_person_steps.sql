-- A step that somebody ticks who did none of the work of its operation.
alter table route_step add second_person boolean default false not null;
alter table step add second_person boolean default false not null;
