-- Searched at every photograph step, every booking back, every story and every remnant.
create index traveller_photo_step_id_idx on traveller_photo (step_id);
create index traveller_photo_operation_id_idx on traveller_photo (operation_id);
create index consignment_operation_id_idx on consignment (operation_id);
create index carry_over_new_operation_id_idx on carry_over (new_operation_id);
create index lot_remnant_use_id_idx on lot_remnant (use_id);
