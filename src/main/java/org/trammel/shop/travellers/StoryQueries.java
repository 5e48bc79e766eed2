package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** What the desks and a frame's story ask beyond the reads of the bench; each is one statement. */
interface StoryQueries extends Repository<Traveller, Long> {

    @Query("select f from HoldFreed f where f.holdId in :holds order by f.id")
    List<HoldFreed> freed(Collection<Long> holds);

    @Query("""
            select o from Operation o
            where o.id in (select t.currentOperationId from Traveller t where t.id in :travellers)
            """)
    List<Operation> atHand(Collection<Long> travellers);

    @Query("""
            select c from Characteristic c, Operation o, Traveller t
            where c.state = org.trammel.shop.travellers.CharacteristicState.UNDECIDED
              and o.id = c.operationId and t.id = o.travellerId
              and o.state not in (org.trammel.shop.travellers.OperationState.DONE,
                                  org.trammel.shop.travellers.OperationState.REPEATED)
              and t.state in (org.trammel.shop.travellers.TravellerState.RELEASED,
                              org.trammel.shop.travellers.TravellerState.IN_WORK)
            order by c.id
            """)
    List<Characteristic> undecided();

    /** Clocks that a cold-set of an operation not yet done still asks for. */
    @Query("""
            select distinct o.travellerId as travellerId, c.coldSetClock as clock
            from Characteristic c, Operation o
            where o.id = c.operationId and c.coldSetClock is not null and o.travellerId in :travellers
              and o.state not in (org.trammel.shop.travellers.OperationState.DONE,
                                  org.trammel.shop.travellers.OperationState.REPEATED)
            """)
    List<ColdSetLeft> coldSetsLeft(Collection<Long> travellers);

    /** A traveller and a clock that a cold-set to come asks for. */
    interface ColdSetLeft {

        long getTravellerId();

        String getClock();
    }

    @Query("select o from Operation o where o.id in :ids")
    List<Operation> operations(Collection<Long> ids);

    @Query("select t from Traveller t where t.id in :ids")
    List<Traveller> travellers(Collection<Long> ids);

    @Query("""
            select t from Traveller t
            where t.part = '' and t.orderId is not null and t.state in :states and t.id < :before
            order by t.id desc
            """)
    List<Traveller> page(Collection<TravellerState> states, long before, Limit limit);

    @Query("""
            select t from Traveller t
            where t.part = '' and t.orderId is not null
              and t.state <> org.trammel.shop.travellers.TravellerState.WITHDRAWN
              and (t.serial like :ending or t.orderNumber in :numbers)
            order by t.id desc
            """)
    List<Traveller> found(String ending, Collection<String> numbers, Limit limit);

    @Query("select t from Tick t where t.operationId in :operations order by t.at, t.id")
    List<Tick> ticks(Collection<Long> operations);
}
