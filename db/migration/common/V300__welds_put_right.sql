-- What was entered wrongly of a node that did not conform is entered again with the reason; the newest stands, and the others stay.
alter table weld_node_done drop constraint weld_node_done_opened_id_key;
alter table weld_node_done add column number integer not null default 0;
alter table weld_node_done add column correction varchar(1000);
alter table weld_node_done add column procedure_id bigint;
alter table weld_node_done add constraint weld_node_done_opened_id_number_key unique (opened_id, number);
alter table weld_node_done add constraint weld_node_done_procedure_id_fkey foreign key (procedure_id) references weld_procedure (id);
alter table weld_node_done add constraint weld_node_done_number_check check (number = 0 or correction is not null);

-- A node that another loop of its operation did not touch.
create table weld_node_kept (
    id bigint generated always as identity,
    done_id bigint not null,
    operation_id bigint not null,
    step_id bigint not null,
    node varchar(400) not null,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint weld_node_kept_id_pkey primary key (id),
    constraint weld_node_kept_act_id_key unique (act_id),
    constraint weld_node_kept_step_id_key unique (step_id),
    constraint weld_node_kept_done_id_fkey foreign key (done_id) references weld_node_done (id),
    constraint weld_node_kept_operation_id_fkey foreign key (operation_id) references operation (id)
);
create index weld_node_kept_operation_id_idx on weld_node_kept (operation_id);
comment on table weld_node_kept is 'append-only';
