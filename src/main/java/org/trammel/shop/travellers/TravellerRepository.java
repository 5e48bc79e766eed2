package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface TravellerRepository extends JpaRepository<Traveller, Long> {

    List<Traveller> findBySerialOrderById(String serial);

    List<Traveller> findBySerialInOrderById(Collection<String> serials);

    @Query("select new org.trammel.shop.travellers.Traces$SerialOf(t.id, t.serial) from Traveller t where t.id in :ids")
    List<Traces.SerialOf> serialsOf(Collection<Long> ids);

    /** The traveller and those whose place it took by a newer revision: they are about the same piece. */
    @Query("""
            select t from Traveller t, Traveller mine
            where mine.id = :travellerId and t.serial = mine.serial and t.part = mine.part
              and (t.id = mine.id or t.state = org.trammel.shop.travellers.TravellerState.WITHDRAWN)
            order by t.id
            """)
    List<Traveller> ofSamePiece(long travellerId);

    List<Traveller> findByParentIdOrderById(long parentId);

    /** The newest copy of every part of a frame. */
    @Query("""
            select t from Traveller t where t.parentId = :wholeId
              and not exists (select 1 from Traveller later
                              where later.parentId = t.parentId and later.part = t.part and later.id > t.id)
            order by t.id
            """)
    List<Traveller> partsInForce(long wholeId);

    List<Traveller> findByOrderIdOrderById(long orderId);

    /** Open travellers whose serial ends so; parts and station checks included. */
    @Query("""
            select t from Traveller t
            where t.serial like :ending and t.state in ('RELEASED', 'IN_WORK', 'FINISHED')
            order by t.id
            """)
    List<Traveller> openEndingIn(String ending);

    /** Travellers whose operation at hand is at one of the stations. */
    @Query("""
            select t from Traveller t
            where t.currentStation in :stations and t.state in ('RELEASED', 'IN_WORK')
            order by t.releasedAt, t.id
            """)
    List<Traveller> standingAt(Collection<String> stations, Limit limit);

    /** Of these frames, those of which a part is not finished. */
    @Query("""
            select distinct t.parentId from Traveller t
            where t.parentId in :wholeIds and t.state in ('RELEASED', 'IN_WORK')
            """)
    Set<Long> withPartsInWork(Collection<Long> wholeIds);

    /** Every frame and part that is not shipped, scrapped or withdrawn. */
    @Query("""
            select t from Traveller t
            where t.state in ('RELEASED', 'IN_WORK', 'FINISHED') and t.orderId is not null
            order by t.releasedAt, t.id
            """)
    List<Traveller> inShop();

    /** Serials of frames and parts that are not shipped, scrapped or withdrawn. */
    @Query("select distinct t.serial from Traveller t where t.state in ('RELEASED', 'IN_WORK', 'FINISHED')")
    Set<String> openSerials();
}
