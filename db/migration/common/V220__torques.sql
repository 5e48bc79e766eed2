-- What a tool that is set may err by, in per cent of the setting; null where its type's own limit stands for it.
alter table gauge_range add column error_percent numeric(6, 2);
alter table gauge_range add constraint gauge_range_error_percent_check check (error_percent > 0);

-- A characteristic may be recorded on a sheet of its own by another module, which guards its gate.
alter table characteristic drop constraint characteristic_state_check;
alter table characteristic add constraint characteristic_state_check check (state in ('OPEN', 'FIRST_READ', 'CONFORMING', 'NOT_CONFORMING', 'UNDECIDED', 'INFORMATION', 'CONCESSION', 'OWN_SHEET'));

-- What a component's own sheet says of its fasteners. A draft is replaced by the next; one in force is only superseded.
create table component_sheet (
    id bigint generated always as identity,
    code varchar(20) not null,
    letter varchar(3) not null,
    kind varchar(20) not null,
    what varchar(200) not null,
    operation varchar(16) not null,
    ride_operation varchar(16),
    carbon boolean not null,
    clamped_most_nm numeric(8, 3),
    source varchar(400) not null,
    edition varchar(80) not null,
    drafted_by bigint not null,
    drafted_at timestamp(6) with time zone not null,
    in_force_by bigint,
    in_force_at timestamp(6) with time zone,
    superseded_at timestamp(6) with time zone,
    act_id uuid not null,
    version bigint not null,
    constraint component_sheet_id_pkey primary key (id),
    constraint component_sheet_code_letter_key unique (code, letter),
    constraint component_sheet_act_id_key unique (act_id),
    constraint component_sheet_clamped_most_nm_check check (clamped_most_nm > 0),
    constraint component_sheet_source_check check (length(trim(source)) > 0),
    constraint component_sheet_in_force_at_check check ((in_force_by is null) = (in_force_at is null))
);
create index component_sheet_superseded_at_idx on component_sheet (superseded_at);

create table component_fastener (
    id bigint generated always as identity,
    sheet_id bigint not null,
    sequence integer not null,
    name varchar(80) not null,
    bolts integer not null,
    least_nm numeric(8, 3) not null,
    target_nm numeric(8, 3) not null,
    most_nm numeric(8, 3) not null,
    greased boolean not null,
    nut_factor numeric(5, 3) not null,
    thread_mm numeric(6, 2),
    crosswise boolean not null,
    passes varchar(20) not null,
    left_hand boolean not null,
    witness boolean not null,
    after_ride boolean not null,
    clamps varchar(20),
    answers varchar(20),
    constraint component_fastener_id_pkey primary key (id),
    constraint component_fastener_sheet_id_sequence_key unique (sheet_id, sequence),
    constraint component_fastener_sheet_id_fkey foreign key (sheet_id) references component_sheet (id),
    constraint component_fastener_bolts_check check (bolts between 1 and 24),
    constraint component_fastener_least_nm_check check (least_nm > 0 and least_nm < most_nm),
    constraint component_fastener_target_nm_check check (target_nm between least_nm and most_nm),
    constraint component_fastener_nut_factor_check check (nut_factor > 0),
    constraint component_fastener_thread_mm_check check (thread_mm > 0)
);
comment on table component_fastener is 'append-only: belongs to its revision of the sheet';

-- The components of a frame, which together are its list of torques.
create table frame_component (
    id bigint generated always as identity,
    serial varchar(20) not null,
    part varchar(8) not null,
    sheet_id bigint not null,
    place varchar(60) not null,
    given_by bigint not null,
    given_at timestamp(6) with time zone not null,
    act_id uuid not null,
    removed_by bigint,
    removed_at timestamp(6) with time zone,
    removed_words varchar(400),
    version bigint not null,
    constraint frame_component_id_pkey primary key (id),
    constraint frame_component_act_id_key unique (act_id),
    constraint frame_component_sheet_id_fkey foreign key (sheet_id) references component_sheet (id)
);
create index frame_component_serial_idx on frame_component (serial);

-- One bolt of one pass, in the order it was tightened.
create table bolt_torque (
    id bigint generated always as identity,
    operation_id bigint not null,
    component_id bigint not null,
    fastener_id bigint not null,
    round integer not null,
    pass integer not null,
    bolt integer not null,
    target_nm numeric(8, 3) not null,
    set_nm numeric(8, 3) not null,
    reading_nm numeric(8, 3),
    least_nm numeric(8, 3) not null,
    most_nm numeric(8, 3) not null,
    error_percent numeric(6, 2) not null,
    gauge varchar(40) not null,
    verdict varchar(20) not null,
    nonconformance varchar(20),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint bolt_torque_id_pkey primary key (id),
    constraint bolt_torque_act_id_key unique (act_id),
    constraint bolt_torque_component_id_round_pass_bolt_key unique (operation_id, component_id, fastener_id, round, pass, bolt),
    constraint bolt_torque_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint bolt_torque_component_id_fkey foreign key (component_id) references frame_component (id),
    constraint bolt_torque_fastener_id_fkey foreign key (fastener_id) references component_fastener (id),
    constraint bolt_torque_verdict_check check (verdict in ('CONFORMING', 'NOT_CONFORMING', 'UNDECIDED'))
);
create index bolt_torque_gauge_idx on bolt_torque (gauge);
create index bolt_torque_component_id_idx on bolt_torque (component_id);
comment on table bolt_torque is 'append-only: the newest round of a fastener stands';

-- A fastener loosened, to be torqued from its first bolt again.
create table torque_again (
    id bigint generated always as identity,
    operation_id bigint not null,
    component_id bigint not null,
    fastener_id bigint not null,
    words varchar(400) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint torque_again_id_pkey primary key (id),
    constraint torque_again_act_id_key unique (act_id),
    constraint torque_again_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint torque_again_component_id_fkey foreign key (component_id) references frame_component (id),
    constraint torque_again_fastener_id_fkey foreign key (fastener_id) references component_fastener (id)
);
create index torque_again_operation_id_idx on torque_again (operation_id);
comment on table torque_again is 'append-only: each begins a round of its fastener';

-- Who looked at a fastener that was torqued, independently of whoever did it.
create table torque_witness (
    id bigint generated always as identity,
    operation_id bigint not null,
    component_id bigint not null,
    fastener_id bigint not null,
    round integer not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint torque_witness_id_pkey primary key (id),
    constraint torque_witness_operation_id_component_id_fastener_id_round_key unique (operation_id, component_id, fastener_id, round),
    constraint torque_witness_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint torque_witness_component_id_fkey foreign key (component_id) references frame_component (id),
    constraint torque_witness_fastener_id_fkey foreign key (fastener_id) references component_fastener (id)
);
comment on table torque_witness is 'append-only: the round it names stands';
