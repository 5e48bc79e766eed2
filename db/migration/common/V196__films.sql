-- What a finish asks of the finished coat, where it asks anything, and where on the frame it is read.
alter table coat_finish add column film_operations varchar(200);
alter table coat_finish add column film_areas varchar(2000);
alter table coat_finish add column film_rule varchar(20);
alter table coat_finish add column film_least_um numeric(8, 2);
alter table coat_finish add column film_most_um numeric(8, 2);
alter table coat_finish add column film_level varchar(10);
alter table coat_finish add column film_strict boolean default false not null;
alter table coat_finish add column film_guarded boolean default false not null;
alter table coat_finish add column most_cross_cut integer;
alter table coat_finish add column gloss_wanted numeric(6, 1);
alter table coat_finish add column gloss_within numeric(6, 1);
alter table coat_finish add column most_colour_difference numeric(6, 2);
alter table coat_finish add constraint coat_finish_film_rule_check
    check (film_rule in ('EIGHTY_TWENTY', 'SPOTS_AND_AREAS', 'MEAN_OF_AREAS'));
alter table coat_finish add constraint coat_finish_film_level_check
    check (film_level in ('ONE', 'TWO', 'THREE', 'FOUR', 'FIVE'));
alter table coat_finish add constraint coat_finish_most_cross_cut_check check (most_cross_cut between 0 and 5);

-- A map of the film: readings by area and spot as they were read, and the verdict they were given.
create table coat_film (
    id bigint generated always as identity,
    operation_id bigint not null,
    finish_id bigint not null,
    readings varchar(20000) not null,
    gauge varchar(40) not null,
    principle varchar(20) not null,
    u_um numeric(12, 4),
    guard_factor numeric(8, 3),
    guard_um numeric(8, 2),
    verdict varchar(20) not null,
    words varchar(20000) not null,
    nonconformance varchar(40),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint coat_film_id_pkey primary key (id),
    constraint coat_film_act_id_key unique (act_id),
    constraint coat_film_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint coat_film_finish_id_fkey foreign key (finish_id) references coat_finish (id),
    constraint coat_film_principle_check check (principle in ('MAGNETIC', 'EDDY_CURRENT')),
    constraint coat_film_verdict_check check (verdict in ('CONFORMING', 'UNDECIDED', 'NOT_CONFORMING'))
);
create index coat_film_operation_id_idx on coat_film (operation_id);
create index coat_film_finish_id_idx on coat_film (finish_id);
comment on table coat_film is 'append-only: the newest of an operation stands';

-- How the coat holds and looks, each with the limit it was judged by.
create table coat_look (
    id bigint generated always as identity,
    operation_id bigint not null,
    finish_id bigint not null,
    cross_cut integer,
    gloss numeric(6, 1),
    gloss_gauge varchar(40),
    colour_difference numeric(8, 2),
    colour_gauge varchar(40),
    verdict varchar(20) not null,
    words varchar(4000) not null,
    nonconformance varchar(40),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint coat_look_id_pkey primary key (id),
    constraint coat_look_act_id_key unique (act_id),
    constraint coat_look_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint coat_look_finish_id_fkey foreign key (finish_id) references coat_finish (id),
    constraint coat_look_verdict_check check (verdict in ('CONFORMING', 'NOT_CONFORMING'))
);
create index coat_look_operation_id_idx on coat_look (operation_id);
create index coat_look_finish_id_idx on coat_look (finish_id);
comment on table coat_look is 'append-only: the newest of an operation stands';
