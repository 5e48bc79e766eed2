-- How the coat of a frame was taken off before it is blasted and coated again.
create table coat_strip (
    id bigint generated always as identity,
    operation_id bigint not null,
    method varchar(20) not null,
    words varchar(200) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint coat_strip_id_pkey primary key (id),
    constraint coat_strip_act_id_key unique (act_id),
    constraint coat_strip_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint coat_strip_method_check check (method in ('CHEMICAL', 'BAKE', 'BLAST'))
);
create index coat_strip_operation_id_idx on coat_strip (operation_id);
comment on table coat_strip is 'append-only: the newest of an operation stands';
