-- A thermocouple that failed its accuracy test, and the runs since the last good one told again.
create table oven_trace (
    id bigint generated always as identity,
    oven_id bigint not null,
    test_id bigint not null,
    thermocouple varchar(20) not null,
    error_k numeric(8, 3) not null,
    last_good_at timestamp(6) with time zone,
    found_at timestamp(6) with time zone not null,
    state varchar(20) not null,
    widened_words varchar(4000),
    opened_by bigint not null,
    opened_at timestamp(6) with time zone not null,
    closed_by bigint,
    closed_at timestamp(6) with time zone,
    closed_words varchar(4000),
    version bigint not null,
    constraint oven_trace_id_pkey primary key (id),
    constraint oven_trace_test_id_key unique (test_id),
    constraint oven_trace_oven_id_fkey foreign key (oven_id) references oven (id),
    constraint oven_trace_test_id_fkey foreign key (test_id) references oven_test (id),
    constraint oven_trace_state_check check (state in ('OPEN', 'CLOSED')),
    constraint oven_trace_found_at_check check (found_at > last_good_at)
);
create index oven_trace_state_idx on oven_trace (state);

-- What a run was in truth; told anew, as a further row, where its record or the span of doubt changed. The newest counts.
create table oven_trace_run (
    id bigint generated always as identity,
    trace_id bigint not null,
    run_id bigint not null,
    log_id bigint,
    suspicion varchar(20) not null,
    drift_k numeric(8, 3) not null,
    worst_k numeric(8, 3) not null,
    reference_degc numeric(8, 2),
    recorded_h numeric(14, 6),
    linear_h numeric(14, 6),
    worst_h numeric(14, 6),
    without_h numeric(14, 6),
    judged varchar(20),
    judged_linear varchar(20),
    judged_worst varchar(20),
    cleared boolean not null,
    words varchar(4000) not null,
    at timestamp(6) with time zone not null,
    constraint oven_trace_run_id_pkey primary key (id),
    constraint oven_trace_run_trace_id_fkey foreign key (trace_id) references oven_trace (id),
    constraint oven_trace_run_run_id_fkey foreign key (run_id) references oven_run (id),
    constraint oven_trace_run_log_id_fkey foreign key (log_id) references oven_log (id),
    constraint oven_trace_run_suspicion_check check (suspicion in ('WATCHED', 'STEERED', 'JUDGED_BY_IT')),
    constraint oven_trace_run_judged_check check (judged in ('CONFORMING', 'UNDECIDED', 'NOT_CONFORMING')),
    constraint oven_trace_run_judged_linear_check check (judged_linear in ('CONFORMING', 'UNDECIDED', 'NOT_CONFORMING')),
    constraint oven_trace_run_judged_worst_check check (judged_worst in ('CONFORMING', 'UNDECIDED', 'NOT_CONFORMING'))
);
create index oven_trace_run_trace_id_idx on oven_trace_run (trace_id);
create index oven_trace_run_run_id_idx on oven_trace_run (run_id);
comment on table oven_trace_run is 'append-only: runs told again after a thermocouple was found wrong';

create table oven_trace_frame (
    id bigint generated always as identity,
    trace_id bigint not null,
    run_id bigint not null,
    traveller_id bigint not null,
    serial varchar(40) not null,
    part varchar(20) not null,
    mark varchar(40) not null,
    place integer not null,
    outcome varchar(20) not null,
    result varchar(20),
    result_words varchar(4000),
    result_by bigint,
    result_at timestamp(6) with time zone,
    version bigint not null,
    constraint oven_trace_frame_id_pkey primary key (id),
    constraint oven_trace_frame_trace_id_run_id_traveller_id_key unique (trace_id, run_id, traveller_id),
    constraint oven_trace_frame_trace_id_fkey foreign key (trace_id) references oven_trace (id),
    constraint oven_trace_frame_run_id_fkey foreign key (run_id) references oven_run (id),
    constraint oven_trace_frame_traveller_id_fkey foreign key (traveller_id) references traveller (id),
    constraint oven_trace_frame_outcome_check check (outcome in ('CONTACT_OWNER', 'HOLD', 'GONE', 'CLEARED')),
    constraint oven_trace_frame_result_check check (result in ('HARDNESS', 'AGED_FURTHER', 'OWNER_CONTACTED', 'DECIDED'))
);
create index oven_trace_frame_serial_idx on oven_trace_frame (serial);
create index oven_trace_frame_run_id_idx on oven_trace_frame (run_id);
