package org.trammel.shop.alignment;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** Which spots a sheet asks for, what stands at them, and what they may be read with. */
@Component
class TableEntries {

    private final RawFigures figures;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    TableEntries(RawFigures figures, Settings settings, Formats formats, Clock clock) {
        this.figures = figures;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    /**
     * The spots of a sheet.
     *
     * @param chosen the one to key; null for the first that is empty
     * @param gauge the one used last; null if none was
     */
    TableSheet.Entry of(TableSheet sheet, Set<Deviation> asked, @Nullable Spot chosen, @Nullable String gauge) {
        Set<Spot> spots = spots(sheet.sheet().setUp(), asked);
        Spot now = chosen != null
                ? chosen
                : spots.stream()
                        .filter(spot -> sheet.sheet().at(spot) == null && spot != Spot.POST)
                        .findFirst()
                        .orElse(null);
        Map<String, List<TableSheet.Place>> groups = new LinkedHashMap<>();
        TableSheet.Place place = null;
        int read = 0;
        for (Spot spot : spots) {
            RawLine line = sheet.sheet().at(spot);
            TableSheet.Place one = new TableSheet.Place(
                    spot,
                    label(spot, sheet.sheet().setUp()),
                    line,
                    line == null ? "" : formats.number(line.mm(), 2),
                    spot == now);
            groups.computeIfAbsent(spot.group().words(), group -> new ArrayList<>())
                    .add(one);
            place = spot == now ? one : place;
            read += line == null ? 0 : 1;
        }
        boolean height = now == null || now.height();
        Map<String, String> usable = usable(height ? "table.height.kind" : "table.length.kind");
        return new TableSheet.Entry(
                groups.entrySet().stream()
                        .map(group -> new TableSheet.Group(group.getKey(), group.getValue()))
                        .toList(),
                place,
                usable,
                gauge != null && usable.containsKey(gauge)
                        ? gauge
                        : usable.size() == 1 ? usable.keySet().iterator().next() : "",
                read,
                spots.size());
    }

    Map<String, String> usable(String setting) {
        Map<String, String> usable = new LinkedHashMap<>();
        for (Means means : figures.usable(setting, settings.dayOf(clock.instant()))) {
            usable.putIfAbsent(
                    means.code(),
                    means.code() + ", " + means.what() + ", u "
                            + formats.number(means.u().stripTrailingZeros()) + " mm");
        }
        return usable;
    }

    private String label(Spot spot, TableSetUp setUp) {
        return switch (spot) {
            case SEAT_LOW -> "at " + formats.number(setUp.seatLow_mm().stripTrailingZeros(), 0);
            case SEAT_HIGH -> "at " + formats.number(setUp.seatHigh_mm().stripTrailingZeros(), 0);
            case SEAT_LOW_UNDER -> "at " + formats.number(setUp.seatLow_mm().stripTrailingZeros(), 0) + " from below";
            case SEAT_HIGH_UNDER -> "at " + formats.number(setUp.seatHigh_mm().stripTrailingZeros(), 0) + " from below";
            default -> spot.words();
        };
    }

    /** Those from which something follows that is asked for, with this set-up. */
    static Set<Spot> spots(TableSetUp setUp, Set<Deviation> asked) {
        Set<Spot> spots = new LinkedHashSet<>();
        boolean head = any(asked, Deviation.TWIST, Deviation.HEAD_TUBE_LEAN, Deviation.HEAD_TUBE_OFFSET);
        if (setUp.datum() == TableSetUp.Datum.FACES) {
            spots.addAll(Spot.startingWith("FACE_"));
        }
        if (any(asked, Deviation.TWIST, Deviation.SEAT_TUBE_LEAN)) {
            spots.addAll(Spot.of(Spot.Group.SEAT_TUBE));
        }
        if (head) {
            spots.addAll(Spot.of(setUp.base() == TableSetUp.Base.TUBE ? Spot.Group.HEAD_TUBE : Spot.Group.MANDREL));
        }
        if (setUp.datum() == TableSetUp.Datum.POST
                && any(asked, Deviation.HEAD_TUBE_OFFSET, Deviation.REAR_AXLE_OFFSET)) {
            spots.add(Spot.POST);
        }
        if (any(asked, Deviation.REAR_AXLE_OFFSET, Deviation.AXLE_WIDTH, Deviation.REAR_YAW)) {
            spots.add(Spot.AXLE_DRIVE);
            spots.add(Spot.AXLE_OTHER);
            spots.addAll(Spot.startingWith("AXLE_WIDTH"));
        }
        if (any(asked, Deviation.DROPOUTS_FORE_AFT, Deviation.DROPOUTS_UP_DOWN)) {
            spots.addAll(Spot.startingWith("GAP_"));
        }
        if (any(asked, Deviation.CHAINSTAY_DIFFERENCE, Deviation.REAR_YAW)) {
            spots.addAll(Spot.startingWith("STAY_"));
        }
        if (setUp.sideView()
                && any(asked, Deviation.HEAD_ANGLE, Deviation.SEAT_ANGLE, Deviation.STACK, Deviation.REACH)) {
            spots.addAll(Spot.startingWith("SIDE_"));
        }
        if (!asked.contains(Deviation.SEAT_ANGLE)) {
            spots.removeIf(spot -> spot.name().startsWith("SIDE_SEAT_"));
        }
        if (!setUp.bothSides()) {
            spots.removeIf(Spot::under);
        }
        return spots;
    }

    private static boolean any(Set<Deviation> asked, Deviation... of) {
        return List.of(of).stream().anyMatch(asked::contains);
    }
}
