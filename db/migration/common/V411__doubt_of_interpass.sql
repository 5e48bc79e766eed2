-- What the doubt of the thermometer took from the limit between nodes; nothing is known of what was opened before.
alter table weld_node_opened add column interpass_guard_degc numeric(8, 2);
