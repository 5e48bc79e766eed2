-- Of several who must lift a hold together, each says why. Who agreed before this table was there left no words.
create table hold_agreement (
    id bigint generated always as identity,
    hold_id bigint not null,
    person_id bigint not null,
    at timestamp(6) with time zone not null,
    words varchar(1000) not null,
    constraint hold_agreement_id_pkey primary key (id),
    constraint hold_agreement_hold_id_fkey foreign key (hold_id) references hold (id),
    constraint hold_agreement_person_id_fkey foreign key (person_id) references person (id)
);
create index hold_agreement_hold_id_idx on hold_agreement (hold_id);
comment on table hold_agreement is 'append-only';
