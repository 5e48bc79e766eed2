-- One act may take cleaner and cloth, and prove several frames that are cleaned together.
alter table metal_tool_use drop constraint metal_tool_use_act_id_key;
alter table metal_tool_use add constraint metal_tool_use_act_id_operation_id_tool_key unique (act_id, operation_id, tool);
alter table metal_air drop constraint metal_air_act_id_key;
alter table metal_air add constraint metal_air_act_id_operation_id_key unique (act_id, operation_id);

-- Where it was taken: what lies on that bench is offered there first. Empty for what was taken before this was kept.
alter table metal_tool_use add station varchar(20) default '' not null;
create index metal_tool_use_station_idx on metal_tool_use (station);
