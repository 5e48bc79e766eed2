package org.trammel.shop.bench;

import java.util.List;
import org.trammel.shop.stations.Jig;
import org.trammel.shop.travellers.FrameSheet;

/**
 * What a jig is set to for one frame.
 *
 * @param numbers what is read back blind afterwards, large
 * @param steps what the route says of the set-up, such as which way round the shell lies
 * @param jigs those of the station, with their check dates
 */
record JigSheet(
        FrameSheet.Head head, String operation, List<Number> numbers, List<String> steps, List<OfStation> jigs) {

    /** A number to set, and within what. */
    record Number(String code, String name, String value, String within) {}

    /** A jig, and whether its check is overdue. */
    record OfStation(Jig jig, boolean overdue) {}
}
