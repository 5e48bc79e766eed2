-- A serial read back is a reading of one blow; struck anew, it is read anew. Empty for what was read before this was kept,
-- which counts for no tick any more.
alter table serial_read add strike_tick_id bigint;
alter table serial_read add constraint serial_read_strike_tick_id_fkey foreign key (strike_tick_id) references tick (id);
