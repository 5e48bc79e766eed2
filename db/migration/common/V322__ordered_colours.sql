-- The colours a frame is ordered in, one to a line, in the order in which they are sprayed.
create table ordered_colours (
    id bigint generated always as identity,
    order_id bigint not null,
    colours varchar(1000) not null,
    reason_words bigint,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint ordered_colours_id_pkey primary key (id),
    constraint ordered_colours_act_id_key unique (act_id),
    constraint ordered_colours_order_id_fkey foreign key (order_id) references shop_order (id),
    constraint ordered_colours_reason_words_fkey foreign key (reason_words) references kept_words (id)
);
create index ordered_colours_order_id_idx on ordered_colours (order_id);
comment on table ordered_colours is 'append-only: the newest of an order stand';
