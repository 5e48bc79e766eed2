package org.trammel.shop.alignment;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.ScaleView;
import org.trammel.shop.web.TableView;
import org.trammel.shop.web.TrendView;

/**
 * What the sheet of the table shows.
 *
 * @param atHand whether figures may be read now
 * @param word the worst verdict in words; "not judged" before there is one
 * @param kind its mark
 * @param told how many of how many lie outside
 * @param rows one for each characteristic the table measures
 * @param chosen the row that the chart and the plate are about; null where there is none
 * @param history last values of its axis; null where there are fewer than two
 * @param notes how wide tubes are where both sides were read, whose figures were judged, a jig that nobody noted
 * @param push how far to push for the chosen row; null where it is not to be set right now
 * @param holds what holds the work here, each in words; empty where nothing does
 */
record TableSheet(
        FrameSheet.Head head,
        FrameSheet.OperationSheetOfFrame operation,
        boolean atHand,
        SheetLine sheet,
        String lies,
        @Nullable Clock clock,
        String word,
        String kind,
        String told,
        List<Row> rows,
        @Nullable Row chosen,
        TableView drawing,
        @Nullable History history,
        Plate plate,
        @Nullable Fit fit,
        List<String> notes,
        @Nullable PushAdvice push,
        List<Held> holds) {

    /** A hold that reaches the operation of the sheet. */
    record Held(String reason, String words) {}

    /**
     * What frames read on one axis before they were set straight.
     *
     * @param of axis and jig in words
     */
    record History(String of, TrendView chart) {}

    /** The window a cold-set may be made in. */
    record Clock(String before, Instant until, String after) {}

    /**
     * A characteristic.
     *
     * @param unit of its limits and its value
     * @param value with its decimals, without its sign where a side says it; empty before it is read
     * @param u in words; empty before it is read
     * @param probability of conformity in words; empty where it is not known
     * @param better what another base would do for it; empty where nothing is to be said
     * @param budget of the value, where it was reduced
     * @param room what a cold-set may still do; null where the route allows none, or it is not asked for
     */
    record Row(
            long characteristicId,
            String letter,
            String name,
            @Nullable String sign,
            String zone,
            @Nullable String datum,
            String limits,
            String unit,
            String value,
            String side,
            String u,
            @Nullable ScaleView scale,
            String word,
            String kind,
            String probability,
            String better,
            @Nullable DeviationLine budget,
            ColdSets.@Nullable Room room) {

        public boolean read() {
            return !value.isEmpty();
        }
    }

    /**
     * The one next thing.
     *
     * @param address where its button leads; empty where nothing is to be done
     */
    record Plate(String heading, String words, String action, String address) {}

    /** How well the faces of the shell give the datum, in words. */
    record Fit(String words, boolean clean) {}

    /**
     * What the sheet asks to be read.
     *
     * @param groups in order
     */
    record Entry(
            List<Group> groups,
            @Nullable Place chosen,
            Map<String, String> gauges,
            String gauge,
            int read,
            int wanted) {}

    /** Spots that lie together on the frame. */
    record Group(String words, List<Place> places) {

        public long read() {
            return places.stream().filter(place -> place.line() != null).count();
        }

        /** Whether the spot to key is one of them. */
        public boolean now() {
            return places.stream().anyMatch(Place::now);
        }

        /** Where whoever opens the group goes on: its first empty spot, else its first. */
        public Spot next() {
            return places.stream()
                    .filter(place -> place.line() == null)
                    .findFirst()
                    .orElse(places.get(0))
                    .spot();
        }
    }

    /** A spot and the figure that stands there; none where it is empty. */
    record Place(Spot spot, String label, @Nullable RawLine line, String figure, boolean now) {}
}
