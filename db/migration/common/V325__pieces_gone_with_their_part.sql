-- What a scrapped part consumed went into that part, and not into the one that is made in its place: the traveller it was
-- scrapped with. Parts that were scrapped before this was kept have theirs from what was issued until the next was made.
alter table lot_use add column gone_with bigint;
alter table lot_use add constraint lot_use_gone_with_fkey foreign key (gone_with) references traveller (id);
update lot_use set gone_with = (
        select min(t.id) from traveller t
        where t.serial = lot_use.serial and t.part = lot_use.part and t.state = 'SCRAPPED'
            and not exists (
                select 1 from traveller n
                where n.parent_id = t.parent_id and n.part = t.part and n.copy_number = t.copy_number + 1
                    and n.released_at <= lot_use.at))
    where part <> '';
