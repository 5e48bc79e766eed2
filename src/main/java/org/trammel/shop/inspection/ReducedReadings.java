package org.trammel.shop.inspection;

import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.metrology.DecisionRule;
import org.trammel.shop.gauges.FoundWrong;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;

/**
 * Takes values that another module computed from raw figures: judged by the same rules, under the same gates, by the same
 * people as a value that was read, all of them in one act and one transaction.
 */
@Service
public class ReducedReadings {

    private final Readings readings;
    private final ReadingRepository rows;
    private final Evidence evidence;
    private final Gauges gauges;
    private final FoundWrong foundWrong;
    private final Settings settings;
    private final ReadAgain again;
    private final Judge judge;
    private final EntityManager entities;

    ReducedReadings(
            Readings readings,
            ReadingRepository rows,
            Evidence evidence,
            Gauges gauges,
            FoundWrong foundWrong,
            Settings settings,
            ReadAgain again,
            Judge judge,
            EntityManager entities) {
        this.readings = readings;
        this.rows = rows;
        this.evidence = evidence;
        this.gauges = gauges;
        this.foundWrong = foundWrong;
        this.settings = settings;
        this.again = again;
        this.judge = judge;
        this.entities = entities;
    }

    /**
     * A computed value.
     *
     * @param raw in the characteristic's unit, for its sample points or all of them together; plus is the drive side
     * @param u standard uncertainty of the value, in that unit, from its budget
     * @param from what its raw figures were read with; the first of them is the gauge it names
     * @param replaces the reading it corrects, since a raw figure of that one was mistyped; null if it is a new one
     * @param reason why, with {@code replaces}
     */
    public record Value(
            long characteristicId,
            List<BigDecimal> raw,
            BigDecimal u,
            List<ReadWith> from,
            @Nullable Long replaces,
            @Nullable String reason) {}

    /** Whether a value of that uncertainty could be judged for a characteristic. */
    public boolean decides(FrameSheet.CharacteristicLine line, BigDecimal u) {
        return judge.decides(
                line.lowerLimit(),
                line.upperLimit(),
                line.nominal(),
                DecisionRule.valueOf(line.rule().name()),
                u);
    }

    /** Raw figures read with one gauge, in {@code unit}. */
    public record ReadWith(String gauge, String kind, List<Figure> figures, String unit) {}

    /**
     * A raw figure.
     *
     * @param value must lie in the gauge's range; null where that has none to lie in, as for a point in space
     */
    public record Figure(@Nullable BigDecimal value, Instant at) {}

    /**
     * Takes them in their order. The act is open already, on the chain of the frame.
     *
     * @param reductionId what they were computed in
     * @throws Refusal for the first that may not be taken; then none is
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<ReadingLine> take(Act act, long reductionId, List<Value> values) {
        Map<String, Set<Instant>> readAt = new HashMap<>();
        values.stream()
                .flatMap(value -> value.from().stream())
                .forEach(one -> one.figures()
                        .forEach(figure -> readAt.computeIfAbsent(one.gauge(), gauge -> new HashSet<>())
                                .add(figure.at())));
        gauges.keep(readAt.keySet());
        foundWrong.requireRight(readAt);
        List<ReadingLine> taken = new ArrayList<>();
        for (Value value : values) {
            taken.add(take(act, reductionId, value));
        }
        return taken;
    }

    private ReadingLine take(Act act, long reductionId, Value value) {
        Reading corrected = value.replaces() == null
                ? null
                : rows.findById(value.replaces())
                        .orElseThrow(() -> Refusal.missing(
                                "Nothing was corrected.", "There is no such reading.", "Open the frame again."));
        Evidence.Wanted wanted = corrected == null
                ? evidence.readable(act, value.characteristicId())
                : evidence.correctable(act, value.characteristicId(), corrected.personId());
        String reason = null;
        if (corrected != null) {
            readings.requireStanding(wanted, corrected.id());
            reason = TypedText.words("reason", "The reason", "The reading is not corrected.", value.reason(), 1000);
        }
        List<Means> read =
                value.from().stream().flatMap(one -> means(one).stream()).toList();
        Means means = read.get(0).computing(wanted.unit(), value.u());
        if (corrected == null) {
            again.requireFiner(wanted, means);
        }
        readings.requireAnotherPerson(act, wanted, value.replaces());
        ReadingLine taken = readings.judged(
                act,
                wanted,
                means,
                new Reading.Taken(
                        value.raw(),
                        Readings.reduce(wanted, value.raw()),
                        null,
                        null,
                        true,
                        false,
                        value.replaces(),
                        reason,
                        reductionId),
                corrected);
        read.stream()
                .map(Means::gaugeId)
                .filter(gauge -> gauge != means.gaugeId())
                .distinct()
                .forEach(gauge -> entities.persist(new ReadingGauge(gauge, taken.readingId())));
        return taken;
    }

    /** As it stood on each day on which figures were read with it: they are no worse for being reduced after it fell due. */
    private List<Means> means(ReadWith read) {
        Map<LocalDate, List<BigDecimal>> byDay = new LinkedHashMap<>();
        read.figures().forEach(figure -> {
            List<BigDecimal> ofDay = byDay.computeIfAbsent(settings.dayOf(figure.at()), day -> new ArrayList<>());
            if (figure.value() != null) {
                ofDay.add(figure.value());
            }
        });
        return byDay.entrySet().stream()
                .map(day -> gauges.require(read.gauge(), read.kind(), read.unit(), day.getValue(), day.getKey()))
                .toList();
    }
}
