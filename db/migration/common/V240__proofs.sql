-- What a step rests on besides its tick: empty where it rests on nothing more.
alter table route_step add proof varchar(20);
alter table route_step add constraint route_step_proof_check
    check (proof in ('SERIAL_STRUCK', 'SERIAL_READ', 'CLEANED', 'BRUSHED', 'WARM_DRY'));
alter table step add proof varchar(20);
alter table step add constraint step_proof_check
    check (proof in ('SERIAL_STRUCK', 'SERIAL_READ', 'CLEANED', 'BRUSHED', 'WARM_DRY'));
