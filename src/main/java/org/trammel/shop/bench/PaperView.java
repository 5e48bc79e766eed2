package org.trammel.shop.bench;

import java.util.List;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.RouteView;

/**
 * A frame's traveller on one sheet of paper.
 *
 * @param code what the code on the sheet says: the serial and the revision
 * @param lots what the route asks to be scanned, and what was booked
 * @param places the operations by place, in order
 * @param overridden a line for each lapsed confirmation the QA lead overrode
 */
record PaperView(
        FrameSheet.Head head,
        String code,
        RouteView route,
        List<FrameSheet.NoteLine> notes,
        List<Lot> lots,
        List<Place> places,
        List<FrameSheet.HoldLine> holds,
        List<String> overridden,
        String printed) {

    /** Rows of all places; the table makes itself lower the more there are. */
    public int rows() {
        return places.stream().mapToInt(place -> place.rows().size()).sum();
    }

    /** A kind of lot and the codes booked; empty to be written by hand. */
    record Lot(String kind, String codes) {}

    /** Operations done one after the other at one place. */
    record Place(String name, List<Row> rows) {}

    /**
     * One operation.
     *
     * @param secondWanted a second person signs or reads; else the column is hatched
     * @param struck done over by a later loop
     */
    record Row(
            String operation,
            boolean hold,
            String step,
            String limit,
            String gauge,
            String reading,
            String signed,
            String second,
            String date,
            boolean secondWanted,
            boolean struck) {}
}
