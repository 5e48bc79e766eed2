-- What the maker's sheet of a powder or paint says: its colour, and at which temperature of the metal it cures in which time.
create table powder_sheet (
    id bigint generated always as identity,
    lot_id bigint not null,
    colour varchar(60) not null,
    energy_kjpermol numeric(8, 3),
    least_percent numeric(6, 2) not null,
    most_percent numeric(6, 2) not null,
    source varchar(400) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint powder_sheet_id_pkey primary key (id),
    constraint powder_sheet_act_id_key unique (act_id),
    constraint powder_sheet_most_percent_check check (most_percent > least_percent),
    constraint powder_sheet_lot_id_fkey foreign key (lot_id) references lot (id)
);
create index powder_sheet_lot_id_idx on powder_sheet (lot_id);
comment on table powder_sheet is 'append-only: the newest of a lot stands';

create table powder_cure_pair (
    powder_sheet_id bigint not null,
    line integer not null,
    minutes numeric(8, 2) not null,
    metal_degc numeric(6, 1) not null,
    constraint powder_cure_pair_powder_sheet_id_line_pkey primary key (powder_sheet_id, line),
    constraint powder_cure_pair_powder_sheet_id_fkey foreign key (powder_sheet_id) references powder_sheet (id)
);
comment on table powder_cure_pair is 'append-only: entered with its sheet';
