-- An age that fell short is topped up; that is neither a whole age nor a bake.
alter table oven_programme drop constraint oven_programme_purpose_check;
alter table oven_programme add constraint oven_programme_purpose_check check (purpose in ('SOLUTION', 'AGEING', 'TOP_UP', 'CURE', 'OTHER'));
