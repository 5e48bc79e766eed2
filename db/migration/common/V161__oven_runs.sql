-- A load of an oven and what became of it. What its record is judged by is frozen as it starts.
create table oven_run (
    id bigint generated always as identity,
    code varchar(20) not null,
    oven_id bigint not null,
    revision_id bigint not null,
    state varchar(20) not null,
    hung varchar(200) not null,
    void_signature_id bigint,
    opened_by bigint not null,
    opened_at timestamp(6) with time zone not null,
    started_by bigint,
    started_at timestamp(6) with time zone,
    stopped_by bigint,
    stopped_at timestamp(6) with time zone,
    decided_at timestamp(6) with time zone,
    energy numeric(10, 4),
    energy_low numeric(10, 4),
    energy_high numeric(10, 4),
    energy_source varchar(4000) not null,
    gap_min numeric(8, 3),
    lowest_k numeric(8, 3),
    highest_k numeric(8, 3),
    judged varchar(20),
    version bigint not null,
    constraint oven_run_id_pkey primary key (id),
    constraint oven_run_code_key unique (code),
    constraint oven_run_oven_id_fkey foreign key (oven_id) references oven (id),
    constraint oven_run_revision_id_fkey foreign key (revision_id) references oven_programme_revision (id),
    constraint oven_run_state_check check (state in ('LOADING', 'SIGNED', 'RUNNING', 'STOPPED', 'DECIDED', 'CALLED_OFF')),
    constraint oven_run_judged_check check (judged in ('CONFORMING', 'UNDECIDED', 'NOT_CONFORMING')),
    constraint oven_run_stopped_at_check check (stopped_at > started_at)
);
create index oven_run_oven_id_idx on oven_run (oven_id);
create index oven_run_revision_id_idx on oven_run (revision_id);
create index oven_run_state_idx on oven_run (state);

create table oven_run_frame (
    id bigint generated always as identity,
    run_id bigint not null,
    traveller_id bigint not null,
    operation_id bigint,
    serial varchar(40) not null,
    part varchar(20) not null,
    mark varchar(40) not null,
    metal varchar(20) not null,
    place varchar(60) not null,
    mass_kg numeric(8, 3),
    state varchar(20) not null,
    words varchar(1000) not null,
    loaded_by bigint not null,
    loaded_at timestamp(6) with time zone not null,
    decided_by bigint,
    decided_at timestamp(6) with time zone,
    constraint oven_run_frame_id_pkey primary key (id),
    constraint oven_run_frame_run_id_traveller_id_key unique (run_id, traveller_id),
    constraint oven_run_frame_run_id_fkey foreign key (run_id) references oven_run (id),
    constraint oven_run_frame_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint oven_run_frame_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint oven_run_frame_state_check check (state in ('LOADED', 'TAKEN_OUT', 'RELEASED', 'KEPT'))
);
create index oven_run_frame_traveller_id_idx on oven_run_frame (traveller_id);
create index oven_run_frame_operation_id_idx on oven_run_frame (operation_id);
create index oven_run_frame_serial_idx on oven_run_frame (serial);

-- What each thermocouple did in this run, its column in the record, and what it was known to read too high as it began.
create table oven_run_thermocouple (
    id bigint generated always as identity,
    run_id bigint not null,
    code varchar(20) not null,
    role varchar(20) not null,
    log_column varchar(120) not null,
    place varchar(60) not null,
    error_k numeric(8, 3) not null,
    constraint oven_run_thermocouple_id_pkey primary key (id),
    constraint oven_run_thermocouple_run_id_code_key unique (run_id, code),
    constraint oven_run_thermocouple_run_id_fkey foreign key (run_id) references oven_run (id),
    constraint oven_run_thermocouple_role_check check (role in ('CONTROL', 'LOAD', 'OVER_TEMPERATURE'))
);
create index oven_run_thermocouple_code_idx on oven_run_thermocouple (code);

create table oven_run_door (
    id bigint generated always as identity,
    run_id bigint not null,
    opened boolean not null,
    moved_at timestamp(6) with time zone not null,
    words varchar(400) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint oven_run_door_id_pkey primary key (id),
    constraint oven_run_door_act_id_key unique (act_id),
    constraint oven_run_door_run_id_fkey foreign key (run_id) references oven_run (id)
);
create index oven_run_door_run_id_idx on oven_run_door (run_id);
comment on table oven_run_door is 'append-only: doors of ovens opened and shut in a run';

create table oven_run_signature (
    id bigint generated always as identity,
    run_id bigint not null,
    signs varchar(10) not null,
    signer varchar(20) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint oven_run_signature_id_pkey primary key (id),
    constraint oven_run_signature_act_id_key unique (act_id),
    constraint oven_run_signature_run_id_fkey foreign key (run_id) references oven_run (id),
    constraint oven_run_signature_signs_check check (signs in ('LOAD', 'RUN')),
    constraint oven_run_signature_signer_check check (signer in ('HEAT_TREATER', 'SECOND', 'QA'))
);
create index oven_run_signature_run_id_idx on oven_run_signature (run_id);
comment on table oven_run_signature is 'append-only: signatures of loads and runs';

-- A record that was read and is looked at before it is taken; the next one that is read takes its place.
create table oven_log_draft (
    id bigint generated always as identity,
    run_id bigint not null,
    name varchar(200) not null,
    sha256 varchar(64) not null,
    samples bytea not null,
    how varchar(20000) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint oven_log_draft_id_pkey primary key (id),
    constraint oven_log_draft_run_id_key unique (run_id),
    constraint oven_log_draft_run_id_fkey foreign key (run_id) references oven_run (id)
);

-- The newest of a run is the one it is judged by. sha256 is of the file as it was sent; samples are what it says.
create table oven_log (
    id bigint generated always as identity,
    run_id bigint not null,
    name varchar(200) not null,
    sha256 varchar(64) not null,
    samples bytea not null,
    how varchar(20000) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint oven_log_id_pkey primary key (id),
    constraint oven_log_act_id_key unique (act_id),
    constraint oven_log_run_id_fkey foreign key (run_id) references oven_run (id)
);
create index oven_log_run_id_idx on oven_log (run_id);
comment on table oven_log is 'append-only: what loggers recorded of runs';
