-- What a calibration found at its points. One that found the gauge wrong and did not put it right is kept too; it has no
-- due date, because nobody measures by it.
alter table gauge_calibration add column found varchar(20) default 'NOT_STATED' not null;
alter table gauge_calibration add column stands boolean default true not null;
alter table gauge_calibration add column put_right boolean default false not null;
alter table gauge_calibration add column as_left varchar(4000) default '' not null;
alter table gauge_calibration add column unit varchar(20) default '' not null;
alter table gauge_calibration alter column due_on drop not null;
alter table gauge_calibration add constraint gauge_calibration_found_check check (found in ('NOT_STATED', 'WITHIN', 'OVER'));
alter table gauge_calibration add constraint gauge_calibration_stands_check check (stands = (due_on is not null));

create table gauge_calibration_point (
    id bigint generated always as identity,
    calibration_id bigint not null,
    sequence integer not null,
    place numeric(16, 6) not null,
    error numeric(16, 6) not null,
    permissible numeric(16, 6) not null,
    constraint gauge_calibration_point_id_pkey primary key (id),
    constraint gauge_calibration_point_calibration_id_sequence_key unique (calibration_id, sequence),
    constraint gauge_calibration_point_calibration_id_fkey foreign key (calibration_id) references gauge_calibration (id),
    constraint gauge_calibration_point_permissible_check check (permissible > 0)
);
comment on table gauge_calibration_point is 'append-only: errors found at the points of a calibration';
