-- Tubes read from both sides give their middle and how far out of round they are; the side view is read by heights in two
-- settings of the frame, a quarter turn apart.
alter table alignment_set_up add column both_sides boolean default false not null;
alter table alignment_set_up add column side_view boolean default false not null;
