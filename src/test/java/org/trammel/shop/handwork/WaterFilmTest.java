package org.trammel.shop.handwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;

/** Metal on which water breaks into drops is cleaned again, and the step opens only to a film that holds after that. */
class WaterFilmTest extends AtTheBrushes {

    @Autowired
    private ProofTicks ticks;

    private Floor.Frame cleaned(String cleaner, String cloth) {
        Floor.Frame frame =
                frame("TI", proven("wiped", Proof.CLEANED), proven("water runs off in one film", Proof.WATER_BREAK));
        ticks.tick(
                crew.act(worker),
                List.of(step(frame, "wiped").stepId()),
                new ProofEntry(List.of(cleaner, cloth), null, null, null),
                null,
                null);
        return frame;
    }

    private FrameSheet.StepLine step(Floor.Frame frame, String text) {
        return floor.at(frame).steps().stream()
                .filter(one -> one.text().startsWith(text))
                .findFirst()
                .orElseThrow();
    }

    private void water(Floor.Frame frame, boolean held, String... parts) {
        ticks.tick(
                crew.act(second),
                List.of(step(frame, "water").stepId()),
                new ProofEntry(List.of(), null, new Handwork.WaterSeen(held, List.of(parts)), null),
                null,
                null);
    }

    @Test
    void aFilmThatBreaksSendsTheFrameBackToTheClothAndIsKept() {
        String cleaner = tool(ToolKind.CLEANER, MetalFamily.TITANIUM, false);
        String cloth = tool(ToolKind.CLOTH, MetalFamily.TITANIUM, false);
        Floor.Frame frame = cleaned(cleaner, cloth);
        refused(() -> tick(frame, "water runs off in one film", second), "Nobody recorded how water runs off");
        clock.pass(Duration.ofMinutes(1));
        refused(
                () -> water(frame, false, "down tube"),
                "was not ticked",
                "The film broke into drops: down tube",
                "Clean and brush again");
        assertThat(step(frame, "wiped").ticked()).isFalse();
        assertThat(handwork.of(at(frame)).waters())
                .extracting(HandRecord.Water::held)
                .containsExactly(false);
        // What cleaned before did not clean, and a film that is said to hold all of a sudden is not taken.
        refused(() -> tick(frame, "wiped", worker), "No cleaner kept for titanium");
        refused(() -> water(frame, true, "down tube", "top tube"), "not cleaned again since");
        clock.pass(Duration.ofMinutes(1));
        ticks.tick(
                crew.act(worker),
                List.of(step(frame, "wiped").stepId()),
                new ProofEntry(List.of(cleaner, cloth), null, null, null),
                null,
                null);
        refused(() -> tick(frame, "water runs off in one film", second), "seen before");
        water(frame, true, "down tube", "top tube");
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
    }

    /** Water that ran off before the cloth proves nothing of it, though no film ever broke. */
    @Test
    void aFilmSeenBeforeTheCleaningProvesNothingOfIt() {
        String cleaner = tool(ToolKind.CLEANER, MetalFamily.TITANIUM, false);
        String cloth = tool(ToolKind.CLOTH, MetalFamily.TITANIUM, false);
        Floor.Frame frame =
                frame("TI", proven("wiped", Proof.CLEANED), proven("water runs off in one film", Proof.WATER_BREAK));
        handwork.water(crew.act(second), at(frame), new Handwork.WaterSeen(true, List.of("down tube")));
        clock.pass(Duration.ofMinutes(1));
        ticks.tick(
                crew.act(worker),
                List.of(step(frame, "wiped").stepId()),
                new ProofEntry(List.of(cleaner, cloth), null, null, null),
                null,
                null);
        refused(() -> tick(frame, "water runs off in one film", second), "seen before the parts were cleaned");
        clock.pass(Duration.ofMinutes(1));
        water(frame, true, "down tube");
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
    }

    @Test
    void anApprenticeAloneProvesNoFilm() {
        Floor.Frame frame = frame("STEEL", proven("water", Proof.WATER_BREAK));
        long apprentice = floor.hire(org.trammel.shop.people.Role.APPRENTICE);
        refused(
                () -> handwork.water(
                        crew.act(apprentice), at(frame), new Handwork.WaterSeen(true, List.of("down tube"))),
                "apprentice",
                "may sign");
    }

    @Test
    void whoSaysNeitherHowNorWhereIsAskedForIt() {
        Floor.Frame frame = frame("STEEL", proven("water", Proof.WATER_BREAK));
        refused(
                () -> handwork.water(crew.act(worker), at(frame), new Handwork.WaterSeen(null, List.of())),
                "not said whether the film holds");
        refused(
                () -> handwork.water(crew.act(worker), at(frame), new Handwork.WaterSeen(false, List.of())),
                "on which parts it broke",
                "Mark the parts");
    }
}
