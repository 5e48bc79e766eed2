-- What is kept by concession under a newer revision has its limits and its last day, as every concession has.
alter table carry_over add column limits varchar(1000);
alter table carry_over add column expires_on date;
