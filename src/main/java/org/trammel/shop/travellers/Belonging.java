package org.trammel.shop.travellers;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Tells whose sheet something stands on, so that what was sent from another frame's sheet is found out. */
@Transactional(readOnly = true)
public interface Belonging extends Repository<Traveller, Long> {

    /**
     * The frame, or the part of one, that something belongs to.
     *
     * @param serial stored serial
     * @param part letters of the part, empty for the frame itself; null where it belongs to all of the frame
     */
    record Owner(String serial, @Nullable String part) {

        /** Whether it is the frame of a serial, or the part of it. */
        public boolean is(String stored, String letters) {
            return serial.equals(stored) && (part == null || part.equals(letters));
        }

        /** As it stands in addresses. */
        public String tag() {
            return part == null || part.isEmpty() ? serial : serial + "-" + part;
        }
    }

    @Query("""
            select new org.trammel.shop.travellers.Belonging$Owner(t.serial, t.part)
            from Traveller t, Operation o, Step s
            where s.id = :stepId and o.id = s.operationId and t.id = o.travellerId
            """)
    Optional<Owner> ofStep(long stepId);

    @Query("""
            select new org.trammel.shop.travellers.Belonging$Owner(t.serial, t.part)
            from Traveller t, Operation o where o.id = :operationId and t.id = o.travellerId
            """)
    Optional<Owner> ofOperation(long operationId);

    @Query("""
            select new org.trammel.shop.travellers.Belonging$Owner(t.serial, t.part)
            from Traveller t, Operation o, Characteristic c
            where c.id = :characteristicId and o.id = c.operationId and t.id = o.travellerId
            """)
    Optional<Owner> ofCharacteristic(long characteristicId);

    @Query("""
            select new org.trammel.shop.travellers.Belonging$Owner(t.serial, t.part)
            from Traveller t where t.id = :travellerId
            """)
    Optional<Owner> ofTraveller(long travellerId);

    @Query("""
            select new org.trammel.shop.travellers.Belonging$Owner(h.serial, null)
            from Hold h where h.id = :holdId
            """)
    Optional<Owner> ofHold(long holdId);
}
