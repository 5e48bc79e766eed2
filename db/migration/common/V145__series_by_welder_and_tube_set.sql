-- A chart follows a jig, a welder or a tube set; those that were there follow jigs.
alter table drift_series add column followed varchar(10) default 'JIG' not null;
alter table drift_series add column subject varchar(120);
alter table drift_series alter column jig_code drop not null;
alter table drift_series add constraint drift_series_followed_check check (followed in ('JIG', 'WELDER', 'TUBE_SET'));
alter table drift_series add constraint drift_series_followed_jig_code_subject_check
    check ((followed = 'JIG') = (jig_code is not null) and (followed = 'JIG') = (subject is null));
alter table drift_series add constraint drift_series_followed_subject_characteristic_code_key
    unique (followed, subject, characteristic_code);
create index drift_series_characteristic_code_idx on drift_series (characteristic_code);
