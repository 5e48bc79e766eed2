package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.metrology.Limits;
import org.trammel.calc.metrology.Plausibility;
import org.trammel.calc.metrology.Reduction;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Evidence;

/** Takes readings, judges them, and hands the verdict to the frame in the same transaction. */
@Service
public class Readings {

    private final ReadingRepository readings;
    private final ColdSetRepository coldSets;
    private final Evidence evidence;
    private final Gauges gauges;
    private final Settings settings;
    private final Judge judge;
    private final ReadAgain again;
    private final GivenReadings given;
    private final PartTemperature temperature;
    private final BlindAttempts attempts;
    private final ApplicationEventPublisher events;

    Readings(
            ReadingRepository readings,
            ColdSetRepository coldSets,
            Evidence evidence,
            Gauges gauges,
            Settings settings,
            Judge judge,
            ReadAgain again,
            GivenReadings given,
            PartTemperature temperature,
            BlindAttempts attempts,
            ApplicationEventPublisher events) {
        this.attempts = attempts;
        this.readings = readings;
        this.coldSets = coldSets;
        this.evidence = evidence;
        this.gauges = gauges;
        this.settings = settings;
        this.judge = judge;
        this.again = again;
        this.given = given;
        this.temperature = temperature;
        this.events = events;
    }

    /**
     * A reading to take.
     *
     * @param raw one value for each sample point, in the characteristic's unit; plus is the drive side
     * @param gauge number of the gauge or measuring set-up
     * @param temperatureDegC of the part, where it was taken
     * @param confirmed the person was asked about an unlikely value and said it again
     */
    public record Input(
            List<BigDecimal> raw, String gauge, @Nullable BigDecimal temperatureDegC, boolean confirmed) {}

    /**
     * Takes a reading and judges it.
     *
     * @throws Refusal if the characteristic is not at hand, the person may not read it, the gauge may not be used or
     *     cannot decide; as a question if a value is unlikely and not confirmed
     */
    public ReadingLine read(Act act, long characteristicId, Input input) {
        return attempts.keeping(act, characteristicId, input.raw(), () -> taken(act, characteristicId, input));
    }

    private ReadingLine taken(Act act, long characteristicId, Input input) {
        if (!evidence.opens(act, "read", characteristicId)) {
            return repeated(act);
        }
        Evidence.Wanted wanted = evidence.readable(act, characteristicId);
        given.requireKeyed(wanted);
        return take(act, wanted, input, null, null);
    }

    /**
     * Corrects a reading that was mistyped: a new reading takes its place and is judged anew, the old one stays. A gate
     * that was passed with the old one is opened again, and held, where the new one does not conform.
     *
     * @param reason why
     */
    @Transactional
    public ReadingLine correct(Act act, long readingId, Input input, String reason) {
        Reading old = readings.findById(readingId)
                .orElseThrow(() -> Refusal.missing(
                        "Nothing was corrected.", "There is no such reading.", "Open the frame again."));
        long characteristicId = old.characteristicId();
        if (!evidence.opens(act, "correct reading", characteristicId)) {
            return repeated(act);
        }
        if (readings.existsByReplacesId(readingId)) {
            throw Refusal.stale(
                    "The reading is not corrected again.",
                    "A correction took its place before.",
                    "Correct the newest one.");
        }
        Evidence.Wanted wanted = evidence.correctable(act, characteristicId, old.personId());
        given.refuseCorrection(old);
        requireStanding(wanted, readingId);
        String wrong = TypedText.words("reason", "The reason", "The reading is not corrected.", reason, 1000);
        return take(act, wanted, input, old, wrong);
    }

    /**
     * A correction judges in the place of what it corrects, so only a reading that judges now can be corrected: the
     * newest one, or either of a pair by two people.
     */
    void requireStanding(Evidence.Wanted wanted, long readingId) {
        Long newest = wanted.readingId();
        boolean ofPair = wanted.secondPerson()
                && wanted.state() == CharacteristicState.CONFORMING
                && newest != null
                && before(wanted.characteristicId(), newest)
                        .filter(r -> r.readingId() == readingId)
                        .isPresent();
        if (newest == null || newest != readingId && !ofPair) {
            throw Refusal.stale(
                    "The reading is not corrected.",
                    newest == null
                            ? "It no longer judges: the part was changed since and is to be read again."
                            : "It no longer judges: the characteristic was read again after it.",
                    newest == null ? "Read it anew." : "Correct the newest reading, or read it anew.");
        }
    }

    /** The reading that stands before another of the same characteristic. */
    private Optional<ReadingLine> before(long characteristicId, long readingId) {
        return standing(characteristicId).stream()
                .filter(r -> r.readingId() < readingId)
                .reduce((earlier, later) -> later);
    }

    private ReadingLine repeated(Act act) {
        return readings.findByActId(act.id()).stream()
                .findFirst()
                .map(r -> ReadingLine.of(r, false))
                .orElseThrow(() -> attempts.asked(act));
    }

