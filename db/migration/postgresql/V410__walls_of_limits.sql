-- The reprints these tables were read in print no range of walls. From what a table reaches nothing is assumed: it says so.
update weld_limit_set
set what = what || '; the reprint prints no range of walls: look in the standard whether it reaches thin tubes'
where code in ('ISO-10042-1992', 'EN-25817-1992') and by_person = 0;
