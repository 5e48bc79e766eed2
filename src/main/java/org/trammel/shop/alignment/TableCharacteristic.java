package org.trammel.shop.alignment;

import java.time.Instant;
import java.util.List;
import org.trammel.calc.metrology.Deviation;

/**
 * What a characteristic is on the table.
 *
 * @param name it has on the routes
 * @param deviations one for each of its sample points; empty if it is measured elsewhere
 * @param by who said so; 0 for what the program came with
 */
public record TableCharacteristic(String name, List<Deviation> deviations, String source, long by, Instant since) {

    public TableCharacteristic {
        deviations = List.copyOf(deviations);
    }
}
