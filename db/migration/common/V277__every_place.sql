-- Whether the bolts of a fastener are in every place of the characteristic it stands for, such as the four of a face plate.
alter table component_fastener add column every_place boolean default false not null;
