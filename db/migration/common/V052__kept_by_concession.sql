-- What is kept although a newer revision asks for something else needs the owner and the customer beside the QA lead.
alter table carry_over add column owner_id bigint;
alter table carry_over add column customer_agreement varchar(1000);
alter table carry_over add constraint carry_over_owner_id_fkey foreign key (owner_id) references person (id);
alter table carry_over add constraint carry_over_owner_id_check
    check (verdict <> 'CONCESSION' or (owner_id is not null and customer_agreement is not null));
