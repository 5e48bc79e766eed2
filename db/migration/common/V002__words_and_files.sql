-- Words people wrote and files they took. The log holds their hashes only, so what must be erased can be: the salted
-- text or the content goes, the hash and the note of the erasure stay, and the chains stay whole.
create table kept_words (
    id bigint generated always as identity,
    sha256 varchar(64) not null,
    kept_at timestamp(6) with time zone not null,
    constraint kept_words_id_pkey primary key (id)
);
comment on table kept_words is 'append-only';

create table kept_words_text (
    words_id bigint not null,
    salt varchar(64) not null,
    words varchar(8000) not null,
    constraint kept_words_text_words_id_pkey primary key (words_id),
    constraint kept_words_text_words_id_fkey foreign key (words_id) references kept_words (id)
);

create table kept_file (
    sha256 varchar(64) not null,
    media_type varchar(40) not null,
    name varchar(120) not null,
    size_bytes bigint not null,
    width_px integer,
    height_px integer,
    kept_at timestamp(6) with time zone not null,
    constraint kept_file_sha256_pkey primary key (sha256)
);
comment on table kept_file is 'append-only';

-- In parts, because one engine takes a megabyte in one value; small parts also stream.
create table kept_file_part (
    id bigint generated always as identity,
    file_sha256 varchar(64) not null,
    part integer not null,
    content bytea not null,
    constraint kept_file_part_id_pkey primary key (id),
    constraint kept_file_part_file_sha256_part_key unique (file_sha256, part),
    constraint kept_file_part_file_sha256_fkey foreign key (file_sha256) references kept_file (sha256)
);

create table erasure (
    thing varchar(80) not null,
    act_id uuid not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    constraint erasure_thing_pkey primary key (thing)
);
comment on table erasure is 'append-only';
