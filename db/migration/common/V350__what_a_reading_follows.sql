-- The reading that judged when this one was taken; none where nothing judged, as at first and after the part was changed. So
-- what was read since the last change is known without asking any clock. Readings of before this column name none.
alter table reading add column follows_id bigint;
alter table reading add constraint reading_follows_id_fkey foreign key (follows_id) references reading (id);
