package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;

/** Keeps raw figures of the table one by one as they are read, in any order, from any tablet. Judges nothing. */
@Service
public class RawFigures {

    private static final String NOT_KEPT = "The figure is not kept.";
    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
    private static final int MOST_POINTS = 400;

    private final TurnOfSheet turns;
    private final SetUpRepository setUps;
    private final RawRepository rows;
    private final Gauges gauges;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    RawFigures(
            TurnOfSheet turns,
            SetUpRepository setUps,
            RawRepository rows,
            Gauges gauges,
            Crew crew,
            Settings settings,
            ActLog log) {
        this.turns = turns;
        this.setUps = setUps;
        this.rows = rows;
        this.gauges = gauges;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    /**
     * A figure to keep.
     *
     * @param mm as the gauge shows it
     * @param seen the figure that stood at the spot when this one was typed; null if none stood there
     * @param reason what was wrong with that one; null if none stood there
     * @param confirmed the person was asked about an unlikely figure and said it again
     */
    public record Typed(
            Spot spot,
            BigDecimal mm,
            String gauge,
            @Nullable Long seen,
            @Nullable String reason,
            boolean confirmed) {}

    /** A point to keep, in the axes of the arm or probe. */
    public record TypedPoint(Feature feature, String name, BigDecimal x_mm, BigDecimal y_mm, BigDecimal z_mm) {}

    /**
     * Says how a frame lies and is read from now on. Figures that were kept stay; those of stations that are said to lie
     * elsewhere are read anew before they are judged in the place of a reading.
     *
     * @param seen what stood when this was said ({@link #saidOf}); null if nothing did
     * @throws Refusal if a distance is none, or somebody else said another meanwhile
     */
    @Transactional
    public void setUp(Act act, long operationId, TableSetUp setUp, @Nullable Long seen) {
        Evidence.Wanted wanted = turns.opens(act, "table set-up", operationId);
        if (wanted == null) {
            return;
        }
        String deed = "How the frame lies was not changed.";
        turns.said(operationId)
                .filter(standing -> !Objects.equals(standing.id(), seen))
                .ifPresent(standing -> {
                    throw Refusal.stale(
                            deed,
                            "Meanwhile " + crew.byId(standing.personId()).name() + " said how it lies.",
                            "Look at it as it is now, and say yours again if it still holds.");
                });
        distance("seatLow", deed, setUp.seatLow_mm(), 0);
        distance("seatHigh", deed, setUp.seatHigh_mm(), 1);
        if (setUp.seatHigh_mm().subtract(setUp.seatLow_mm()).compareTo(BigDecimal.TEN) < 0) {
            throw Refusal.input(
                    "seatHigh",
                    deed,
                    "The stations of the seat tube lie "
                            + written(setUp.seatHigh_mm().subtract(setUp.seatLow_mm()))
                            + " mm apart; a lean wants 10 or more.",
                    "Enter the upper one farther up.");
        }
        distance("tubeBase", deed, setUp.tubeBase_mm(), 10);
        distance("mandrelBase", deed, setUp.mandrelBase_mm(), 10);
        diameter("seatDiameter", deed, setUp.seatDiameter_mm());
        diameter("headDiameter", deed, setUp.headDiameter_mm());
        diameter("mandrelDiameter", deed, setUp.mandrelDiameter_mm());
        SheetRow sheet = turns.begun(act, wanted);
        SetUpRow row = setUps.save(new SetUpRow(act, sheet.id(), setUp));
        log.event(wanted.chain(), "table set up", Map.of("operation", operationId, "row", row.id()));
    }

    /** What stands of how a frame lies, to be named as seen; null if nobody said it. */
    @Transactional(readOnly = true)
    public @Nullable Long saidOf(long operationId) {
        return turns.said(operationId).map(SetUpRow::id).orElse(null);
    }

    private void distance(String field, String deed, BigDecimal mm, int least) {
        KeptDigits.SET_UP.require(field, deed, "", mm);
        if (mm.compareTo(BigDecimal.valueOf(least)) < 0 || mm.compareTo(BigDecimal.valueOf(1000)) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    written(mm) + " mm is not between " + least + " and 1000.",
                    "Enter the distance in millimetres.");
        }
    }

