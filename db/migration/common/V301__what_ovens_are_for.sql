-- What an oven is for, as purposes of programmes parted by spaces. Of an oven from before nobody said it: it takes no load
-- until somebody does.
alter table oven add column purposes varchar(100) default '' not null;
