-- A reading from before this program that was wrong: it stays on record and counts no more.
create table drift_strike (
    id bigint generated always as identity,
    history_id bigint not null,
    reason varchar(1000) not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint drift_strike_id_pkey primary key (id),
    constraint drift_strike_act_id_key unique (act_id),
    constraint drift_strike_history_id_key unique (history_id),
    constraint drift_strike_history_id_fkey foreign key (history_id) references drift_history (id),
    constraint drift_strike_reason_check check (length(trim(reason)) > 0)
);
comment on table drift_strike is 'append-only';
