-- What was seen of each node when the welds of a frame were looked at. A node with nothing found has a line that says so.
create table weld_look (
    id bigint generated always as identity,
    operation_id bigint not null,
    node varchar(400) not null,
    imperfection varchar(30),
    size numeric(10, 3),
    is_short boolean not null,
    wall_mm numeric(8, 3),
    width_mm numeric(8, 3),
    throat_mm numeric(8, 3),
    level varchar(1) not null,
    limits varchar(30) not null,
    limit_size numeric(10, 4),
    verdict varchar(20) not null,
    words varchar(1000) not null,
    nonconformance varchar(20),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint weld_look_id_pkey primary key (id),
    constraint weld_look_act_id_key unique (act_id),
    constraint weld_look_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint weld_look_verdict_check check (verdict in ('CONFORMING', 'NOT_CONFORMING', 'UNDECIDED'))
);
create index weld_look_operation_id_idx on weld_look (operation_id);
comment on table weld_look is 'append-only';
