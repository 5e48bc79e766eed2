package org.trammel.shop.materials;

import java.util.List;
import org.trammel.shop.records.Act;

/**
 * A lot was blocked. Published inside the transaction that blocks it.
 *
 * @param wentInto every place it went into, scrapped ones too
 */
public record LotBlocked(Act act, long lotId, String code, LotKind kind, List<WentInto> wentInto) {

    public LotBlocked {
        wentInto = List.copyOf(wentInto);
    }
}
