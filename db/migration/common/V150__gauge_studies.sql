-- Studies of a gauge: every appraiser measured every part so often. Appraisers stand by their initials only.
create table gauge_study (
    id bigint generated always as identity,
    gauge_id bigint not null,
    what varchar(200) not null,
    unit varchar(20) not null,
    tolerance numeric(16, 6),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint gauge_study_id_pkey primary key (id),
    constraint gauge_study_act_id_key unique (act_id),
    constraint gauge_study_gauge_id_fkey foreign key (gauge_id) references gauge (id),
    constraint gauge_study_tolerance_check check (tolerance > 0)
);
create index gauge_study_gauge_id_idx on gauge_study (gauge_id);

create table gauge_study_reading (
    id bigint generated always as identity,
    study_id bigint not null,
    sequence integer not null,
    part varchar(20) not null,
    appraiser varchar(10) not null,
    figure numeric(16, 6) not null,
    constraint gauge_study_reading_id_pkey primary key (id),
    constraint gauge_study_reading_study_id_sequence_key unique (study_id, sequence),
    constraint gauge_study_reading_study_id_fkey foreign key (study_id) references gauge_study (id)
);

comment on table gauge_study is 'append-only: studies of gauges';
comment on table gauge_study_reading is 'append-only: readings of studies of gauges';
