package org.trammel.shop.inspection;

import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.metrology.DecisionRule;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.RecordedEvidence;

/**
 * Takes what the record of another module says of a characteristic: judged by the rule and the limits of the characteristic
 * like a value that was keyed, in the transaction that makes the record count. What does not conform opens its
 * nonconformance there and then.
 */
@Service
public class RecordedReadings {

    private static final int LONGEST_NAME = 40;

    private final Readings readings;
    private final RecordedEvidence evidence;
    private final ReadingRepository rows;
    private final ReadAgain again;
    private final Judge judge;
    private final EntityManager entities;

    RecordedReadings(
            Readings readings,
            RecordedEvidence evidence,
            ReadingRepository rows,
            ReadAgain again,
            Judge judge,
            EntityManager entities) {
        this.readings = readings;
        this.evidence = evidence;
        this.rows = rows;
        this.again = again;
        this.judge = judge;
        this.entities = entities;
    }

    /**
     * What a record says of one characteristic.
     *
     * @param raw figures in {@code unit}, reduced as the characteristic asks
     * @param readWith what they were read with, as people call it
     * @param means the gauge of the register that read them as they stand; null where there is none
     * @param computedFrom gauges of the register whose figures they were computed from
     */
    public record Value(
            String code,
            List<BigDecimal> raw,
            String unit,
            String readWith,
            @Nullable Means means,
            List<Means> computedFrom) {

        /** Read by what is kept elsewhere, such as a thermocouple of an oven. */
        public static Value by(String readWith, String code, List<BigDecimal> raw, String unit) {
            return new Value(code, raw, unit, readWith, null, List.of());
        }

        public static Value with(Means means, String code, List<BigDecimal> raw, String unit) {
            return new Value(code, raw, unit, means.code(), means, List.of());
        }

        public static Value computed(List<Means> from, String code, List<BigDecimal> raw, String unit) {
            return new Value(
                    code,
                    raw,
                    unit,
                    String.join(", ", from.stream().map(Means::code).distinct().toList()),
                    null,
                    from);
        }
    }

    /**
     * Gives an operation what a record says. The act is open already, on the chain of the frame. Left out is what is not
     * at hand any more, released by a concession, of another unit, undecided and
     * read with no less doubt, or asked with a doubt that the record does not tell.
     *
     * @param giver who made the record count
     * @param record as people call it
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<ReadingLine> give(Act act, long giver, String record, long operationId, List<Value> values) {
        Act by = new Act(act.id(), giver, act.device(), act.at(), act.deviceAt(), act.content());
        List<ReadingLine> given = new ArrayList<>();
        for (Value value : values) {
            evidence.givable(operationId, value.code())
                    .flatMap(wanted -> give(by, record, wanted, value))
                    .ifPresent(given::add);
        }
        return given;
    }

    /** The act that took a reading, by which its record finds what stood then; empty where there is no such reading. */
    @Transactional(propagation = Propagation.MANDATORY)
    public Optional<UUID> actOf(@Nullable Long readingId) {
        return readingId == null ? Optional.empty() : rows.findById(readingId).map(Reading::actId);
    }

    /** A concession of these does not reach what a newer record says; it is to be given next, in the same act. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void beyondConcession(Act act, long operationId, String code) {
        evidence.beyondConcession(act, operationId, code);
    }

    /** What a record of that name gave before holds no longer; until the next one the characteristics wait. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void takeBack(Act act, String record, long operationId, List<String> codes) {
        codes.forEach(code -> evidence.givable(operationId, code)
                .filter(wanted -> wanted.readingId() != null
                        && rows.findById(wanted.readingId())
                                .filter(last -> record.equals(last.record()))
                                .isPresent())
                .ifPresent(wanted -> evidence.takeBack(act, wanted.characteristicId())));
    }

    /**
     * What a record of that name gave is in doubt, or is no longer. Only what was found conforming by it is concerned, and
     * only while nothing newer took its place.
     *
     * @param why the trace that says so
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void doubt(Act act, String record, long operationId, List<String> codes, String why) {
        restingOn(record, operationId, codes).forEach(wanted -> evidence.doubt(act, wanted.characteristicId(), why));
    }

    @Transactional(propagation = Propagation.MANDATORY)
    public void doubtOver(String record, long operationId, List<String> codes, String why) {
        restingOn(record, operationId, codes).forEach(wanted -> evidence.doubtOver(wanted.characteristicId(), why));
    }

    private List<Evidence.Wanted> restingOn(String record, long operationId, List<String> codes) {
        return evidence.given(operationId, codes).stream()
                .filter(wanted -> wanted.readingId() != null
                        && rows.findById(wanted.readingId())
                                .filter(last -> record.equals(last.record()) && last.verdict() == Verdict.CONFORMING)
                                .isPresent())
                .toList();
    }

    private Optional<ReadingLine> give(Act act, String record, Evidence.Wanted wanted, Value given) {
        Means means = given.means() == null
                ? null
                : given.means()
                        .reducedBy(org.trammel.calc.metrology.Reduction.valueOf(
                                wanted.reduction().name()));
        boolean single = wanted.reduction() == Reduction.SINGLE;
        if (!wanted.unit().equals(given.unit())
                || single && given.raw().size() != 1
                || !judge.decides(
                        wanted.lowerLimit(),
                        wanted.upperLimit(),
                        wanted.nominal(),
                        DecisionRule.valueOf(wanted.rule().name()),
                        means == null ? null : means.u())) {
            return Optional.empty();
        }
        if (means != null) {
            BigDecimal value = Readings.reduce(wanted, given.raw());
            if (again.stands(
                    act,
                    wanted,
                    means,
                    judge.of(wanted, value, Reading.With.of(means)).verdict())) {
                return Optional.empty();
            }
            readings.requireAnotherPerson(act, wanted, null);
        }
        ReadingLine taken = readings.judged(
                act,
                wanted,
                means == null
                        ? new Reading.With(null, shortened(given.readWith()), null, null, record)
                        : new Reading.With(
                                means.gaugeId(), shortened(given.readWith()), means.dueOn(), means.u(), record),
                means,
                new Reading.Taken(
                        given.raw(), Readings.reduce(wanted, given.raw()), null, null, true, false, null, null, null),
                null);
        given.computedFrom().stream()
                .map(Means::gaugeId)
                .distinct()
                .forEach(gauge -> entities.persist(new ReadingGauge(gauge, taken.readingId())));
        return Optional.of(taken);
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "…";
    }
}
