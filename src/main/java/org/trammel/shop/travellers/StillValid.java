package org.trammel.shop.travellers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Signer;

/** Whether what was done under an older revision is all that a newer one asks for. */
final class StillValid {

    private StillValid() {}

    /** Whether the same is read and judged in the same way, or was in a stricter one. */
    static boolean same(Characteristic was, Characteristic is) {
        return was.rule() == is.rule()
                && was.unit().equals(is.unit())
                && was.gaugeKind().equals(is.gaugeKind())
                && was.points().equals(is.points())
                && was.reduction() == is.reduction()
                && was.signers().equals(is.signers())
                && was.sided() == is.sided()
                && (was.readBack() || !is.readBack())
                && (was.secondPerson() || !is.secondPerson())
                && (was.deciding() || !is.deciding())
                && same(was.nominal(), is.nominal())
                && same(was.lowerLimit(), is.lowerLimit())
                && same(was.upperLimit(), is.upperLimit())
                && same(was.triageTolerances(), is.triageTolerances());
    }

    private static boolean same(@Nullable BigDecimal a, @Nullable BigDecimal b) {
        return a == null || b == null ? a == b : a.compareTo(b) == 0;
    }

    /** What the newer revision asks for and nobody did, in words that "under revision A" follows; empty if nothing. */
    static Optional<String> undone(Operation old, Operation fresh, List<Step> done, List<Step> asked) {
        List<Step> left = new ArrayList<>(done);
        return asked.stream()
                .map(step -> undone(step, left, old, fresh))
                .flatMap(Optional::stream)
                .findFirst()
                .or(() -> unqualified(old.qualification(), fresh.qualification()))
                .or(() -> unsigned(old, fresh));
    }

    /** @param left what was done and stands for no other step yet */
    private static Optional<String> undone(Step step, List<Step> left, Operation old, Operation fresh) {
        Optional<Step> ticked = left.stream()
                .filter(s -> s.ticked() && s.text().equals(step.text()))
                .findFirst();
        if (ticked.isEmpty()) {
            return Optional.of("the step " + step.text() + " was not done");
        }
        Step was = ticked.get();
        left.remove(was);
        if (!was.instruction().equals(step.instruction())) {
            return Optional.of("the step " + step.text() + " was done by another instruction");
        }
        if (step.photo() && !was.photo()) {
            return Optional.of("no photograph was asked for at the step " + step.text());
        }
        if (step.lotKind() != null && !step.lotKind().equals(was.lotKind())) {
            return Optional.of("no lot (" + step.lotKind() + ") was asked for at the step " + step.text());
        }
        if (step.proof() != null && step.proof() != was.proof()) {
            return Optional.of("it was not asked for that " + step.proof().words() + " at the step " + step.text());
        }
        if (step.secondPerson() && !was.secondPerson()) {
            return Optional.of("no second person was asked for at the step " + step.text());
        }
        if (step.irreversible() && !was.irreversible()) {
            return Optional.of(
                    "what the step " + step.text() + " waits for because it cannot be undone was not asked for");
        }
        return unqualified(
                Objects.requireNonNullElse(was.qualification(), orNone(old.qualification())),
                step.qualification() == null ? fresh.qualification() : step.qualification());
    }

    private static String orNone(@Nullable String qualification) {
        return Objects.requireNonNullElse(qualification, "");
    }

    private static Optional<String> unqualified(@Nullable String was, @Nullable String is) {
        return is == null || is.equals(was)
                ? Optional.empty()
                : Optional.of("the qualification " + is + " was not asked for");
    }

    /** A point that was signed by as many and the same, or by more, is signed; a witness point passed is none. */
    private static Optional<String> unsigned(Operation old, Operation fresh) {
        if (fresh.point() == Point.NONE) {
            return Optional.empty();
        }
        if (old.point() == Point.NONE || fresh.point() == Point.HOLD && old.point() != Point.HOLD) {
            return Optional.of(
                    fresh.point() == Point.HOLD
                            ? "its hold point was not signed"
                            : "nobody was called to its witness point");
        }
        List<Signer> missing = fresh.signers().stream()
                .filter(signer -> !old.signers().contains(signer))
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of("its point was not signed as "
                        + missing.stream().map(Signer::word).collect(Collectors.joining(", ")));
    }
}
