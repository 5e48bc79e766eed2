-- What the application's role may do, set again after every migration: read and write every table, own none, and only
-- add to tables whose comment begins with "append-only". The role that runs the migrations owns the tables.
do $$
declare
    application text := '${application-role}';
    marked regclass;
begin
    execute format('grant usage on schema public to %I', application);
    execute format('grant select, insert, update, delete on all tables in schema public to %I', application);
    execute format('grant usage, select on all sequences in schema public to %I', application);
    execute format('revoke insert, update, delete on flyway_schema_history from %I', application);
    for marked in
        select oid from pg_class
        where relnamespace = 'public'::regnamespace and relkind in ('r', 'p')
            and obj_description(oid, 'pg_class') like 'append-only%'
    loop
        execute format('revoke update, delete, truncate on %s from %I', marked, application);
    end loop;
end
$$;
