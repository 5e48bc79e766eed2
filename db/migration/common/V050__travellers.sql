-- One frame, or a part of one, through its frozen steps.
create table traveller (
    id bigint generated always as identity,
    serial varchar(20) not null,
    part varchar(4) not null,
    parent_id bigint,
    order_id bigint,
    order_number varchar(20) not null,
    design_revision_id bigint,
    route_revision_id bigint not null,
    letter varchar(4) not null,
    copy_number integer not null,
    metal varchar(20) not null,
    kind varchar(30) not null,
    description varchar(200) not null,
    state varchar(30) not null,
    state_reason varchar(1000),
    released_at timestamp(6) with time zone not null,
    finished_at timestamp(6) with time zone,
    shipped_at timestamp(6) with time zone,
    current_operation_id bigint,
    current_code varchar(12),
    current_station varchar(20),
    version bigint not null,
    constraint traveller_id_pkey primary key (id),
    constraint traveller_serial_part_order_number_letter_copy_number_key unique (serial, part, order_number, letter, copy_number),
    constraint traveller_parent_id_fkey foreign key (parent_id) references traveller (id),
    constraint traveller_state_check check (state in ('RELEASED', 'IN_WORK', 'FINISHED', 'SHIPPED', 'SCRAPPED', 'WITHDRAWN'))
);
create index traveller_current_station_state_idx on traveller (current_station, state);
create index traveller_parent_id_idx on traveller (parent_id);
create index traveller_order_id_idx on traveller (order_id);
create index traveller_state_idx on traveller (state);

create table operation (
    id bigint generated always as identity,
    traveller_id bigint not null,
    position integer not null,
    code varchar(12) not null,
    name varchar(120) not null,
    station varchar(20) not null,
    point varchar(10) not null,
    signers varchar(120) not null,
    qualification varchar(40),
    together boolean not null,
    outside boolean not null,
    irreversible boolean not null,
    joins boolean not null,
    repeat_limit integer,
    caution varchar(200) not null,
    loop_number integer not null,
    state varchar(30) not null,
    state_reason varchar(1000),
    started_at timestamp(6) with time zone,
    finished_at timestamp(6) with time zone,
    at_point_since timestamp(6) with time zone,
    void_signature_id bigint,
    version bigint not null,
    constraint operation_id_pkey primary key (id),
    constraint operation_traveller_id_code_loop_number_key unique (traveller_id, code, loop_number),
    constraint operation_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint operation_state_check check (state in ('WAITING', 'IN_WORK', 'STOPPED', 'AWAY', 'AT_POINT', 'DONE', 'REPEATED')),
    constraint operation_point_check check (point in ('NONE', 'HOLD', 'WITNESS'))
);

create index operation_traveller_id_position_idx on operation (traveller_id, position);
create index operation_state_idx on operation (state);

create table step (
    id bigint generated always as identity,
    operation_id bigint not null,
    position integer not null,
    text varchar(200) not null,
    instruction varchar(1000) not null,
    photo boolean not null,
    irreversible boolean not null,
    lot_kind varchar(20),
    starts_clock varchar(40),
    qualification varchar(40),
    ticked boolean not null,
    ticked_by bigint,
    ticked_at timestamp(6) with time zone,
    version bigint not null,
    constraint step_id_pkey primary key (id),
    constraint step_operation_id_position_key unique (operation_id, position),
    constraint step_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint step_ticked_check check (ticked = (ticked_by is not null))
);

create table characteristic (
    id bigint generated always as identity,
    operation_id bigint not null,
    position integer not null,
    code varchar(20) not null,
    name varchar(160) not null,
    unit varchar(20) not null,
    decimals integer not null,
    nominal numeric(14, 6),
    lower_limit numeric(14, 6),
    upper_limit numeric(14, 6),
    gauge_kind varchar(30) not null,
    points varchar(1000) not null,
    reduction varchar(20) not null,
    rule varchar(20) not null,
    signers varchar(120) not null,
    sided boolean not null,
    read_back boolean not null,
    second_person boolean not null,
    deciding boolean not null,
    cold_set_clock varchar(40),
    cold_set_attempts integer not null,
    cold_set_amount numeric(14, 6),
    triage_tolerances numeric(6, 2),
    state varchar(30) not null,
    reading_id bigint,
    nonconformance varchar(20),
    version bigint not null,
    constraint characteristic_id_pkey primary key (id),
    constraint characteristic_operation_id_code_key unique (operation_id, code),
    constraint characteristic_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint characteristic_state_check check (state in ('OPEN', 'FIRST_READ', 'CONFORMING', 'NOT_CONFORMING', 'UNDECIDED', 'INFORMATION', 'CONCESSION')),
    constraint characteristic_rule_check check (rule in ('GUARDED', 'PLAIN')),
    constraint characteristic_reduction_check check (reduction in ('SINGLE', 'MEAN', 'WORST', 'SPAN', 'GREATEST', 'LEAST'))
);

create table frame_clock (
    id bigint generated always as identity,
    traveller_id bigint not null,
    code varchar(40) not null,
    name varchar(120) not null,
    kind varchar(10) not null,
    minutes bigint not null,
    started_by varchar(12) not null,
    gates varchar(200) not null,
    state varchar(20) not null,
    started_at timestamp(6) with time zone,
    ends_at timestamp(6) with time zone,
    started_by_step_id bigint,
    noticed boolean not null,
    version bigint not null,
    constraint frame_clock_id_pkey primary key (id),
    constraint frame_clock_traveller_id_code_key unique (traveller_id, code),
    constraint frame_clock_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint frame_clock_kind_check check (kind in ('WINDOW', 'WAIT')),
    constraint frame_clock_state_check check (state in ('PLANNED', 'RUNNING', 'MET', 'RUN_OUT'))
);
create index frame_clock_state_ends_at_idx on frame_clock (state, ends_at);

