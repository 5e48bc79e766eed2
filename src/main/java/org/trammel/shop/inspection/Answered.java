package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.util.List;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.travellers.Evidence;

/** A characteristic that is answered with yes or no at each point, such as whether a plug goes in. */
final class Answered {

    private Answered() {}

    static boolean is(Evidence.Wanted wanted) {
        return CharacteristicSheet.isAnswered(wanted.unit());
    }

    /** Refuses what is neither. */
    static void require(Evidence.Wanted wanted, List<BigDecimal> raw) {
        for (int i = 0; is(wanted) && i < raw.size(); i++) {
            if (raw.get(i).compareTo(BigDecimal.ZERO) != 0 && raw.get(i).compareTo(BigDecimal.ONE) != 0) {
                throw Refusal.input(
                        raw.size() == 1 ? "value" : "value" + i,
                        wanted.code() + ", " + wanted.name() + ", is not read.",
                        "“" + wanted.points().get(i) + "” is answered with yes or no.",
                        "Choose yes or no for each.");
            }
        }
    }
}
