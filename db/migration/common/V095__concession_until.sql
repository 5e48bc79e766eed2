-- Last day on which a concession lets its gate be passed; null for what a newer revision keeps, which has no end.
alter table characteristic add column concession_until date;
