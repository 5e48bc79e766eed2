-- Makes the two roles and the database of a shop; run once, as a superuser of the cluster:
--   psql -v owner_password=... -v application_password=... -f ops/postgres-roles.sql postgres
-- trammel_owner runs the migrations and the restores and owns the tables; trammel is what the service connects as.
\set ON_ERROR_STOP on
select format('create role trammel_owner login createdb password %L', :'owner_password')
where not exists (select 1 from pg_roles where rolname = 'trammel_owner') \gexec
select format('create role trammel login password %L', :'application_password')
where not exists (select 1 from pg_roles where rolname = 'trammel') \gexec
select 'create database trammel owner trammel_owner'
where not exists (select 1 from pg_database where datname = 'trammel') \gexec
revoke all on database trammel from public;
grant connect on database trammel to trammel;
