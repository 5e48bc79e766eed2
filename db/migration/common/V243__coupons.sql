-- How well coupons of known stock conduct. A row that takes another out of the count keeps why in the place of what it is known by.
create table conductivity_coupon (
    id bigint generated always as identity,
    metal varchar(20) not null,
    coupon varchar(40) not null,
    known_by varchar(200) not null,
    percent_iacs numeric(8, 3) not null,
    gauge varchar(40) not null,
    takes_out bigint,
    by_person bigint not null,
    at timestamp(6) with time zone not null,
    act_id uuid not null,
    constraint conductivity_coupon_id_pkey primary key (id),
    constraint conductivity_coupon_act_id_key unique (act_id),
    constraint conductivity_coupon_takes_out_key unique (takes_out),
    constraint conductivity_coupon_takes_out_fkey foreign key (takes_out) references conductivity_coupon (id),
    constraint conductivity_coupon_percent_iacs_check check (percent_iacs > 0 and percent_iacs <= 100)
);
create index conductivity_coupon_metal_idx on conductivity_coupon (metal);
comment on table conductivity_coupon is 'append-only: a coupon is taken out of the count by a row that names it';

insert into setting_definition (code, place, sequence, name, explanation, kind, unit, lowest, highest) values
('coupon.share', 'Coupons of known stock', 10, 'Share of known stock in its window', 'By the tolerance interval told from the coupons.', 'NUMBER', '%', 50, 99.9),
('coupon.confidence', 'Coupons of known stock', 11, 'Confidence that the share lies in it', 'The higher, the wider the window.', 'NUMBER', '%', 50, 99.9);

insert into setting (code, worth, source, reason, by_person, since) values
('coupon.share', '95', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00'),
('coupon.confidence', '95', 'shop default', 'Shipped with the program', 0, timestamp with time zone '2000-01-01 00:00:00+00');
