-- A step may rest on the water film that was seen to hold.
alter table route_step drop constraint route_step_proof_check;
alter table route_step add constraint route_step_proof_check
    check (proof in ('SERIAL_STRUCK', 'SERIAL_READ', 'CLEANED', 'BRUSHED', 'WARM_DRY', 'WATER_BREAK'));
alter table step drop constraint step_proof_check;
alter table step add constraint step_proof_check
    check (proof in ('SERIAL_STRUCK', 'SERIAL_READ', 'CLEANED', 'BRUSHED', 'WARM_DRY', 'WATER_BREAK'));

-- How water ran off the parts of a frame: in one film, or broken into drops where something is left on the metal.
create table water_break (
    id bigint generated always as identity,
    operation_id bigint not null,
    held boolean not null,
    parts varchar(400) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint water_break_id_pkey primary key (id),
    constraint water_break_act_id_operation_id_key unique (act_id, operation_id),
    constraint water_break_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index water_break_operation_id_idx on water_break (operation_id);
comment on table water_break is 'append-only: the newest of an operation stands, and those that broke stay';

-- What was read from the metal and is not the serial of the frame.
create table serial_misread (
    id bigint generated always as identity,
    operation_id bigint not null,
    read_as varchar(20) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint serial_misread_id_pkey primary key (id),
    constraint serial_misread_act_id_key unique (act_id),
    constraint serial_misread_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index serial_misread_operation_id_idx on serial_misread (operation_id);
comment on table serial_misread is 'append-only: a wrong reading is a fact about the mark or about how it is read';

-- What was read back blind, was asked about and was not taken: the person was asked to read again.
create table blind_attempt (
    id bigint generated always as identity,
    characteristic_id bigint not null,
    operation_id bigint not null,
    code varchar(20) not null,
    read_as varchar(400) not null,
    why varchar(400) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint blind_attempt_id_pkey primary key (id),
    constraint blind_attempt_act_id_key unique (act_id),
    constraint blind_attempt_characteristic_id_fkey foreign key (characteristic_id) references characteristic (id),
    constraint blind_attempt_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index blind_attempt_operation_id_idx on blind_attempt (operation_id);
comment on table blind_attempt is 'append-only: a jig that stood wrong stays on record, also where it was set right before it was read again';
