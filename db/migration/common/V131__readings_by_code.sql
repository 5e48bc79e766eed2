-- The last values of one characteristic on whatever frame stand beside the newest.
create index reading_characteristic_code_id_idx on reading (characteristic_code, id);
