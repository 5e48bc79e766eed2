-- How often the frame had been bent at the operation when a turn began: one that began before the last push counts no more,
-- also where both came at one instant.
alter table alignment_sheet add column pushes integer default 0 not null;
