-- Who of the customer agreed to what is kept is kept apart, so that it can be erased; rows of before have it beside them.
alter table carry_over add column customer_words_id bigint;
alter table carry_over add constraint carry_over_customer_words_id_fkey
    foreign key (customer_words_id) references kept_words (id);
alter table carry_over drop constraint carry_over_owner_id_check;
alter table carry_over add constraint carry_over_owner_id_check check (verdict <> 'CONCESSION'
    or (owner_id is not null and (customer_agreement is not null or customer_words_id is not null)));
