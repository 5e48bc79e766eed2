-- Designs: one for each order, as revisions. A released revision never changes; a change of mind is the next letter.
create table design (
    id bigint generated always as identity,
    drawn_for varchar(20) not null,
    version bigint not null,
    constraint design_id_pkey primary key (id),
    constraint design_drawn_for_key unique (drawn_for)
);

-- What people wrote lies among the kept words; the approver's name is erased there with the customer's data.
create table design_revision (
    id bigint generated always as identity,
    design_id bigint not null,
    position integer not null,
    letter varchar(3) not null,
    state varchar(30) not null,
    metal varchar(20) not null,
    kind varchar(40) not null,
    description varchar(200) not null,
    route_revision_id bigint,
    test_family varchar(60),
    drawing_sha256 varchar(64),
    drawing_name varchar(200),
    reason_words bigint,
    begun_by bigint not null,
    begun_at timestamp(6) with time zone not null,
    sent_by bigint,
    sent_at timestamp(6) with time zone,
    approved_by bigint,
    approved_at timestamp(6) with time zone,
    approved_on date,
    approved_sha256 varchar(64),
    approver_words bigint,
    checked_at timestamp(6) with time zone,
    released_by bigint,
    released_at timestamp(6) with time zone,
    superseded_at timestamp(6) with time zone,
    withdrawn_by bigint,
    withdrawn_at timestamp(6) with time zone,
    withdrawn_words bigint,
    version bigint not null,
    constraint design_revision_id_pkey primary key (id),
    constraint design_revision_design_id_position_key unique (design_id, position),
    constraint design_revision_design_id_letter_key unique (design_id, letter),
    constraint design_revision_reason_words_fkey foreign key (reason_words) references kept_words (id),
    constraint design_revision_approver_words_fkey foreign key (approver_words) references kept_words (id),
    constraint design_revision_withdrawn_words_fkey foreign key (withdrawn_words) references kept_words (id),
    constraint design_revision_design_id_fkey foreign key (design_id) references design (id),
    constraint design_revision_state_check check (state in ('DRAFT', 'SENT', 'APPROVED', 'CHECKED', 'RELEASED',
        'SUPERSEDED', 'WITHDRAWN'))
);

-- What the drawing says about a characteristic of the route, in the characteristic's unit.
create table design_nominal (
    revision_id bigint not null,
    characteristic varchar(40) not null,
    nominal numeric(14, 4) not null,
    lower_deviation numeric(14, 4),
    upper_deviation numeric(14, 4),
    overrides_limits boolean not null,
    constraint design_nominal_revision_id_characteristic_pkey primary key (revision_id, characteristic),
    constraint design_nominal_revision_id_fkey foreign key (revision_id) references design_revision (id),
    constraint design_nominal_upper_deviation_check check (upper_deviation >= lower_deviation)
);

create table design_geometry (
    revision_id bigint not null,
    input varchar(40) not null,
    amount numeric(14, 4) not null,
    constraint design_geometry_revision_id_input_pkey primary key (revision_id, input),
    constraint design_geometry_revision_id_fkey foreign key (revision_id) references design_revision (id)
);

create table design_component (
    revision_id bigint not null,
    line integer not null,
    what varchar(60) not null,
    description varchar(200) not null,
    constraint design_component_revision_id_line_pkey primary key (revision_id, line),
    constraint design_component_revision_id_fkey foreign key (revision_id) references design_revision (id)
);

-- The design gate: one answer a check, then two signatures.
create table design_check (
    id bigint generated always as identity,
    revision_id bigint not null,
    code varchar(30) not null,
    answer varchar(30) not null,
    decision_words bigint,
    answered_by bigint not null,
    answered_at timestamp(6) with time zone not null,
    constraint design_check_id_pkey primary key (id),
    constraint design_check_revision_id_code_key unique (revision_id, code),
    constraint design_check_decision_words_fkey foreign key (decision_words) references kept_words (id),
    constraint design_check_revision_id_fkey foreign key (revision_id) references design_revision (id),
    constraint design_check_answer_check check (answer in ('MEETS', 'DECIDED', 'NOT_CONCERNED'))
);

create table design_signature (
    id bigint generated always as identity,
    revision_id bigint not null,
    capacity varchar(30) not null,
    person_id bigint not null,
    signed_at timestamp(6) with time zone not null,
    constraint design_signature_id_pkey primary key (id),
    constraint design_signature_revision_id_capacity_key unique (revision_id, capacity),
    constraint design_signature_revision_id_person_id_key unique (revision_id, person_id),
    constraint design_signature_revision_id_fkey foreign key (revision_id) references design_revision (id),
    constraint design_signature_capacity_check check (capacity in ('OWNER', 'QA_LEAD'))
);

create table design_note (
    id bigint generated always as identity,
    revision_id bigint not null,
    note_words bigint not null,
    written_by bigint not null,
    written_at timestamp(6) with time zone not null,
    constraint design_note_id_pkey primary key (id),
    constraint design_note_note_words_fkey foreign key (note_words) references kept_words (id),
    constraint design_note_revision_id_fkey foreign key (revision_id) references design_revision (id)
);

create index design_note_revision_id_idx on design_note (revision_id);

comment on table design_note is 'append-only: what was noted at a revision';
