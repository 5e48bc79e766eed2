-- A drawing is of the inputs as they were when it was added: a hash of them, so that a later change asks for another one.
-- Of drawings added before nothing is known, so those of drafts are added anew before they are sent.
alter table design_revision add column drawing_inputs varchar(64);
