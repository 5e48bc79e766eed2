-- A nonconformance may turn out to be none: read again it conforms, or what was seen was nothing.
alter table nonconformance drop constraint nonconformance_decision_check;
alter table nonconformance add constraint nonconformance_decision_check
    check (decision in ('REWORK', 'REPAIR', 'CONCESSION', 'SCRAP', 'RETURN', 'CLEARED'));
