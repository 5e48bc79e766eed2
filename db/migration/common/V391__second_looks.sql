-- What was seen and never measured is cleared only after somebody who took no part looked again.
create table nonconformance_look (
    id bigint generated always as identity,
    nonconformance_id bigint not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    words_id bigint not null,
    act_id uuid not null,
    constraint nonconformance_look_id_pkey primary key (id),
    constraint nonconformance_look_nonconformance_id_fkey foreign key (nonconformance_id) references nonconformance (id),
    constraint nonconformance_look_words_id_fkey foreign key (words_id) references kept_words (id)
);
create index nonconformance_look_nonconformance_id_idx on nonconformance_look (nonconformance_id);
comment on table nonconformance_look is 'append-only';
