-- The log of acts: only added to. One chain per frame, one for the shop; heads say where each chain stands.
create table log_entry (
    id bigint generated always as identity,
    chain varchar(80) not null,
    position bigint not null,
    act_id uuid not null,
    at timestamp(6) with time zone not null,
    kind varchar(60) not null,
    subject varchar(120) not null,
    payload varchar(200000) not null,
    previous_hash varchar(64) not null,
    hash varchar(64) not null,
    -- Which of the act's records this is: 0 in the first chain it touched. With the act's id it stands once.
    place integer not null,
    constraint log_entry_id_pkey primary key (id),
    constraint log_entry_chain_position_key unique (chain, position),
    constraint log_entry_act_id_place_key unique (act_id, place)
);

create table chain_head (
    chain varchar(80) not null,
    position bigint not null,
    hash varchar(64) not null,
    constraint chain_head_chain_pkey primary key (chain)
);

insert into chain_head (chain, position, hash) values ('shop', 0, repeat('0', 64));

-- A table whose comment begins so refuses update and delete on both engines. Add it where a record must stay.
comment on table log_entry is 'append-only';