    private void diameter(String field, String deed, @Nullable BigDecimal mm) {
        if (mm == null) {
            return;
        }
        KeptDigits.SET_UP.require(field, deed, "", mm);
        if (mm.compareTo(BigDecimal.valueOf(2)) < 0 || mm.compareTo(BigDecimal.valueOf(120)) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    "A diameter of " + written(mm) + " mm is not between 2 and 120.",
                    "Enter the outside in millimetres, or leave it empty where the middle is read.");
        }
    }

    /** Begins a turn that is empty: the frame was taken off, or everything is to be read anew. */
    @Transactional
    public void anew(Act act, long operationId) {
        Evidence.Wanted wanted = turns.opens(act, "table anew", operationId);
        if (wanted == null) {
            return;
        }
        SheetRow sheet = turns.begin(act, wanted);
        log.event(wanted.chain(), "read anew at the table", Map.of("operation", operationId, "turn", sheet.turn()));
    }

    /**
     * Keeps a figure.
     *
     * @throws Refusal if the gauge may not be used today or cannot have read it, or another figure came to the spot
     *     meanwhile; as a question if it is unlikely
     */
    @Transactional
    public void read(Act act, long operationId, Typed typed) {
        Evidence.Wanted wanted = turns.opens(act, "read at the table", operationId);
        if (wanted == null) {
            return;
        }
        SheetRow sheet = turns.begun(act, wanted);
        RawLine there = turns.figures(sheet).stream()
                .filter(line -> line.stands() && line.spot().equals(typed.spot().name()))
                .findFirst()
                .orElse(null);
        requireSeen(typed, there);
        KeptDigits.FIGURE.require("value", NOT_KEPT, "", typed.mm());
        typed.spot().requirePossible(typed.mm(), NOT_KEPT);
        String kind = kind(typed.gauge(), typed.spot().height() ? "table.height.kind" : "table.length.kind");
        Means means = usable(act, typed.gauge(), kind, List.of(typed.mm()));
        ask(typed, turns.setUp(operationId));
        String reason = there == null
                ? null
                : TypedText.words("reason", "The reason", "The figure is not corrected.", typed.reason(), 1000);
        RawRow row = rows.save(new RawRow(
                act,
                sheet.id(),
                new RawRow.Figure(
                        typed.spot().name(),
                        typed.spot().name(),
                        typed.mm(),
                        null,
                        null,
                        there == null ? null : there.readingId(),
                        reason),
                means,
                kind,
                0));
        log.event(
                wanted.chain(),
                "read at the table",
                Map.of("operation", operationId, "spot", typed.spot().name(), "figure", row.id()));
    }

    /** Two tablets may stand at one table: whoever did not see the other's figure does not write over it. */
    private void requireSeen(Typed typed, @Nullable RawLine there) {
        Long standing = there == null ? null : there.readingId();
        if (Objects.equals(standing, typed.seen())) {
            return;
        }
        String yours = written(typed.mm());
        if (there == null) {
            throw Refusal.stale(
                    NOT_KEPT,
                    "The figure it was to correct was struck out, or is of an earlier turn; yours is " + yours + ".",
                    "Look at the sheet as it is now, and key yours again if it still holds.");
        }
        throw Refusal.stale(
                NOT_KEPT,
                "Meanwhile " + crew.byId(there.personId()).name() + " read "
                        + written(Objects.requireNonNull(there.mm())) + " at the "
                        + typed.spot().called() + "; yours is "
                        + yours + ".",
                "Look which of them holds, and correct the one on the sheet if it is yours.");
    }

    private void ask(Typed typed, TableSetUp setUp) {
        if (typed.confirmed() || !typed.spot().onAxis() || setUp.datum() == TableSetUp.Datum.POINTS) {
            return;
        }
        BigDecimal diameter = switch (typed.spot().group()) {
            case SEAT_TUBE -> setUp.seatDiameter_mm();
            case HEAD_TUBE -> setUp.headDiameter_mm();
            case MANDREL -> setUp.mandrelDiameter_mm();
            default -> null;
        };
        BigDecimal expected = settings.number("table.post");
        boolean both = setUp.bothSides()
                && (typed.spot().under() || typed.spot().below().isPresent());
        if (both && diameter == null) {
            // The side that is read lies a radius off the middle, and nobody said how large that is.
            return;
        }
        if (diameter != null) {
            BigDecimal radius = diameter.divide(BigDecimal.valueOf(2));
            expected = typed.spot().under() ? expected.subtract(radius) : expected.add(radius);
        }
        BigDecimal within = settings.number("table.height.doubt");
        if (typed.mm().subtract(expected).abs().compareTo(within) <= 0) {
            return;
        }
        BigDecimal inches = typed.mm().multiply(MM_PER_INCH);
        boolean explained = inches.subtract(expected).abs().compareTo(within) <= 0;
        throw Refusal.ask(
                "value",
                NOT_KEPT,
                written(typed.mm()) + " mm lies more than " + written(within) + " from the " + written(expected)
                        + " at which the middle of the frame stands."
                        + (explained ? " As inches it would be " + written(inches) + " mm." : ""),
                explained
                        ? "Set the gauge to millimetres and read it again."
                        : "Read the gauge again; correct the figure, or confirm that it reads so.");
    }

    /** Takes a figure out of what counts; it stays on record. */
    @Transactional
    public void strikeOut(Act act, long operationId, long readingId, String reason) {
        Evidence.Wanted wanted = turns.opens(act, "strike out at the table", operationId);
        if (wanted == null) {
            return;
        }
        String deed = "The figure is not struck out.";
        SheetRow sheet = turns.begun(act, wanted);
        RawRow old = rows.findById(readingId)
                .filter(row -> row.sheetId() == sheet.id())
                .orElseThrow(() -> Refusal.missing(
                        deed, "There is no such figure in this turn of the sheet.", "Look at the sheet as it is now."));
        if (turns.figures(sheet).stream().noneMatch(line -> line.readingId() == readingId && line.stands())) {
            throw Refusal.stale(deed, "Another took its place meanwhile.", "Look at the sheet as it is now.");
        }
        rows.save(RawRow.struckOut(act, old, TypedText.words("reason", "The reason", deed, reason, 1000)));
        log.event(wanted.chain(), "struck out at the table", Map.of("operation", operationId, "figure", readingId));
    }

    /**
     * Keeps points of an arm or probe, all of them or none.
     *
     * @throws Refusal if a name stands twice under one feature, or the arm may not be used today
     */
    @Transactional
    public void points(Act act, long operationId, List<TypedPoint> points, String gauge) {
        Evidence.Wanted wanted = turns.opens(act, "points at the table", operationId);
        if (wanted == null) {
            return;
        }
        String deed = "The points are not kept.";
        if (points.isEmpty() || points.size() > MOST_POINTS) {
            throw Refusal.input(
                    "points",
                    deed,
                    points.isEmpty()
                            ? "There is none."
                            : "There are " + points.size() + ", and a sheet takes " + MOST_POINTS + " at once.",
                    "Send one line for each: feature, name, x, y, z.");
        }
        SheetRow sheet = turns.begun(act, wanted);
        Set<String> taken = new HashSet<>();
        turns.figures(sheet).stream().filter(RawLine::stands).forEach(line -> taken.add(key(line.spot(), line.name())));
        for (TypedPoint point : points) {
            if (!taken.add(key(point.feature().name(), point.name()))) {
                throw Refusal.input(
                        "points",
                        deed,
                        "The point " + point.name() + " of the "
                                + point.feature().words() + " is there twice.",
                        "Send it once; strike out the one on the sheet if that one is wrong.");
            }
            for (BigDecimal mm : List.of(point.x_mm(), point.y_mm(), point.z_mm())) {
                KeptDigits.FIGURE.require("points", deed, "Point " + point.name() + ": ", mm);
            }
        }
        String kind = kind(gauge, "table.point.kind");
        Means means = usable(act, gauge, kind, List.of());
        for (int i = 0; i < points.size(); i++) {
            TypedPoint point = points.get(i);
            rows.save(new RawRow(
                    act,
                    sheet.id(),
                    new RawRow.Figure(
                            point.feature().name(),
                            TypedText.line("points", "The name of a point", deed, point.name(), 60),
                            point.z_mm(),
                            point.x_mm(),
                            point.y_mm(),
                            null,
                            null),
                    means,
                    kind,
                    i));
        }
        log.event(wanted.chain(), "points at the table", Map.of("operation", operationId, "points", points.size()));
    }

    private static String key(String spot, String name) {
        return spot + " " + name.strip().toLowerCase(Locale.ROOT);
    }

    /** The kind by which a gauge may read here. */
    private String kind(String code, String setting) {
        List<String> kinds = kinds(setting);
        return gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .filter(kinds::contains)
                .findFirst()
                .orElse(kinds.get(0));
    }

    private List<String> kinds(String setting) {
        return Arrays.stream(settings.text(setting).split(";"))
                .map(String::strip)
                .filter(kind -> !kind.isEmpty())
                .toList();
    }

    private Means usable(Act act, String code, String kind, List<BigDecimal> values) {
        if (code.isBlank()) {
            throw Refusal.input("gauge", NOT_KEPT, "No gauge was chosen.", "Choose the one in your hand, then Enter.");
        }
        Means means = gauges.require(code, kind, "mm", values, settings.dayOf(act.at()));
        if (means.u() == null || means.u().signum() == 0) {
            throw Refusal.input(
                    "gauge",
                    NOT_KEPT,
                    means.code() + " is registered without an uncertainty, and a deviation is judged by one.",
                    "Choose another, or have the QA lead register it.");
        }
        return means;
    }

    /** The gauges that may read there on a day, the least uncertain first. */
    List<Means> usable(String setting, LocalDate day) {
        return kinds(setting).stream()
                .flatMap(kind -> gauges.usableFor(kind, "mm", day).stream())
                .filter(means -> means.u() != null)
                .distinct()
                .toList();
    }

    private String written(BigDecimal mm) {
        BigDecimal plain = mm.stripTrailingZeros();
        return DecimalSign.of(settings.locale()).write(plain.scale() < 0 ? plain.setScale(0) : plain);
    }
}
