-- Two more ways from many readings to the one that is judged: a fifth of them may lie below, or less than a fifth.
alter table route_characteristic drop constraint route_characteristic_reduction_check;
alter table route_characteristic add constraint route_characteristic_reduction_check
    check (reduction in ('SINGLE', 'MEAN', 'WORST', 'SPAN', 'GREATEST', 'LEAST', 'ALL_BUT_FIFTH', 'ALL_BUT_UNDER_FIFTH'));
alter table characteristic drop constraint characteristic_reduction_check;
alter table characteristic add constraint characteristic_reduction_check
    check (reduction in ('SINGLE', 'MEAN', 'WORST', 'SPAN', 'GREATEST', 'LEAST', 'ALL_BUT_FIFTH', 'ALL_BUT_UNDER_FIFTH'));