    private ReadingLine take(
            Act act, Evidence.Wanted wanted, Input input, @Nullable Reading corrected, @Nullable String reason) {
        Long replaces = corrected == null ? null : corrected.id();
        requireValues(wanted, input);
        gauges.keep(List.of(input.gauge()));
        PartTemperature.Judged at = temperature.of(
                wanted,
                input.raw(),
                input.temperatureDegC(),
                gauges.require(input.gauge(), wanted.gaugeKind(), wanted.unit(), input.raw(), settings.dayOf(act.at()))
                        .reducedBy(reduction(wanted)));
        Means means = at.means();
        if (replaces == null) {
            again.requireFiner(wanted, means);
        }
        boolean alike = ask(wanted, input);
        requireAnotherPerson(act, wanted, replaces);
        return judged(
                act,
                wanted,
                means,
                new Reading.Taken(
                        input.raw(),
                        reduce(wanted, at.raw()),
                        at.corrected() ? reduce(wanted, at.raw()).subtract(reduce(wanted, input.raw())) : null,
                        input.temperatureDegC(),
                        input.confirmed(),
                        alike,
                        replaces,
                        reason,
                        null),
                corrected);
    }

    /** Judges what was taken, keeps it, and hands the verdict to the frame. */
    ReadingLine judged(Act act, Evidence.Wanted wanted, Means means, Reading.Taken taken, @Nullable Reading corrected) {
        return judged(act, wanted, Reading.With.of(means), means, taken, corrected);
    }

    /** @param means null where a record gives it that no further try can better */
    ReadingLine judged(
            Act act,
            Evidence.Wanted wanted,
            Reading.With with,
            @Nullable Means means,
            Reading.Taken taken,
            @Nullable Reading corrected) {
        Reading.Judged judged = judge.of(wanted, taken.value(), with);
        if (means != null) {
            again.requireReason(act, wanted, means, judged.verdict(), corrected);
        }
        CharacteristicState state = means == null && judged.verdict() == Verdict.CONFORMING
                ? CharacteristicState.CONFORMING
                : state(act, wanted, judged.verdict(), taken.replacesId());
        Reading reading = readings.save(new Reading(act, wanted, with, taken, judged));
        evidence.judged(act, wanted.characteristicId(), state, reading.id());
        events.publishEvent(
                new ReadingTaken(act, wanted.travellerId(), wanted.operationId(), wanted.code(), reading.id()));
        return ReadingLine.of(reading, false);
    }

    private static void requireValues(Evidence.Wanted wanted, Input input) {
        int wantedValues = wanted.points().size();
        if (input.raw().size() != wantedValues) {
            throw Refusal.input(
                    "value",
                    wanted.code() + ", " + wanted.name() + ", is not read.",
                    wantedValues + (wantedValues == 1 ? " value is" : " values are")
                            + " asked for, one for each sample point (" + String.join(", ", wanted.points()) + "); "
                            + input.raw().size() + " came.",
                    "Read every point and enter each.");
        }
        Answered.require(wanted, input.raw());
        for (int i = 0; i < input.raw().size(); i++) {
            BigDecimal value = input.raw().get(i);
            if (value.scale() > 6 || value.precision() - value.scale() > 8) {
                throw Refusal.input(
                        field(wanted, i),
                        wanted.code() + ", " + wanted.name() + ", is not read.",
                        value.toPlainString() + " has more digits than are kept: six after the sign, eight before it.",
                        "Enter what the gauge shows.");
            }
        }
    }

    /** Of several sample points the one at fault is named, by its place; of one there is nothing to tell apart. */
    private static String field(Evidence.Wanted wanted, int place) {
        return wanted.points().size() == 1 ? "value" : "value" + place;
    }

    /** Asks about a value that is unlikely; true if the same value stands at several points. */
    private boolean ask(Evidence.Wanted wanted, Input input) {
        DecimalSign sign = DecimalSign.of(settings.locale());
        if (Answered.is(wanted)) {
            return false;
        }
        boolean alike = Plausibility.ofRun(running(wanted, input.raw())) instanceof Plausibility.SameAgain;
        if (input.confirmed()) {
            return alike;
        }
        if (wanted.lowerLimit() != null || wanted.upperLimit() != null) {
            Limits limits = new Limits(wanted.lowerLimit(), wanted.upperLimit());
            for (int i = 0; i < input.raw().size(); i++) {
                BigDecimal value = input.raw().get(i);
                Plausibility far = Plausibility.of(
                        value, wanted.nominal(), limits, settings.number("plausibility.tolerances"), wanted.unit());
                if (far instanceof Plausibility.FarOff off) {
                    throw Refusal.ask(
                            field(wanted, i),
                            wanted.code() + ", " + wanted.name() + ", is not taken yet.",
                            wanted.readBack()
                                    ? sign.write(value) + " is far from what the drawing of this frame says."
                                    : off.words(sign),
                            "Read the gauge again; correct the value, or confirm that it reads so.");
                }
            }
        }
        if (alike) {
            throw Refusal.ask(
                    "value",
                    wanted.code() + ", " + wanted.name() + ", is not taken yet.",
                    "The same value stands three times running.",
                    "Read the gauge anew for each point; correct the values, or confirm that it reads so.");
        }
        return false;
    }

