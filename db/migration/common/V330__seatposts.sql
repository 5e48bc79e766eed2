-- How far a seatpost must go in, by its own sheet; and how far it was found to be in.
alter table component_sheet add least_insertion_mm numeric(6, 1);
alter table component_sheet add constraint component_sheet_least_insertion_mm_check
    check (least_insertion_mm is null or least_insertion_mm > 0 and kind = 'SEATPOST');

create table seatpost_insertion (
    id bigint generated always as identity,
    operation_id bigint not null,
    component_id bigint not null,
    inserted_mm numeric(6, 1) not null,
    least_mm numeric(6, 1) not null,
    drawn_mm numeric(6, 1),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint seatpost_insertion_id_pkey primary key (id),
    constraint seatpost_insertion_act_id_key unique (act_id),
    constraint seatpost_insertion_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint seatpost_insertion_component_id_fkey foreign key (component_id) references frame_component (id),
    constraint seatpost_insertion_inserted_mm_check check (inserted_mm > 0)
);
create index seatpost_insertion_operation_id_idx on seatpost_insertion (operation_id);
comment on table seatpost_insertion is 'append-only: the newest of a component at an operation stands';
