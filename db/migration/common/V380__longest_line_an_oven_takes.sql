-- The gate compares with this one number, whatever ovens a route names, and now over tubes and dropouts.
update setting_definition set explanation = 'Inside length of the shortest oven that any frame of the shop enters. The design gate compares the frame over its tubes and dropouts with this number alone; it does not ask which ovens a route names.'
where code = 'gate.oven.length';
