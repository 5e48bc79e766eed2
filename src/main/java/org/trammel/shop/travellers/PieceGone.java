package org.trammel.shop.travellers;

import java.util.Set;
import org.trammel.shop.records.Act;

/**
 * A piece was scrapped whose serial and part another will bear. Published in the transaction that scraps it.
 *
 * @param travellerId of the piece that is gone
 * @param kept codes of the operations whose outcome goes on in the other piece; mostly none
 */
public record PieceGone(Act act, long travellerId, String serial, String part, Set<String> kept) {

    public PieceGone {
        kept = Set.copyOf(kept);
    }
}
