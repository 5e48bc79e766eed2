-- Gauges that read some of the figures a reading was reduced from, beside the one the reading names: whichever of them is
-- found wrong later, the reading is found.
create table reading_gauge (
    gauge_id bigint not null,
    reading_id bigint not null,
    constraint reading_gauge_gauge_id_reading_id_pkey primary key (gauge_id, reading_id),
    constraint reading_gauge_gauge_id_fkey foreign key (gauge_id) references gauge (id),
    constraint reading_gauge_reading_id_fkey foreign key (reading_id) references reading (id)
);
comment on table reading_gauge is 'append-only';

insert into reading_gauge (gauge_id, reading_id)
select distinct a.gauge_id, r.id
from reading r
    join alignment_used u on u.reduction_id = r.reduction_id
    join alignment_reading a on a.id = u.reading_id
where a.gauge_id <> r.gauge_id;

-- Where nothing was read with a gauge there is nothing to close.
update rejudgement
set state = 'CLOSED', closed_by = 0, closed_at = opened_at,
    closed_words = 'Nothing was read with it since it was last right.'
where readings = 0 and state <> 'CLOSED';
