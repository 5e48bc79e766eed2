-- The QA lead let one welder do one operation of one frame although the six months since the last confirmation had run
-- out. A qualification that has itself expired is never written here.
create table confirmation_override (
    id bigint generated always as identity,
    operation_id bigint not null,
    person_id bigint not null,
    qualification varchar(40) not null,
    lapsed_on date not null,
    given_by bigint not null,
    given_name varchar(120) not null,
    reason varchar(1000) not null,
    at timestamp(6) with time zone not null,
    device_id bigint,
    act_id uuid not null,
    constraint confirmation_override_id_pkey primary key (id),
    constraint confirmation_override_operation_id_person_id_qualification_key unique (operation_id, person_id, qualification),
    constraint confirmation_override_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint confirmation_override_person_id_fkey foreign key (person_id) references person (id),
    constraint confirmation_override_given_by_fkey foreign key (given_by) references person (id),
    constraint confirmation_override_given_by_check check (given_by <> person_id)
);
create index confirmation_override_person_id_idx on confirmation_override (person_id);
comment on table confirmation_override is 'append-only';
