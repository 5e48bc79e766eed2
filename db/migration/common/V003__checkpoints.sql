-- Checkpoints tie the chains together: every head that moved becomes a leaf of one tree that only grows, and a
-- checkpoint is the tree's root. The roots are also written to a file outside the database.
create table checkpoint (
    number bigint not null,
    at timestamp(6) with time zone not null,
    leaves bigint not null,
    root varchar(64) not null,
    -- Roots of the full subtrees, the largest first, so that the tree grows without reading its leaves again.
    peaks varchar(4200) not null,
    constraint checkpoint_number_pkey primary key (number)
);
comment on table checkpoint is 'append-only';

create table checkpoint_head (
    leaf bigint not null,
    checkpoint_number bigint not null,
    chain varchar(80) not null,
    position bigint not null,
    hash varchar(64) not null,
    constraint checkpoint_head_leaf_pkey primary key (leaf),
    constraint checkpoint_head_chain_position_key unique (chain, position),
    constraint checkpoint_head_checkpoint_number_fkey foreign key (checkpoint_number) references checkpoint (number)
);
comment on table checkpoint_head is 'append-only';
