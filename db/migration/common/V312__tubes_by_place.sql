-- Which tube went to which place of a frame. The section that lies in a lot is stated once for the lot; each tube that is
-- issued keeps the section it was taken for.
create table lot_section (
    id bigint generated always as identity,
    lot_id bigint not null,
    statement integer not null,
    outside numeric(8, 3) not null,
    wall numeric(8, 3) not null,
    middle numeric(8, 3),
    other_wall numeric(8, 3),
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint lot_section_id_pkey primary key (id),
    constraint lot_section_lot_id_fkey foreign key (lot_id) references lot (id),
    constraint lot_section_statement_check check (statement >= 1),
    constraint lot_section_outside_check check (outside > 0),
    constraint lot_section_wall_check check (wall > 0 and 2 * wall < outside),
    constraint lot_section_middle_check check (middle > 0 and 2 * middle < outside),
    constraint lot_section_other_wall_check check (other_wall > 0 and 2 * other_wall < outside)
);
create index lot_section_lot_id_idx on lot_section (lot_id);
comment on table lot_section is 'append-only: the newest statement of a lot stands';

create table tube_issue (
    id bigint generated always as identity,
    use_id bigint not null,
    operation_id bigint not null,
    place varchar(40) not null,
    outside numeric(8, 3),
    wall numeric(8, 3),
    middle numeric(8, 3),
    other_wall numeric(8, 3),
    reason varchar(400),
    by_person bigint not null,
    constraint tube_issue_id_pkey primary key (id),
    constraint tube_issue_use_id_key unique (use_id),
    constraint tube_issue_use_id_fkey foreign key (use_id) references lot_use (id),
    constraint tube_issue_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index tube_issue_operation_id_idx on tube_issue (operation_id);
comment on table tube_issue is 'append-only: that a piece was scrapped stands beside the piece';

-- A step may rest on every tube being issued to its own place.
alter table route_step drop constraint route_step_proof_check;
alter table route_step add constraint route_step_proof_check
    check (proof in ('SERIAL_STRUCK', 'SERIAL_READ', 'CLEANED', 'BRUSHED', 'WARM_DRY', 'WATER_BREAK', 'WELDED', 'LOOKED', 'TORQUED',
                     'TORQUED_AGAIN', 'JOINED', 'BEDDED', 'RIDDEN', 'COUNTRY', 'PACKED', 'TUBES'));
alter table step drop constraint step_proof_check;
alter table step add constraint step_proof_check
    check (proof in ('SERIAL_STRUCK', 'SERIAL_READ', 'CLEANED', 'BRUSHED', 'WARM_DRY', 'WATER_BREAK', 'WELDED', 'LOOKED', 'TORQUED',
                     'TORQUED_AGAIN', 'JOINED', 'BEDDED', 'RIDDEN', 'COUNTRY', 'PACKED', 'TUBES'));

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('tube.outside_tolerance', 'Cutting', 80, 'Outside of a tube, plus or minus', 'A lot whose outside lies further from the drawing is another tube; one within it, and not the same, is for the QA lead.', 'NUMBER', 'mm', 0, 2),
('tube.wall_tolerance', 'Cutting', 90, 'Wall of a tube, plus or minus', 'The same for its wall.', 'NUMBER', 'mm', 0, 1),
('tube.tempers.6061', 'Cutting', 100, 'Tempers of 6061 tube', 'Those that may be issued, by the letters of EN 515, a space between them. Empty: any.', 'TEXT', '', null, null),
('tube.tempers.7005', 'Cutting', 110, 'Tempers of 7005 tube', 'Those that may be issued, by the letters of EN 515, a space between them. Empty: any.', 'TEXT', '', null, null);

insert into setting (code, worth, source, reason, by_person, since) values
('tube.outside_tolerance', '0.1', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('tube.wall_tolerance', '0.05', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('tube.tempers.6061', 'T6', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('tube.tempers.7005', 'T6', 'common practice', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
