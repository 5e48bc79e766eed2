package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.gauges.Means;
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
        BigDecimal before = before(wanted);
        if (wanted.state() == CharacteristicState.UNDECIDED && before != null && !finer(means, before)) {
            throw Refusal.state(
                    wanted.code() + ", " + wanted.name() + ", is not read again with " + means.code() + ".",
                    "It is undecided with an uncertainty of "
                            + DecimalSign.of(settings.locale()).write(before.stripTrailingZeros()) + " " + wanted.unit()
                            + ", and that of " + means.code() + " is no smaller.",
                    "Read it with a gauge of less uncertainty, or call the QA lead, who opens a nonconformance.");
        }
    }

    /**
     * What was undecided, or waits to be set straight, does not conform because it was read or typed once more by the
     * same means. Whoever mistyped puts it right at once; after that the QA lead does.
     *
     * @param corrected the reading that is corrected; null if it was read anew
     */
    void requireReason(Act act, Evidence.Wanted wanted, Means means, Verdict verdict, @Nullable Reading corrected) {
        if (!lacksReason(act, wanted, means, verdict, corrected)) {
            return;
        }
        boolean undecided = wanted.state() == CharacteristicState.UNDECIDED;
        throw Refusal.person(
                wanted.code() + ", " + wanted.name() + ", does not conform by being "
                        + (corrected == null ? "read" : "typed") + " once more.",
                "It is " + wanted.state().word() + ", " + means.code()
                        + " is no better than what it was read with, and nothing was done to the part since.",
                undecided
                        ? "Read it with a gauge of less uncertainty, or call the QA lead, who may correct it."
                        : "Have it set, read it with a gauge of less uncertainty, or call the QA lead, who may correct it.");
    }

    private boolean lacksReason(
            Act act, Evidence.Wanted wanted, Means means, Verdict verdict, @Nullable Reading corrected) {
        boolean doubtful = wanted.state() == CharacteristicState.UNDECIDED
                || wanted.state() == CharacteristicState.NOT_CONFORMING && wanted.coldSetClock() != null;
        BigDecimal before = before(wanted);
        return verdict == Verdict.CONFORMING
                && doubtful
                && wanted.readingId() != null
                && (before == null || !finer(means, before))
                && (corrected == null || !atOnce(act, corrected))
                && !crew.byId(act.by()).is(Role.QA_LEAD);
    }

    /**
     * Whether the verdict stands although a record says something else: one more try by the same means settles nothing. What
     * does not conform by it is always taken. The record itself is kept by its module.
     */
    boolean stands(Act act, Evidence.Wanted wanted, Means means, Verdict verdict) {
        BigDecimal before = before(wanted);
        boolean undecided = wanted.state() == CharacteristicState.UNDECIDED && before != null && !finer(means, before);
        return undecided && verdict != Verdict.NOT_CONFORMING || lacksReason(act, wanted, means, verdict, null);
    }

    private @Nullable BigDecimal before(Evidence.Wanted wanted) {
        Long newest = wanted.readingId();
        return newest == null ? null : readings.findById(newest).map(Reading::u).orElse(null);
    }

    private static boolean finer(Means means, BigDecimal before) {
        return means.u() != null && means.u().compareTo(before) < 0;
    }

    private boolean atOnce(Act act, Reading corrected) {
        Duration free = Duration.ofMinutes(settings.whole("undo.free.minutes"));
        return corrected.personId() == act.by()
                && !act.at().isAfter(corrected.at().plus(free));
    }
}