-- Every tick and untick, only added to; step.ticked is where they lead.
create table tick (
    id bigint generated always as identity,
    step_id bigint not null,
    operation_id bigint not null,
    untick boolean not null,
    person_id bigint not null,
    device_id bigint,
    at timestamp(6) with time zone not null,
    device_at timestamp(6) with time zone,
    act_id uuid not null,
    lot varchar(40),
    reason varchar(1000),
    constraint tick_id_pkey primary key (id),
    constraint tick_step_id_act_id_key unique (step_id, act_id),
    constraint tick_step_id_fkey foreign key (step_id) references step (id),
    constraint tick_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index tick_operation_id_idx on tick (operation_id);
comment on table tick is 'append-only';

create table signature (
    id bigint generated always as identity,
    operation_id bigint not null,
    person_id bigint not null,
    person_name varchar(120) not null,
    signer varchar(20) not null,
    meaning varchar(200) not null,
    at timestamp(6) with time zone not null,
    device_id bigint,
    act_id uuid not null,
    constraint signature_id_pkey primary key (id),
    constraint signature_operation_id_act_id_key unique (operation_id, act_id),
    constraint signature_operation_id_fkey foreign key (operation_id) references operation (id)
);
comment on table signature is 'append-only';

create table hold (
    id bigint generated always as identity,
    serial varchar(20) not null,
    traveller_id bigint,
    operation_id bigint,
    scope varchar(12) not null,
    reason varchar(20) not null,
    words varchar(1000) not null,
    source varchar(60) not null,
    placed_by bigint not null,
    placed_at timestamp(6) with time zone not null,
    causers varchar(200) not null,
    agreed_by varchar(200) not null,
    lifted_by bigint,
    lifted_at timestamp(6) with time zone,
    lift_words varchar(1000),
    version bigint not null,
    constraint hold_id_pkey primary key (id),
    constraint hold_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint hold_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint hold_scope_check check (scope in ('FRAME', 'PART', 'OPERATION')),
    constraint hold_reason_check check (reason in ('MATERIAL', 'APPROVAL', 'CUSTOMER_PART', 'NONCONFORMANCE', 'GAUGE_TRACE', 'OVEN_TRACE', 'LOT_TRACE', 'SAFETY', 'PAYMENT')),
    constraint hold_lifted_by_check check ((lifted_by is null) = (lifted_at is null))
);
create index hold_serial_lifted_at_idx on hold (serial, lifted_at);
create index hold_lifted_at_idx on hold (lifted_at);

-- A time-critical reversible operation the QA lead lets go on under a hold that stays.
create table hold_freed (
    id bigint generated always as identity,
    hold_id bigint not null,
    operation_id bigint not null,
    freed_by bigint not null,
    at timestamp(6) with time zone not null,
    reason varchar(1000) not null,
    constraint hold_freed_id_pkey primary key (id),
    constraint hold_freed_hold_id_operation_id_key unique (hold_id, operation_id),
    constraint hold_freed_hold_id_fkey foreign key (hold_id) references hold (id),
    constraint hold_freed_operation_id_fkey foreign key (operation_id) references operation (id)
);

create table traveller_note (
    id bigint generated always as identity,
    traveller_id bigint not null,
    operation_id bigint,
    words varchar(4000) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    constraint traveller_note_id_pkey primary key (id),
    constraint traveller_note_traveller_id_fkey foreign key (traveller_id) references traveller (id)
);
create index traveller_note_traveller_id_idx on traveller_note (traveller_id);

create table traveller_photo (
    id bigint generated always as identity,
    traveller_id bigint not null,
    operation_id bigint not null,
    step_id bigint,
    sha256 varchar(64) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    constraint traveller_photo_id_pkey primary key (id),
    constraint traveller_photo_traveller_id_fkey foreign key (traveller_id) references traveller (id)
);
create index traveller_photo_traveller_id_idx on traveller_photo (traveller_id);

-- Somebody asked for somebody to look.
create table shop_call (
    id bigint generated always as identity,
    traveller_id bigint,
    operation_id bigint,
    words varchar(1000) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    answered_by bigint,
    answered_at timestamp(6) with time zone,
    answer varchar(1000),
    version bigint not null,
    constraint shop_call_id_pkey primary key (id),
    constraint shop_call_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint shop_call_answered_by_check check ((answered_by is null) = (answered_at is null))
);
create index shop_call_answered_at_idx on shop_call (answered_at);

-- A part sent to somebody outside and booked back with the certificate.
create table consignment (
    id bigint generated always as identity,
    operation_id bigint not null,
    recipient varchar(200) not null,
    sent_by bigint not null,
    sent_at timestamp(6) with time zone not null,
    back_by bigint,
    back_at timestamp(6) with time zone,
    certificate varchar(200),
    version bigint not null,
    constraint consignment_id_pkey primary key (id),
    constraint consignment_operation_id_fkey foreign key (operation_id) references operation (id),
    constraint consignment_back_by_check check ((back_by is null) = (back_at is null))
);

-- What a newer revision said of an operation that was done under the old one.
create table carry_over (
    id bigint generated always as identity,
    old_operation_id bigint not null,
    new_operation_id bigint not null,
    verdict varchar(20) not null,
    reason varchar(1000) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    constraint carry_over_id_pkey primary key (id),
    constraint carry_over_old_operation_id_fkey foreign key (old_operation_id) references operation (id),
    constraint carry_over_new_operation_id_fkey foreign key (new_operation_id) references operation (id),
    constraint carry_over_verdict_check check (verdict in ('STILL_VALID', 'REPEAT', 'SCRAP_PART', 'CONCESSION'))
);
comment on table carry_over is 'append-only';
