package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A lot as it stands.
 *
 * @param what what it is, with sections or sizes
 * @param metal metal of a tube or fitting; null for everything else
 * @param materialClass class the table of fits knows it by; null for kinds the table says nothing about
 * @param grade alloy and temper, or the maker's grade; may be empty
 * @param heat heat or batch number; may be empty
 * @param reservedFor the one family of metals it may be used on; null if any
 * @param expiresOn last day it may be used; null if it does not age
 * @param certificateType such as 3.1 or batch; empty without a certificate
 * @param certificate number of the certificate; empty if it has none
 * @param certificateFile hash of the file kept of it; null if none is kept
 * @param quantity what was received; null if it is not counted
 * @param quantityLeft what is left of it, remnants not counted; null if it is not counted
 * @param version to be sent back with a change
 */
public record Lot(
        long id,
        String code,
        LotKind kind,
        String what,
        @Nullable String metal,
        @Nullable String materialClass,
        String grade,
        String heat,
        @Nullable MetalFamily reservedFor,
        String supplier,
        LocalDate receivedOn,
        @Nullable LocalDate expiresOn,
        String certificateType,
        String certificate,
        @Nullable String certificateFile,
        @Nullable BigDecimal quantity,
        @Nullable BigDecimal quantityLeft,
        String unit,
        LotState state,
        String stateReason,
        Instant stateSince,
        long version) {

    /** Whether a certificate is on record. */
    public boolean certified() {
        return !certificate.isEmpty() || certificateFile != null;
    }

    /** Whether it is past its last day. */
    public boolean expired(LocalDate on) {
        return expiresOn != null && on.isAfter(expiresOn);
    }
}
