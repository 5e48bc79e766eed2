-- Why another jig was noted for a frame that was read already; empty where it was not read, or is the first note.
alter table jig_use add reason varchar(1000);
