-- That the end of a clock was acted upon is told by its state; the mark beside it was never read.
alter table frame_clock drop column noticed;
