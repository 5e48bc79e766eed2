-- Where work is done: stations, their jigs, and the tablets and desks acts are done at.
create table station (
    code varchar(10) not null,
    name varchar(120) not null,
    wip_limit integer not null,
    productive_hours_per_week numeric(5, 1) not null,
    paper_only boolean not null,
    position integer not null,
    retired_at timestamp(6) with time zone,
    version bigint not null,
    constraint station_code_pkey primary key (code),
    constraint station_wip_limit_check check (wip_limit >= 1),
    constraint station_productive_hours_per_week_check check (productive_hours_per_week between 0 and 168)
);

create table jig (
    code varchar(10) not null,
    station_code varchar(10) not null,
    checked_on date not null,
    due_on date not null,
    stopped_at timestamp(6) with time zone,
    retired_at timestamp(6) with time zone,
    version bigint not null,
    constraint jig_code_pkey primary key (code),
    constraint jig_station_code_fkey foreign key (station_code) references station (code),
    constraint jig_due_on_check check (due_on >= checked_on)
);

-- A device is named for ever: the log says at which tablet or desk an act was done.
create table device (
    id bigint generated always as identity,
    kind varchar(30) not null,
    name varchar(40) not null,
    token_hash varchar(64),
    made_at timestamp(6) with time zone not null,
    made_by bigint not null,
    token_at timestamp(6) with time zone,
    withdrawn_at timestamp(6) with time zone,
    version bigint not null,
    constraint device_id_pkey primary key (id),
    constraint device_name_key unique (name),
    constraint device_token_hash_key unique (token_hash),
    constraint device_kind_check check (kind in ('TABLET', 'DESK'))
);

create table device_station (
    device_id bigint not null,
    station_code varchar(10) not null,
    constraint device_station_device_id_station_code_pkey primary key (device_id, station_code),
    constraint device_station_device_id_fkey foreign key (device_id) references device (id),
    constraint device_station_station_code_fkey foreign key (station_code) references station (code)
);

-- A code typed once at the tablet makes it the named device. Only its hash is kept.
create table enrolment_code (
    id bigint generated always as identity,
    device_id bigint not null,
    code_hash varchar(64) not null,
    made_at timestamp(6) with time zone not null,
    made_by bigint not null,
    expires_at timestamp(6) with time zone not null,
    used_at timestamp(6) with time zone,
    constraint enrolment_code_id_pkey primary key (id),
    constraint enrolment_code_code_hash_key unique (code_hash),
    constraint enrolment_code_device_id_fkey foreign key (device_id) references device (id)
);
