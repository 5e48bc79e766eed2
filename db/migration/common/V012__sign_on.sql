-- Who is signed on where. open_key is filled while a sign-on is open: one doer and one second for each device.
create table sign_on (
    id bigint generated always as identity,
    device_id bigint not null,
    person_id bigint not null,
    place varchar(30) not null,
    since timestamp(6) with time zone not null,
    last_seen timestamp(6) with time zone not null,
    ended_at timestamp(6) with time zone,
    end_reason varchar(30),
    open_key varchar(60),
    constraint sign_on_id_pkey primary key (id),
    constraint sign_on_open_key_key unique (open_key),
    constraint sign_on_device_id_fkey foreign key (device_id) references device (id),
    constraint sign_on_person_id_fkey foreign key (person_id) references person (id),
    constraint sign_on_place_check check (place in ('DOER', 'SECOND')),
    constraint sign_on_end_reason_check check (end_reason in ('SIGNED_OFF', 'CHANGED', 'SWAPPED', 'LOCKED', 'LEFT',
        'WITHDRAWN'))
);

create index sign_on_device_id_ended_at_idx on sign_on (device_id, ended_at);

-- Guesses counted for a person's PIN or password, a device, an address, a name nobody has. A guess is counted before
-- it is checked, so that guesses sent side by side do not slip through.
create table guess_count (
    subject varchar(100) not null,
    failures integer not null,
    last_at timestamp(6) with time zone not null,
    open_from timestamp(6) with time zone not null,
    locked_at timestamp(6) with time zone,
    constraint guess_count_subject_pkey primary key (subject),
    constraint guess_count_failures_check check (failures >= 0)
);

-- Signing on that failed, so many an hour at most.
create table sign_on_failure (
    id bigint generated always as identity,
    at timestamp(6) with time zone not null,
    person_id bigint,
    device_id bigint,
    address varchar(60),
    secret varchar(30) not null,
    locked boolean not null,
    constraint sign_on_failure_id_pkey primary key (id),
    constraint sign_on_failure_secret_check check (secret in ('PIN', 'PASSWORD', 'ENROLMENT', 'FIRST_OWNER'))
);

create index sign_on_failure_at_idx on sign_on_failure (at);

-- The one code that makes the first owner of an empty shop; gone after use.
create table first_owner_code (
    id bigint generated always as identity,
    code_hash varchar(64) not null,
    made_at timestamp(6) with time zone not null,
    used_at timestamp(6) with time zone,
    constraint first_owner_code_id_pkey primary key (id),
    constraint first_owner_code_code_hash_key unique (code_hash)
);

comment on table sign_on_failure is 'append-only: guesses that were wrong';

create table lifted_lock (
    id bigint generated always as identity,
    person_id bigint not null,
    lifted_by bigint not null,
    at timestamp(6) with time zone not null,
    reason_id bigint not null,
    constraint lifted_lock_id_pkey primary key (id),
    constraint lifted_lock_person_id_fkey foreign key (person_id) references person (id),
    constraint lifted_lock_lifted_by_fkey foreign key (lifted_by) references person (id),
    constraint lifted_lock_reason_id_fkey foreign key (reason_id) references kept_words (id)
);

comment on table lifted_lock is 'append-only: locks that were lifted, by whom and why';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('signon.desk.minutes', 'Stations', 221, 'Desk locks after', 'Time without a touch after which a desk asks for the password again.', 'WHOLE', 'min', 1, 480);

insert into setting (code, worth, source, reason, by_person, since) values
('signon.desk.minutes', '30', 'shop default, to be owned by the QA lead', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
