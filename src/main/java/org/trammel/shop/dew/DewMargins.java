package org.trammel.shop.dew;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.DewPoint;
import org.trammel.calc.units.Answer;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Setting;
import org.trammel.shop.settings.Settings;

/** Measures how far metal lies from water, for whoever must know it, and keeps it. */
@Service
public class DewMargins {

    private static final BigDecimal COLDEST = BigDecimal.valueOf(-45);
    private static final BigDecimal HOTTEST = BigDecimal.valueOf(120);
    private static final int DECIMALS = 3;

    private final DewMarginRepository margins;
    private final DewPlaceRepository places;
    private final DewGauges gauges;
    private final Settings settings;

    DewMargins(DewMarginRepository margins, DewPlaceRepository places, DewGauges gauges, Settings settings) {
        this.margins = margins;
        this.places = places;
        this.gauges = gauges;
        this.settings = settings;
    }

    /**
     * What was measured, and by what.
     *
     * @param settings ids of those in force
     */
    public record Measured(DewMargin margin, Means air, Means metal, List<Long> settings) {}

    /** One that was measured at an operation. */
    public record At(long operationId, DewMargin margin) {}

    /**
     * Computes the margin at the coldest place and keeps it, enough or not. The act is open already, on the chain of the
     * frame.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public Measured measure(Act act, long operationId, DewPurpose purpose, MetalAir entry, String deed) {
        BigDecimal air = figure("air", "The air temperature", deed, entry.air_degC(), "°C");
        BigDecimal humidity = figure("humidity", "The humidity", deed, entry.humidity_percent(), "%");
        List<DewMargin.Place> read = read(deed, entry.metal());
        BigDecimal metal = read.get(0).metal_degC();
        DewPoint point = point(deed, air, humidity);
        Means airGauge = gauges.air(entry.airGauge(), air, humidity);
        Means metalGauge = gauges.metal(
                entry.metalGauge(),
                read.stream().map(DewMargin.Place::metal_degC).toList());
        Setting wanted = settings.inForce(purpose.margin());
        Setting least = purpose.least() == null ? null : settings.inForce(purpose.least());
        BigDecimal wanted_K = new BigDecimal(wanted.value());
        BigDecimal least_degC = least == null ? null : new BigDecimal(least.value());
        BigDecimal dryFrom = point.leastSurface_degC(wanted_K);
        DewMargin margin = new DewMargin(
                air,
                humidity,
                metal,
                read,
                BigDecimal.valueOf(point.settles_degC()).setScale(2, RoundingMode.HALF_UP),
                point.over() == DewPoint.Over.ICE,
                point.margin_K(metal),
                wanted_K,
                least_degC,
                least_degC == null ? dryFrom : dryFrom.max(least_degC),
                wanted.source(),
                airGauge.code(),
                metalGauge.code(),
                act.by(),
                act.at());
        long id = margins.saveAndFlush(new DewMarginRow(operationId, purpose, margin, act))
                .id();
        read.forEach(place -> places.saveAndFlush(new DewPlaceRow(id, place)));
        return new Measured(
                margin,
                airGauge,
                metalGauge,
                Stream.of(wanted, least)
                        .filter(Objects::nonNull)
                        .map(Setting::id)
                        .toList());
    }

    /** The newest of an operation. */
    @Transactional(readOnly = true)
    public Optional<DewMargin> newest(long operationId, DewPurpose purpose) {
        return all(List.of(operationId), purpose).stream().map(At::margin).reduce((before, after) -> after);
    }

    /** Everything measured at operations, oldest first. */
    @Transactional(readOnly = true)
    public List<At> all(Collection<Long> operationIds, DewPurpose purpose) {
        List<DewMarginRow> rows = operationIds.isEmpty()
                ? List.of()
                : margins.findByOperationIdInAndPurposeOrderById(operationIds, purpose);
        if (rows.isEmpty()) {
            return List.of();
        }
        Map<Long, List<DewMargin.Place>> of =
                places
                        .findByMarginIdInOrderById(
                                rows.stream().map(DewMarginRow::id).toList())
                        .stream()
                        .collect(Collectors.groupingBy(
                                DewPlaceRow::marginId, Collectors.mapping(DewPlaceRow::place, Collectors.toList())));
        return rows.stream()
                .map(row -> new At(row.operationId(), row.margin(of.getOrDefault(row.id(), List.of()))))
                .toList();
    }

    /** The newest of all, whose meters lie on the bench. */
    @Transactional(readOnly = true)
    public Optional<DewMargin> last(DewPurpose purpose) {
        return margins.findFirstByPurposeOrderByIdDesc(purpose).map(row -> row.margin(List.of()));
    }

    @Transactional(readOnly = true)
    public Set<Long> peopleAt(long operationId) {
        return margins.peopleAt(operationId);
    }

    /** The coldest first. */
    private static List<DewMargin.Place> read(String deed, List<MetalAir.Place> metal) {
        if (metal.isEmpty()) {
            throw Refusal.input(
                    "metal", deed, "The temperature of the metal is missing.", "Read it and enter it in °C.");
        }
        List<DewMargin.Place> read = metal.stream()
                .map(place -> new DewMargin.Place(
                        TypedText.line("metal", "The place", deed, place.place(), 60),
                        within(deed, figure("metal", "The temperature of the metal", deed, place.metal_degC(), "°C"))))
                .sorted(Comparator.comparing(DewMargin.Place::metal_degC))
                .toList();
        if (read.stream().map(DewMargin.Place::place).distinct().count() < read.size()) {
            throw Refusal.input("metal", deed, "A place of the metal is named twice.", "Name each place once.");
        }
        return read;
    }

    private static BigDecimal within(String deed, BigDecimal metal) {
        if (metal.compareTo(COLDEST) < 0 || metal.compareTo(HOTTEST) > 0) {
            throw Refusal.input(
                    "metal",
                    deed,
                    "A metal of " + metal.toPlainString() + " °C does not lie within −45 and 120 °C.",
                    "Read it again, in °C.");
        }
        return metal;
    }

    private static DewPoint point(String deed, BigDecimal air, BigDecimal humidity) {
        Answer<DewPoint> computed = DewPoint.of(air, humidity);
        if (computed instanceof Answer.NotDeterminable<DewPoint> gap) {
            throw Refusal.input(
                    gap.gaps().get(0).input(),
                    deed,
                    gap.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" ")),
                    "Read the meter again, in °C and per cent.");
        }
        return ((Answer.Determined<DewPoint>) computed).value();
    }

    private static BigDecimal figure(String field, String what, String deed, @Nullable BigDecimal value, String unit) {
        if (value == null) {
            throw Refusal.input(field, deed, what + " is missing.", "Read it and enter it in " + unit + ".");
        }
        if (value.stripTrailingZeros().scale() > DECIMALS) {
            throw Refusal.input(
                    field,
                    deed,
                    what + " has more than " + DECIMALS + " decimals, and what is not kept is not judged.",
                    "Enter it as the gauge shows it.");
        }
        return value;
    }
}
