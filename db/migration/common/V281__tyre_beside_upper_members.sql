-- The limit now holds beside seatstays and the upper members of a swing arm too.
update setting_definition set explanation = 'Least room to chainstays and seatstays, or to the sides, the upper members and the bridge of a swing arm, for mud and for a wheel that is out of true.'
where code = 'gate.tyre.stays';
