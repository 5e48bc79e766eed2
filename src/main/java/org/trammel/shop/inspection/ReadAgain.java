package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.inspection.Replacing.Try;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Evidence;

/**
 * What a further reading of the same thing may say. A gauge of less uncertainty, a part that was changed, or a slip of the
 * finger seen at once are reasons for another verdict; one more try is none.
 */
@Component
class ReadAgain {

    private final ReadingRepository readings;
    private final Crew crew;
    private final Settings settings;

    ReadAgain(ReadingRepository readings, Crew crew, Settings settings) {
        this.readings = readings;
        this.crew = crew;
        this.settings = settings;
    }

    /** An undecided reading is not read until it says something else: only less uncertainty decides it. */
    void requireFiner(Evidence.Wanted wanted, Means means) {
        if (wanted.state() != CharacteristicState.UNDECIDED) {
            return;
        }
        BigDecimal finest = finest(wanted);
        if (finest != null
                && Replacing.of(wanted.state(), settable(wanted), finer(means, finest), Try.ANEW, Verdict.UNDECIDED)
                        == Replacing.WANTS_FINER) {
            throw Refusal.state(
                    wanted.code() + ", " + wanted.name() + ", is not read again with " + means.code() + ".",
                    "It is undecided with an uncertainty of "
                            + DecimalSign.of(settings.locale()).write(finest.stripTrailingZeros()) + " " + wanted.unit()
                            + ", and that of " + means.code() + " is no smaller.",
                    "Read it with a gauge of less uncertainty, or call the QA lead, who opens a nonconformance.");
        }
    }

    /**
     * What was undecided, or waits to be set straight, does not become better because it was read or typed once more by the
     * same means or a coarser one. Whoever mistyped puts it right at once; after that the QA lead does.
     *
     * @param corrected the reading that is corrected; null if it was read anew
     */
    void requireReason(Act act, Evidence.Wanted wanted, Means means, Verdict verdict, @Nullable Reading corrected) {
        if (!lacksReason(act, wanted, means, verdict, corrected)) {
            return;
        }
        boolean undecided = wanted.state() == CharacteristicState.UNDECIDED;
        throw Refusal.person(
                wanted.code() + ", " + wanted.name() + ", is not made "
                        + (verdict == Verdict.CONFORMING ? "conforming" : "undecided") + " by being "
                        + (corrected == null ? "read" : "typed") + " once more.",
                "It is " + wanted.state().word() + ", " + means.code()
                        + " is no better than what it was read with, and nothing was done to the part since.",
                undecided
                        ? "Read it with a gauge of less uncertainty, or call the QA lead, who may correct it."
                        : "Have it set, read it with a gauge of less uncertainty, or call the QA lead, who may correct it.");
    }

    private boolean lacksReason(
            Act act, Evidence.Wanted wanted, Means means, Verdict verdict, @Nullable Reading corrected) {
        if (wanted.readingId() == null || !doubtful(wanted)) {
            return false;
        }
        boolean putRight = crew.byId(act.by()).is(Role.QA_LEAD) || corrected != null && atOnce(act, corrected);
        // whether it may be read anew at all was asked before there was a verdict
        Try how = putRight ? Try.PUT_RIGHT : Try.CORRECTED;
        return Replacing.of(wanted.state(), settable(wanted), finer(means, finest(wanted)), how, verdict)
                != Replacing.TAKEN;
    }

    /**
     * Whether the verdict stands although a record says something else: one more try by the same means settles nothing. What
     * does not conform by it is always taken. The record itself is kept by its module.
     */
    boolean stands(Act act, Evidence.Wanted wanted, Means means, Verdict verdict) {
        boolean undecided = wanted.state() == CharacteristicState.UNDECIDED;
        BigDecimal finest = undecided ? finest(wanted) : null;
        return finest != null && !finer(means, finest) && verdict != Verdict.NOT_CONFORMING
                || lacksReason(act, wanted, means, verdict, null);
    }

    private static boolean settable(Evidence.Wanted wanted) {
        return wanted.coldSetClock() != null;
    }

    private static boolean doubtful(Evidence.Wanted wanted) {
        return wanted.state() == CharacteristicState.UNDECIDED
                || wanted.state() == CharacteristicState.NOT_CONFORMING && settable(wanted);
    }

    /**
     * The least uncertainty of what was read since the part was last changed, or last conformed: each reading names the one
     * that judged when it was taken, and after a change none did.
     */
    private @Nullable BigDecimal finest(Evidence.Wanted wanted) {
        Map<Long, Reading> all = readings.findByCharacteristicIdOrderById(wanted.characteristicId()).stream()
                .collect(Collectors.toMap(Reading::id, one -> one));
        BigDecimal finest = null;
        Long next = wanted.readingId();
        while (next != null) {
            Reading one = all.get(next);
            if (one == null || one.verdict() == Verdict.CONFORMING) {
                break;
            }
            BigDecimal u = one.u();
            if (u != null && (finest == null || u.compareTo(finest) < 0)) {
                finest = u;
            }
            next = one.followsId();
        }
        return finest;
    }

    private static boolean finer(Means means, @Nullable BigDecimal finest) {
        return finest != null && means.u() != null && means.u().compareTo(finest) < 0;
    }

    /** At once counts from the reading that was mistyped first: a correction of a correction begins no new time. */
    private boolean atOnce(Act act, Reading corrected) {
        Reading first = corrected;
        for (Long earlier = first.replacesId(); earlier != null; earlier = first.replacesId()) {
            first = readings.findById(earlier).orElseThrow();
        }
        Duration free = Duration.ofMinutes(settings.whole("undo.free.minutes"));
        return corrected.personId() == act.by() && !act.at().isAfter(first.at().plus(free));
    }
}
