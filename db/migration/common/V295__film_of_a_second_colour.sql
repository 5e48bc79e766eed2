-- What a finish asks of the film that parts a second colour from the first, where it has one.
alter table coat_finish add column lay_operations varchar(200);
alter table coat_finish add column draw_operations varchar(200);
alter table coat_finish add column film_lines varchar(2000);
alter table coat_finish add column most_film_min integer;
alter table coat_finish add constraint coat_finish_most_film_min_check check (most_film_min > 0);

-- A line of film as it was laid, measured from its landmark, or as it was drawn off, with what ran under its edge.
create table coat_line (
    id bigint generated always as identity,
    operation_id bigint not null,
    name varchar(60) not null,
    laid boolean not null,
    drive_mm numeric(8, 3),
    non_drive_mm numeric(8, 3),
    bleed_mm numeric(8, 3),
    gauge varchar(40) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint coat_line_id_pkey primary key (id),
    constraint coat_line_act_id_key unique (act_id),
    constraint coat_line_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint coat_line_laid_check check (
        laid and drive_mm > 0 and non_drive_mm > 0 and bleed_mm is null
        or not laid and drive_mm is null and non_drive_mm is null and bleed_mm >= 0)
);
create index coat_line_operation_id_idx on coat_line (operation_id);
comment on table coat_line is 'append-only: the newest of a line stands';
