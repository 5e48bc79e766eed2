-- What did not conform, and what was decided.
create table nonconformance (
    id bigint generated always as identity,
    serial varchar(20) not null,
    part varchar(4) not null,
    traveller_id bigint not null,
    operation_id bigint not null,
    operation_code varchar(12) not null,
    fault_code varchar(12) not null,
    characteristic_id bigint,
    characteristic_code varchar(20),
    reading_id bigint,
    words varchar(1000) not null,
    state varchar(20) not null,
    opened_by bigint not null,
    opened_at timestamp(6) with time zone not null,
    decision varchar(20),
    decision_number integer not null,
    decision_words varchar(1000),
    from_code varchar(12),
    limits varchar(1000),
    expires_on date,
    changes_what_was_ordered boolean not null,
    customer_agreement varchar(1000),
    beyond_limit boolean not null,
    hours numeric(8, 2),
    material_cost numeric(12, 2),
    decided_at timestamp(6) with time zone,
    closed_by bigint,
    closed_at timestamp(6) with time zone,
    close_words varchar(1000),
    version bigint not null,
    constraint nonconformance_id_pkey primary key (id),
    constraint nonconformance_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint nonconformance_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint nonconformance_state_check check (state in ('OPEN', 'PROPOSED', 'DECIDED', 'CLOSED')),
    constraint nonconformance_decision_check check (decision in ('REWORK', 'REPAIR', 'CONCESSION', 'SCRAP', 'RETURN')),
    constraint nonconformance_decided_at_check check ((decided_at is null) = (state in ('OPEN', 'PROPOSED')))
);
create index nonconformance_state_opened_at_idx on nonconformance (state, opened_at);
create index nonconformance_serial_idx on nonconformance (serial);
create index nonconformance_characteristic_id_idx on nonconformance (characteristic_id);

create table nonconformance_agreement (
    id bigint generated always as identity,
    nonconformance_id bigint not null,
    decision_number integer not null,
    person_id bigint not null,
    person_name varchar(120) not null,
    agreed_as varchar(20) not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint nonconformance_agreement_id_pkey primary key (id),
    constraint nonconformance_agreement_nonconformance_id_fkey foreign key (nonconformance_id) references nonconformance (id)
);
create index nonconformance_agreement_nonconformance_id_idx on nonconformance_agreement (nonconformance_id);
comment on table nonconformance_agreement is 'append-only';
