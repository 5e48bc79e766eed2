-- Which open frame bears which scribe mark on its tag. A row is one mark; it passes on when its frame has left the shop.
create table scribe_mark (
    code varchar(4) not null,
    serial varchar(20) not null,
    given_at timestamp(6) with time zone not null,
    version bigint not null,
    constraint scribe_mark_code_pkey primary key (code),
    constraint scribe_mark_serial_key unique (serial)
);
