package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.units.Answer;

/** Fork, stack and rider against what the family that a revision names was tested up to. */
final class FamilyFigures {

    private final @Nullable String named;
    private final @Nullable TestFamily tested;
    private final ComputedFrame frame;
    private final OrderTells.@Nullable Told told;

    /**
     * Of one revision.
     *
     * @param named by the revision; null where it names none
     * @param tested null where none of that name is kept
     * @param told null where no order tells anything
     */
    FamilyFigures(
            @Nullable String named, @Nullable TestFamily tested, ComputedFrame frame, OrderTells.@Nullable Told told) {
        this.named = named;
        this.tested = tested;
        this.frame = frame;
        this.told = told;
    }

    /** What is compared; a family that says nothing, or of somebody who is not told, leaves the check open. */
    List<Answer<List<CheckFigure>>> all() {
        if (tested == null) {
            return List.of(missing(
                    named == null
                            ? "The revision names no test family."
                            : "No test family " + named + " is kept, so nothing is compared."));
        }
        List<Answer<List<CheckFigure>>> figures = new ArrayList<>();
        if (tested.longestFork_mm() != null || tested.leastStack_mm() != null || tested.mostStack_mm() != null) {
            figures.add(frame.geometry().then(geometry -> Answer.of(drawn(geometry, tested))));
        }
        if (tested.heaviestRider_kg() != null) {
            figures.add(rider(tested, tested.heaviestRider_kg()));
        }
        return figures.isEmpty()
                ? List.of(missing("Test family " + tested.code() + " has no limit, so nothing is compared."))
                : figures;
    }

    private static List<CheckFigure> drawn(FrameGeometry geometry, TestFamily tested) {
        List<CheckFigure> made = new ArrayList<>();
        if (tested.longestFork_mm() != null) {
            made.add(CheckFigure.atMost(
                            "fork",
                            geometry.layout().forkLength_mm(),
                            tested.longestFork_mm().doubleValue(),
                            "mm")
                    .from(tested.source()));
        }
        if (tested.leastStack_mm() != null) {
            made.add(CheckFigure.atLeast(
                            "stack", geometry.stack_mm(), tested.leastStack_mm().doubleValue())
                    .from(tested.source()));
        }
        if (tested.mostStack_mm() != null) {
            made.add(CheckFigure.atMost(
                            "stack", geometry.stack_mm(), tested.mostStack_mm().doubleValue(), "mm")
                    .from(tested.source()));
        }
        return made;
    }

    private Answer<List<CheckFigure>> rider(TestFamily tested, BigDecimal heaviest_kg) {
        BigDecimal mass_kg = told == null ? null : told.mass_kg();
        if (mass_kg == null) {
            return missing((told == null ? "No order" : "The order") + " tells "
                    + (told == null ? "the rider's mass" : "no mass of the rider") + ", and test family "
                    + tested.code() + " limits it.");
        }
        return Answer.of(List.of(CheckFigure.atMost("rider", mass_kg.doubleValue(), heaviest_kg.doubleValue(), "kg")
                .from(tested.source())
                .aboutTheRider()));
    }

    private static Answer<List<CheckFigure>> missing(String sentence) {
        return Answer.none(GateFigures.ORDER, sentence);
    }
}
