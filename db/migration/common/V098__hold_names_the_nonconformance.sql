-- What people typed about a nonconformance is kept where it can be erased; its hold only names it.
update hold set words = source || ': what was found stands on its sheet.'
where reason = 'NONCONFORMANCE' and source like 'NC-%' and words like source || ': %';
