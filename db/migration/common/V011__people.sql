-- Who works here. A row is never deleted and initials are never given again: records name people for decades.
create table person (
    id bigint generated always as identity,
    initials varchar(6) not null,
    name varchar(120) not null,
    badge varchar(20) not null,
    joined_on date not null,
    left_on date,
    pin_hash varchar(200),
    pin_set_at timestamp(6) with time zone,
    pin_one_time boolean default false not null,
    password_hash varchar(200),
    password_set_at timestamp(6) with time zone,
    password_one_time boolean default false not null,
    version bigint not null,
    constraint person_id_pkey primary key (id),
    constraint person_initials_key unique (initials),
    constraint person_badge_key unique (badge),
    constraint person_initials_check check (initials = upper(initials)),
    constraint person_left_on_check check (left_on >= joined_on)
);

create table person_role (
    person_id bigint not null,
    role varchar(30) not null,
    constraint person_role_person_id_role_pkey primary key (person_id, role),
    constraint person_role_person_id_fkey foreign key (person_id) references person (id),
    constraint person_role_role_check check (role in ('OWNER', 'QA_LEAD', 'ALIGNER', 'WELDER', 'HEAT_TREATER',
        'STATION_WORKER', 'APPRENTICE', 'AUDITOR'))
);

create table person_name (
    id bigint generated always as identity,
    person_id bigint not null,
    name varchar(120) not null,
    since timestamp(6) with time zone not null,
    named_by bigint not null,
    constraint person_name_id_pkey primary key (id),
    constraint person_name_person_id_fkey foreign key (person_id) references person (id)
);

create table qualification (
    id bigint generated always as identity,
    person_id bigint not null,
    kind varchar(40) not null,
    standard varchar(60) not null,
    metal varchar(30),
    process varchar(30),
    thickness_from_mm numeric(6, 2),
    thickness_to_mm numeric(6, 2),
    joint varchar(60),
    issued_on date not null,
    expires_on date,
    six_month_confirmation boolean not null,
    confirmed_on date,
    ended_on date,
    version bigint not null,
    constraint qualification_id_pkey primary key (id),
    constraint qualification_person_id_fkey foreign key (person_id) references person (id),
    constraint qualification_thickness_to_mm_check check (thickness_to_mm >= thickness_from_mm),
    constraint qualification_expires_on_check check (expires_on >= issued_on)
);

create index qualification_person_id_kind_idx on qualification (person_id, kind);

create table qualification_confirmation (
    id bigint generated always as identity,
    qualification_id bigint not null,
    confirmed_on date not null,
    confirmed_by bigint not null,
    at timestamp(6) with time zone not null,
    constraint qualification_confirmation_id_pkey primary key (id),
    constraint qualification_confirmation_qualification_id_confirmed_on_key unique (qualification_id, confirmed_on),
    constraint qualification_confirmation_qualification_id_fkey foreign key (qualification_id)
        references qualification (id)
);

-- Who stands in for a role while its holders are away, or where they may not decide because they caused it.
create table deputy (
    id bigint generated always as identity,
    role varchar(30) not null,
    person_id bigint not null,
    from_on date not null,
    until_on date,
    named_by bigint not null,
    constraint deputy_id_pkey primary key (id),
    constraint deputy_person_id_fkey foreign key (person_id) references person (id),
    constraint deputy_role_check check (role in ('QA_LEAD', 'OWNER')),
    constraint deputy_until_on_check check (until_on >= from_on)
);

create table absence (
    id bigint generated always as identity,
    person_id bigint not null,
    from_on date not null,
    until_on date not null,
    noted_by bigint not null,
    constraint absence_id_pkey primary key (id),
    constraint absence_person_id_fkey foreign key (person_id) references person (id),
    constraint absence_until_on_check check (until_on >= from_on)
);

-- The service itself: clocks that run out and data it ships with are its acts. It has no role and no way to sign on.
insert into person (id, initials, name, badge, joined_on, left_on, pin_one_time, password_one_time,
    version)
    overriding system value values (0, '-', 'Trammel', '-', date '2000-01-01', date '2000-01-01', false, false, 0);
insert into person_name (person_id, name, since, named_by)
    values (0, 'Trammel', timestamp with time zone '2000-01-01 00:00:00+00:00', 0);

comment on table person_name is 'append-only: an old record shows the name of its day';
comment on table qualification_confirmation is 'append-only: when a qualification was confirmed, and by whom';
