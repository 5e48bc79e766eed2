-- What people write about a nonconformance, who of the customer agreed included, is kept apart and can be erased.
create table nonconformance_wording (
    id bigint generated always as identity,
    nonconformance_id bigint not null,
    decision_number integer not null,
    about varchar(20) not null,
    words_id bigint not null,
    constraint nonconformance_wording_id_pkey primary key (id),
    constraint nonconformance_wording_nonconformance_id_fkey foreign key (nonconformance_id) references nonconformance (id),
    constraint nonconformance_wording_words_id_fkey foreign key (words_id) references kept_words (id),
    constraint nonconformance_wording_about_check check (about in ('FOUND', 'DECISION', 'LIMITS', 'CUSTOMER', 'CLOSING'))
);
create index nonconformance_wording_nonconformance_id_idx on nonconformance_wording (nonconformance_id);
comment on table nonconformance_wording is 'append-only';

create table moved_words (nonconformance_id bigint, decision_number integer, about varchar(20), salt varchar(64), words varchar(1000), at timestamp(6) with time zone);
insert into moved_words
    select id, 0, 'FOUND', lower(rawtohex(secure_rand(32))), words, opened_at from nonconformance
    union all select id, decision_number, 'DECISION', lower(rawtohex(secure_rand(32))), decision_words, opened_at from nonconformance where decision_words is not null
    union all select id, decision_number, 'LIMITS', lower(rawtohex(secure_rand(32))), limits, opened_at from nonconformance where limits is not null
    union all select id, decision_number, 'CUSTOMER', lower(rawtohex(secure_rand(32))), customer_agreement, opened_at from nonconformance where customer_agreement is not null
    union all select id, decision_number, 'CLOSING', lower(rawtohex(secure_rand(32))), close_words, opened_at from nonconformance where close_words is not null;
insert into kept_words (sha256, kept_at) select lower(rawtohex(hash('SHA-256', stringtoutf8(salt || char(10) || words)))), at from moved_words;
insert into kept_words_text (words_id, salt, words)
    select k.id, m.salt, m.words from moved_words m join kept_words k on k.sha256 = lower(rawtohex(hash('SHA-256', stringtoutf8(m.salt || char(10) || m.words))));
insert into nonconformance_wording (nonconformance_id, decision_number, about, words_id)
    select m.nonconformance_id, m.decision_number, m.about, k.id
    from moved_words m join kept_words k on k.sha256 = lower(rawtohex(hash('SHA-256', stringtoutf8(m.salt || char(10) || m.words)))) order by k.id;
drop table moved_words;

alter table nonconformance drop column words;
alter table nonconformance drop column decision_words;
alter table nonconformance drop column limits;
alter table nonconformance drop column customer_agreement;
alter table nonconformance drop column close_words;
