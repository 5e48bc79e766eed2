-- That an operation was carried over is a fact of its own: it was read from the words of the reason, which people type too.
alter table operation add column carried boolean default false not null;
update operation set carried = true where state = 'DONE' and state_reason like 'carried over from revision %';
