-- Operations done after a fault was found that the decision leaves as they are; the rest of them is done over.
alter table nonconformance add column still_valid varchar(1000);
