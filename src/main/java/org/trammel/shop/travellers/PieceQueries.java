package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** What is asked of many pieces at once; each is one statement. */
interface PieceQueries extends Repository<Traveller, Long> {

    /** A traveller of a piece that was revised. */
    record Line(long id, String serial, String part, TravellerState state) {

        boolean samePlace(Line other) {
            return serial.equals(other.serial) && part.equals(other.part);
        }
    }

    @Query("""
            select new org.trammel.shop.travellers.PieceQueries$Line(t.id, t.serial, t.part, t.state) from Traveller t
            where exists (select 1 from Traveller w where w.serial = t.serial and w.part = t.part
                          and w.state = org.trammel.shop.travellers.TravellerState.WITHDRAWN)
            order by t.serial, t.part, t.id
            """)
    List<Line> revised();

    /** The traveller and the older ones of its serial and part, newest first. */
    @Query("""
            select new org.trammel.shop.travellers.PieceQueries$Line(t.id, t.serial, t.part, t.state)
            from Traveller t, Traveller mine
            where mine.id = :travellerId and t.serial = mine.serial and t.part = mine.part and t.id <= mine.id
            order by t.id desc
            """)
    List<Line> before(long travellerId);

    /** Somebody who ticked at an operation. */
    record TickedAt(long travellerId, String qualification, long personId) {}

    @Query("""
            select distinct new org.trammel.shop.travellers.PieceQueries$TickedAt(o.travellerId, o.qualification, k.personId)
            from Tick k, Operation o
            where o.id = k.operationId and k.untick = false and o.qualification is not null
              and o.travellerId in :travellers
            """)
    List<TickedAt> tickedAt(Collection<Long> travellers);
}
