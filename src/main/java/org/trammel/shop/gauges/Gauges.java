package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Which gauges and measuring set-ups there are, and which may be used for what on a day. */
@Service
@Transactional(readOnly = true)
public class Gauges {

    private static final int MOST_ON_A_PAGE = 200;
    private static final LocalDate NEVER = LocalDate.of(1, 1, 1);
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private static final Comparator<Gauge> DUE_FIRST = Comparator.comparing(
                    Gauge::dueOn, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(Gauge::code);

    private static final Comparator<Means> LEAST_UNCERTAIN_FIRST = Comparator.comparing(
                    Means::u, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(Means::code);

    private final GaugeRepository rows;
    private final CalibrationRepository calibrations;
    private final GaugeKindRepository kinds;
    private final Settings settings;

    Gauges(GaugeRepository rows, CalibrationRepository calibrations, GaugeKindRepository kinds, Settings settings) {
        this.rows = rows;
        this.calibrations = calibrations;
        this.kinds = kinds;
        this.settings = settings;
    }

    /** A gauge or set-up by the number on its label, however it was typed. */
    public Optional<Gauge> byCode(String code) {
        return rows.withRanges(label(code)).map(GaugeRow::gauge);
    }

    /** All of them, retired ones too, by what falls due first; what was never calibrated stands before all. */
    public List<Gauge> all() {
        return rows.everyOne().stream().map(GaugeRow::gauge).sorted(DUE_FIRST).toList();
    }

    /**
     * A page of the register by what falls due first.
     *
     * @param after last gauge of the page before; null for the first page
     * @param retired whether retired ones are wanted too
     */
    public List<Gauge> page(@Nullable Gauge after, boolean retired, int limit) {
        LocalDate due = after == null || after.dueOn() == null ? NEVER : after.dueOn();
        String code = after == null ? "" : after.code();
        int most = Math.min(Math.max(limit, 1), MOST_ON_A_PAGE);
        List<Long> ids = rows.page(retired, NEVER, due, code, Limit.of(most));
        return ids.isEmpty()
                ? List.of()
                : rows.withRanges(ids).stream()
                        .map(GaugeRow::gauge)
                        .sorted(DUE_FIRST)
                        .toList();
    }

    public List<GaugeKind> kinds() {
        return kinds.findAllByOrderByName().stream().map(GaugeKindRow::kind).toList();
    }

    /**
     * The gauges and set-ups that may be used on a day for a kind and unit, the least uncertain first, aids last. Their
     * u is the greatest in the range, since no value is known yet.
     */
    public List<Means> usableFor(String gaugeKind, String unit, LocalDate on) {
        return rows.serving(gaugeKind, Units.plain(unit)).stream()
                .filter(row -> refusalOf(row, on) == null)
                .map(row -> means(row, rangesFor(row, gaugeKind, unit), List.of(), on))
                .sorted(LEAST_UNCERTAIN_FIRST)
                .toList();
    }

    /**
     * The same for values that are to be read: of each those that reach it, with their u there. A value that none reaches
     * has an empty list.
     */
    public Map<BigDecimal, List<Means>> reaching(
            String gaugeKind, String unit, Collection<BigDecimal> values, LocalDate on) {
        List<GaugeRow> usable = rows.serving(gaugeKind, Units.plain(unit)).stream()
                .filter(row -> refusalOf(row, on) == null)
                .toList();
        Map<BigDecimal, List<Means>> reaching = new HashMap<>();
        values.forEach(value -> reaching.put(
                value,
                usable.stream()
                        .filter(row -> rangesFor(row, gaugeKind, unit).stream().anyMatch(range -> range.covers(value)))
                        .map(row -> means(row, rangesFor(row, gaugeKind, unit), List.of(value), on))
                        .sorted(LEAST_UNCERTAIN_FIRST)
                        .toList()));
        return reaching;
    }

    /**
     * Keeps gauges as they are until the transaction ends. A gauge that fails meanwhile waits for it, so that no reading
     * is taken with it unseen by what judges its readings again. Ask before {@link #require}, for all of them at once.
     *
     * @param codes numbers on their labels
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void keep(Collection<String> codes) {
        rows.kept(codes.stream().map(Gauges::label).toList());
    }

    /**
     * The gauge or set-up for a reading.
     *
     * @param code number on its label
     * @param values what it read, in {@code unit}; may be empty while nothing is read yet
     * @param on the shop's day of the reading; valid through the due date
     * @return with the greatest u over the values
     * @throws Refusal if it is unknown, blocked, failed, retired, before its first calibration, past its due date, of
     *     another kind or unit, or if a value lies outside its range; of several values it names the place
     */
    public Means require(String code, String gaugeKind, String unit, List<BigDecimal> values, LocalDate on) {
        GaugeRow row = rows.withRanges(label(code))
                .orElseThrow(() -> Refusal.input(
                        "gauge",
                        "This gauge cannot be used.",
                        "No gauge carries the number " + shown(code) + ".",
                        "Scan the label on the gauge, or have the QA lead register it."));
        String why = refusalOf(row, on);
        if (why != null) {
            throw Refusal.state(row.code() + " may not be used.", why, insteadOf(row, gaugeKind, unit, on));
        }
        List<GaugeRange> ranges = rangesFor(row, gaugeKind, unit);
        if (ranges.isEmpty()) {
            throw Refusal.input(
                    "gauge",
                    row.code() + " cannot be used here.",
                    wrongKindOrUnit(row, gaugeKind, unit),
                    insteadOf(row, gaugeKind, unit, on));
        }
        for (int i = 0; i < values.size(); i++) {
            BigDecimal value = values.get(i);
            if (ranges.stream().noneMatch(range -> range.covers(value))) {
                throw Refusal.input(
                        values.size() == 1 ? "value" : "value" + i,
                        row.code() + " cannot have read " + figure(value) + " " + unit + ".",
                        "It measures " + described(ranges) + ".",
                        "Look at the figure and its unit again, or measure with a gauge that reaches it.");
            }
        }
        return means(row, ranges, values, on);
    }

    /** The same of a day that is past, for what it read then: of what became of it since, nothing is asked. */
    public Means asOf(String code, String gaugeKind, String unit, LocalDate on) {
        GaugeRow row = rows.withRanges(label(code)).orElseThrow();
        List<GaugeRange> ranges = rangesFor(row, gaugeKind, unit);
        return means(row, ranges.isEmpty() ? row.currentRanges() : ranges, List.of(), on);
    }

    /** When each was last said to be wrong, or any part of it; those that never were are left out. */
    public Map<String, Instant> lastFoundWrong(Collection<String> codes) {
        return codes.isEmpty()
                ? Map.of()
                : rows.lastFoundWrong(codes).stream()
                        .collect(Collectors.toMap(GaugeRepository.FoundWrong::code, GaugeRepository.FoundWrong::at));
    }

    /**
     * What speaks against measuring between two limits with these means, although it may be done. One sentence each.
     *
     * @param lower lower limit; null for an open side
     * @param upper upper limit; null for an open side
     */
    public List<String> doubts(Means means, @Nullable BigDecimal lower, @Nullable BigDecimal upper) {
        List<String> doubts = new ArrayList<>();
        if (lower == null || upper == null) {
            return doubts;
        }
        BigDecimal width = upper.subtract(lower);
        BigDecimal finest = settings.number("gauge.resolution.share").multiply(width);
        BigDecimal resolution = means.resolution();
        if (resolution != null && resolution.compareTo(finest) > 0) {
            doubts.add(means.code() + " shows steps of " + figure(resolution) + " " + means.unit()
                    + "; for a tolerance of " + figure(width) + " they should be " + figure(finest) + " or finer.");
        }
        coarse(means, lower, upper).ifPresent(doubts::add);
        return doubts;
    }

    /** That these means are too uncertain for what lies between two limits, in a sentence; empty if they are not. */
    public Optional<String> coarse(Means means, @Nullable BigDecimal lower, @Nullable BigDecimal upper) {
        BigDecimal u = means.u();
        if (u == null || lower == null || upper == null) {
            return Optional.empty();
        }
        BigDecimal width = upper.subtract(lower);
        BigDecimal widest = settings.number("gauge.share.warns").multiply(width);
        // U = 2u is compared with a share of half the tolerance, so 4u with the share of the whole.
        return u.multiply(BigDecimal.valueOf(4)).compareTo(widest) <= 0
                ? Optional.empty()
                : Optional.of(means.code() + " is coarse for this: U is " + figure(u.multiply(TWO)) + " " + means.unit()
                        + " for half a tolerance of " + figure(width.divide(TWO)) + ".");
    }

    private Means means(GaugeRow row, List<GaugeRange> ranges, List<BigDecimal> values, LocalDate on) {
        List<GaugeRange> used = values.isEmpty()
                ? ranges
                : values.stream().map(value -> finest(ranges, value)).distinct().toList();
        Stream<BigDecimal> doubts = values.isEmpty()
                ? ranges.stream().map(GaugeRange::uAtWorst)
                : values.stream().map(value -> finest(ranges, value).uAt(value));
        BigDecimal u = row.aid()
                ? null
                : doubts.filter(Objects::nonNull).max(Comparator.naturalOrder()).orElse(null);
        BigDecimal resolution = used.stream()
                .map(GaugeRange::resolution)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElse(null);
        LocalDate due = row.made().stream()
                .map(part -> Objects.requireNonNull(standing(part, on)).dueOn())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return new Means(row.id(), row.code(), row.what(), ranges.get(0).unit(), resolution, u, due, row.aid());
    }

    /** Of the ranges that reach a value, the one with the smallest doubt there. */
    private static GaugeRange finest(List<GaugeRange> ranges, BigDecimal value) {
        return ranges.stream()
                .filter(range -> range.covers(value))
                .min(Comparator.comparing(range -> range.uAt(value), Comparator.nullsLast(Comparator.naturalOrder())))
                .orElseThrow();
    }

    private static List<GaugeRange> rangesFor(GaugeRow row, String kind, String unit) {
        return row.currentRanges().stream()
                .filter(range -> range.serves(kind, unit))
                .toList();
    }

    /** Why a gauge or set-up may not be used on a day; null if it may. */
    private @Nullable String refusalOf(GaugeRow row, LocalDate on) {
        String own = stateRefusal(row);
        if (own != null || !row.setup()) {
            return own != null ? own : dateRefusal(row, on);
        }
        return row.parts().stream()
                .sorted(Comparator.comparing(GaugeRow::code))
                .map(part -> {
                    String state = stateRefusal(part);
                    String why = state != null ? state : dateRefusal(part, on);
                    return why == null ? null : "Its part " + part.code() + ": " + why;
                })
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private @Nullable String stateRefusal(GaugeRow row) {
        String since = " on " + settings.dayOf(row.stateSince()) + ": " + row.stateReason() + ".";
        return switch (row.state()) {
            case IN_USE -> null;
            case BLOCKED -> "It was blocked" + since;
            case FAILED -> "It failed" + since;
            case RETIRED -> "It was retired" + since;
        };
    }

    private @Nullable String dateRefusal(GaugeRow row, LocalDate on) {
        Standing standing = standing(row, on);
        if (standing == null) {
            return row.calibratedOn() == null
                    ? "It was never calibrated."
                    : "Its first calibration is of " + row.calibratedOn() + ", after the day it is used on, " + on
                            + ".";
        }
        return on.isAfter(standing.dueOn()) ? "Its calibration was due on " + standing.dueOn() + "." : null;
    }

    /** The calibration that stands on a day; earlier ones are asked only for days before the newest. */
    private @Nullable Standing standing(GaugeRow row, LocalDate on) {
        LocalDate newest = row.calibratedOn();
        LocalDate due = row.dueOn();
        if (newest == null || due == null) {
            return null;
        }
        if (!on.isBefore(newest)) {
            return new Standing(due);
        }
        return calibrations
                .findFirstByGaugeIdAndStandsTrueAndCalibratedOnLessThanEqualOrderByCalibratedOnDesc(row.id(), on)
                .map(calibration -> new Standing(calibration.due()))
                .orElse(null);
    }

    private record Standing(LocalDate dueOn) {}

    private String wrongKindOrUnit(GaugeRow row, String kind, String unit) {
        List<GaugeRange> ranges = row.currentRanges();
        List<String> units = ranges.stream()
                .filter(range -> range.kind().equals(kind))
                .map(GaugeRange::unit)
                .distinct()
                .toList();
        if (!units.isEmpty()) {
            return "It reads " + String.join(" or ", units) + ", the reading is in " + unit + ".";
        }
        return "This reading asks for " + kindName(kind) + "; " + row.code() + " is "
                + String.join(
                        ", ",
                        ranges.stream()
                                .map(range -> kindName(range.kind()))
                                .distinct()
                                .toList())
                + ".";
    }

    private String kindName(String code) {
        return kinds.findByCodeIn(List.of(code)).stream()
                .map(row -> row.kind().name().toLowerCase(Locale.ROOT))
                .findFirst()
                .orElse(code);
    }

    private String insteadOf(GaugeRow row, String kind, String unit, LocalDate on) {
        List<String> others = usableFor(kind, unit, on).stream()
                .map(Means::code)
                .filter(code -> !code.equals(row.code()))
                .limit(3)
                .toList();
        return others.isEmpty()
                ? "No other gauge in date serves this: call the QA lead."
                : "Use " + String.join(" or ", others) + ", or call the QA lead.";
    }

    private String described(List<GaugeRange> ranges) {
        return String.join(
                " and ",
                ranges.stream()
                        .map(range -> (range.lowest() == null ? "" : "from " + figure(range.lowest()) + " ")
                                + (range.highest() == null ? "" : "to " + figure(range.highest()) + " ")
                                + range.unit())
                        .toList());
    }

    private String figure(BigDecimal number) {
        return Figures.of(number, settings.locale());
    }

    private static String shown(String code) {
        String plain = code.strip();
        return plain.isEmpty() ? "(empty)" : plain.length() > 40 ? plain.substring(0, 40) + "…" : plain;
    }

    static String label(String code) {
        return code.strip().toUpperCase(Locale.ROOT);
    }
}
