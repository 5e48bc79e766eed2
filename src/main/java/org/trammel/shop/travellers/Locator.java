package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import org.trammel.shop.records.Chains;

/** Tells which frame a step, an operation or a hold belongs to, before that frame's chain is locked. */
interface Locator extends Repository<Traveller, Long> {

    /** A frame, as far as locking needs it. */
    record Place(String serial, String orderNumber) {

        String chain() {
            return orderNumber.equals(Traveller.NO_ORDER) ? Chains.SHOP : Chains.frame(serial);
        }
    }

    /** A list in a query is translated anew each time; nearly every tick is of one step. */
    default List<Place> ofSteps(Collection<Long> stepIds) {
        return stepIds.size() == 1 ? ofStep(stepIds.iterator().next()) : ofSeveralSteps(stepIds);
    }

    @Query("""
            select distinct new org.trammel.shop.travellers.Locator$Place(t.serial, t.orderNumber)
            from Traveller t, Operation o, Step s
            where s.id = :stepId and o.id = s.operationId and t.id = o.travellerId
            """)
    List<Place> ofStep(long stepId);

    @Query("""
            select distinct new org.trammel.shop.travellers.Locator$Place(t.serial, t.orderNumber)
            from Traveller t, Operation o, Step s
            where s.id in :stepIds and o.id = s.operationId and t.id = o.travellerId
            """)
    List<Place> ofSeveralSteps(Collection<Long> stepIds);

    @Query("""
            select distinct new org.trammel.shop.travellers.Locator$Place(t.serial, t.orderNumber)
            from Traveller t, Operation o where o.id in :operationIds and t.id = o.travellerId
            """)
    List<Place> ofOperations(Collection<Long> operationIds);

    @Query("""
            select distinct new org.trammel.shop.travellers.Locator$Place(t.serial, t.orderNumber)
            from Traveller t, Operation o, Characteristic c
            where c.id = :characteristicId and o.id = c.operationId and t.id = o.travellerId
            """)
    List<Place> ofCharacteristic(long characteristicId);

    @Query("""
            select distinct new org.trammel.shop.travellers.Locator$Place(t.serial, t.orderNumber)
            from Traveller t where t.id = :travellerId
            """)
    List<Place> ofTraveller(long travellerId);

    @Query("""
            select distinct new org.trammel.shop.travellers.Locator$Place(t.serial, t.orderNumber)
            from Traveller t where t.serial = :serial
            """)
    List<Place> ofSerial(String serial);

    @Query("""
            select distinct new org.trammel.shop.travellers.Locator$Place(t.serial, t.orderNumber)
            from Traveller t, Hold h where h.id = :holdId and t.serial = h.serial
            """)
    List<Place> ofHold(long holdId);
}
