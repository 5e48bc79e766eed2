package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface HoldRepository extends JpaRepository<Hold, Long> {

    List<Hold> findBySerialOrderById(String serial);

    @Query("select h from Hold h where h.serial = :serial and h.liftedAt is null order by h.id")
    List<Hold> openOn(String serial);

    /** Those that somebody may still lift or wait for; a scrapped frame waits for nothing. */
    @Query("""
            select h from Hold h where h.liftedAt is null and not exists (
            select t.id from Traveller t where t.serial = h.serial and t.parentId is null
            and t.state = org.trammel.shop.travellers.TravellerState.SCRAPPED)
            order by h.placedAt, h.id""")
    List<Hold> open();

    @Query("select h from Hold h where h.serial in :serials and h.liftedAt is null order by h.id")
    List<Hold> openOnAny(Collection<String> serials);
}