    /** The values of this reading after those of the two before it, for whoever copies instead of reading. */
    private List<BigDecimal> running(Evidence.Wanted wanted, List<BigDecimal> raw) {
        List<BigDecimal> running = new ArrayList<>();
        if (raw.size() == 1) {
            List<Reading> before = readings.findByCharacteristicIdOrderById(wanted.characteristicId());
            before.stream().skip(Math.max(0, before.size() - 2)).forEach(r -> running.addAll(r.raw()));
        }
        running.addAll(raw);
        return running;
    }

    void requireAnotherPerson(Act act, Evidence.Wanted wanted, @Nullable Long replaces) {
        if (!wanted.secondPerson() || wanted.state() != CharacteristicState.FIRST_READ || replaces != null) {
            return;
        }
        readings.findById(Objects.requireNonNull(wanted.readingId()))
                .filter(first -> first.personId() == act.by())
                .ifPresent(first -> {
                    throw Refusal.person(
                            wanted.code() + ", " + wanted.name() + ", is not read a second time by the same person.",
                            "Two people read it, each for themselves; you read it first.",
                            "Call somebody else to read it without looking at your figure.");
                });
    }

    private static Reduction reduction(Evidence.Wanted wanted) {
        return Reduction.valueOf(wanted.reduction().name());
    }

    static BigDecimal reduce(Evidence.Wanted wanted, List<BigDecimal> raw) {
        Limits limits = wanted.lowerLimit() == null && wanted.upperLimit() == null
                ? Limits.between(BigDecimal.ZERO, BigDecimal.ZERO)
                : new Limits(wanted.lowerLimit(), wanted.upperLimit());
        Reduction.Result result = limits.ofSize(wanted.nominal())
                ? reduction(wanted).ofSizes(raw, limits)
                : reduction(wanted).of(raw, limits);
        if (result instanceof Reduction.Result.Reduced reduced) {
            return reduced.value();
        }
        throw Refusal.input(
                "value",
                wanted.code() + ", " + wanted.name() + ", is not read.",
                ((Reduction.Result.NotReducible) result).reason(),
                "Read every sample point.");
    }

    private CharacteristicState state(Act act, Evidence.Wanted wanted, Verdict verdict, @Nullable Long replaces) {
        return switch (verdict) {
            case CONFORMING ->
                wanted.secondPerson() && !secondReading(act, wanted, replaces)
                        ? CharacteristicState.FIRST_READ
                        : CharacteristicState.CONFORMING;
            case NOT_CONFORMING -> CharacteristicState.NOT_CONFORMING;
            case UNDECIDED -> CharacteristicState.UNDECIDED;
            case NOTED -> CharacteristicState.INFORMATION;
        };
    }

    /** True if another person has read it, conforming, right before, and that reading still stands. */
    private boolean secondReading(Act act, Evidence.Wanted wanted, @Nullable Long replaces) {
        if (replaces != null) {
            Instant bent = coldSets.findByOperationIdInOrderById(List.of(wanted.operationId())).stream()
                    .map(ColdSet::at)
                    .reduce((earlier, later) -> later)
                    .orElse(Instant.MIN);
            return standing(wanted.characteristicId()).stream()
                    .filter(r -> r.readingId() != replaces)
                    .reduce((earlier, later) -> later)
                    .filter(r -> r.personId() != act.by() && r.verdict() == Verdict.CONFORMING && r.at().isAfter(bent))
                    .isPresent();
        }
        return wanted.state() == CharacteristicState.FIRST_READ;
    }

    private List<ReadingLine> standing(long id) {
        return of(List.of(id)).stream().filter(r -> !r.replaced()).toList();
    }

    /** Every reading of the characteristics, oldest first, replaced ones marked. */
    @Transactional(readOnly = true)
    public List<ReadingLine> of(Collection<Long> characteristicIds) {
        return characteristicIds.isEmpty()
                ? List.of()
                : lines(readings.findByCharacteristicIdInOrderById(characteristicIds));
    }

    /** The newest readings of a characteristic's code on whatever frame, oldest first; none that was corrected. */
    @Transactional(readOnly = true)
    public List<ReadingLine> newestOf(String code, int most) {
        List<Reading> newest = new ArrayList<>(readings.newestOf(code, Limit.of(most)));
        Collections.reverse(newest);
        return newest.stream().map(r -> ReadingLine.of(r, false)).toList();
    }

    /** Every reading of the travellers, oldest first. */
    @Transactional(readOnly = true)
    public List<ReadingLine> ofTravellers(Collection<Long> travellerIds) {
        return travellerIds.isEmpty() ? List.of() : lines(readings.findByTravellerIdInOrderById(travellerIds));
    }

    static List<ReadingLine> lines(List<Reading> all) {
        Set<Long> replaced = new HashSet<>();
        all.stream().map(Reading::replacesId).filter(Objects::nonNull).forEach(replaced::add);
        return all.stream()
                .map(r -> ReadingLine.of(r, replaced.contains(r.id())))
                .toList();
    }
}
