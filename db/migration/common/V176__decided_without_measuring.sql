-- A frame that was measured with a gauge found wrong is kept as it is without measuring it again only where as many
-- agree as to a concession. What is put forward has a number: nobody agrees to another that took its place.
create table rejudged_frame_decision (
    id bigint generated always as identity,
    rejudgement_id bigint not null,
    serial varchar(20) not null,
    number integer not null,
    words_id bigint not null,
    changes_what_was_ordered boolean not null,
    customer_words_id bigint,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint rejudged_frame_decision_id_pkey primary key (id),
    constraint rejudged_frame_decision_rejudgement_id_serial_number_key unique (rejudgement_id, serial, number),
    constraint rejudged_frame_decision_rejudgement_id_serial_fkey foreign key (rejudgement_id, serial) references rejudged_frame (rejudgement_id, serial),
    constraint rejudged_frame_decision_words_id_fkey foreign key (words_id) references kept_words (id),
    constraint rejudged_frame_decision_customer_words_id_fkey foreign key (customer_words_id) references kept_words (id),
    constraint rejudged_frame_decision_changes_what_was_ordered_check check (customer_words_id is not null or not changes_what_was_ordered)
);
comment on table rejudged_frame_decision is 'append-only';

create table rejudged_frame_agreement (
    id bigint generated always as identity,
    decision_id bigint not null,
    person_id bigint not null,
    agreed_as varchar(20) not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint rejudged_frame_agreement_id_pkey primary key (id),
    constraint rejudged_frame_agreement_decision_id_agreed_as_key unique (decision_id, agreed_as),
    constraint rejudged_frame_agreement_decision_id_fkey foreign key (decision_id) references rejudged_frame_decision (id)
);
comment on table rejudged_frame_agreement is 'append-only';
