package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

/** What the sheets of components say, as revisions; and who says which components a frame has. */
class ComponentsTest extends AtTheStand {

    @Test
    void aSheetIsWrittenByOnePersonAndPutInForceByQaOrOwner() {
        NewComponent stem = component(ComponentKind.STEM, plate(null));
        Component draft = components.draft(crew.act(fitter), "K-REV", stem);
        assertThat(draft.draft()).isTrue();
        assertThat(draft.fasteners().get(0).witness()).isTrue();
        assertThat(draft.fasteners().get(0).nutFactor()).isEqualByComparingTo("0.2");
        Floor.Frame frame = frame();
        refused(() -> list.give(crew.act(owner), frame.travellerId(), "K-REV", ""), "not in force");
        refused(() -> components.putInForce(crew.act(fitter), "K-REV", "A"), "QA lead");
        refused(() -> components.putInForce(crew.act(qa), "K-REV", "B"), "no draft B");
        components.putInForce(crew.act(owner), "K-REV", "A");
        FramePart given = list.give(crew.act(owner), frame.travellerId(), "k-rev", "");
        components.draft(crew.act(fitter), "K-REV", stem);
        Component replaced = components.draft(crew.act(fitter), "K-REV", stem);
        components.putInForce(crew.act(qa), "K-REV", "C");
        assertThat(components.of("K-REV"))
                .extracting(Component::state)
                .containsExactly("in force", "draft, replaced", "superseded");
        assertThat(replaced.letter()).isEqualTo("C");
        assertThat(list.of(frame.serial(), "").get(0).component().id())
                .isEqualTo(given.component().id());
        refused(() -> components.putInForce(crew.act(qa), "K-REV", "C"), "no draft C");
    }

    @Test
    void theSameActTwiceWritesOneSheetAndGivesOneComponent() {
        Act write = crew.act(fitter);
        components.draft(write, "K-TWICE", component(ComponentKind.STEM, plate(null)));
        components.draft(write, "K-TWICE", component(ComponentKind.STEM, plate(null)));
        assertThat(components.of("K-TWICE")).hasSize(1);
        components.putInForce(crew.act(qa), "K-TWICE", "A");
        Floor.Frame frame = frame();
        Act give = crew.act(owner);
        list.give(give, frame.travellerId(), "K-TWICE", "");
        list.give(give, frame.travellerId(), "K-TWICE", "");
        assertThat(list.of(frame.serial(), "")).hasSize(1);
    }

    @Test
    void whatASheetCannotSayIsRefused() {
        refused(() -> inForce(component(ComponentKind.STEM)), "has no fastener");
        refused(() -> inForce(component(ComponentKind.STEM, single("a", "6", "5.5", "5"))), "ends at 5 N·m");
        refused(() -> inForce(component(ComponentKind.STEM, single("a", "5", "6.5", "6"))), "lies outside 5 to 6");
        refused(() -> inForce(component(ComponentKind.STEM, single("a", "-1", "5", "6"))), "above 0");
        refused(
                () -> inForce(component(ComponentKind.STEM, single("a", "5", "500", "1e308"))),
                "above 0 and up to 400");
        refused(
                () -> inForce(
                        component(ComponentKind.STEM, single("a", "5", "5.5", "6"), single("a", "5", "5.5", "6"))),
                "have one name");
        refused(() -> inForce(component(ComponentKind.STEM, passes(List.of(60)))), "do not rise to 100 %");
        refused(() -> inForce(component(ComponentKind.STEM, passes(List.of(100, 60)))), "do not rise to 100 %");
        refused(() -> inForce(component(ComponentKind.STEM, passes(List.of(0, 100)))), "do not rise to 100 %");
        refused(() -> components.draft(crew.act(fitter), "a b", component(ComponentKind.STEM, plate(null))), "signs");
        long apprentice = floor.hire(Role.APPRENTICE);
        refused(
                () -> components.draft(crew.act(apprentice), "K-A", component(ComponentKind.STEM, plate(null))),
                "may not write");
    }

    private static NewFastener passes(List<Integer> passes) {
        return new NewFastener(
                "a",
                2,
                figure("5"),
                figure("5.5"),
                figure("6"),
                false,
                null,
                null,
                true,
                passes,
                false,
                null,
                false,
                null,
                null);
    }

    @Test
    void onlyWhoAnswersForTheBicycleGivesItComponentsAndNotOnceItIsDone() {
        Floor.Frame frame = frame();
        String stem = inForce(component(ComponentKind.STEM, single("bolt", "4", "5", "6")));
        refused(() -> list.give(crew.act(second), frame.travellerId(), stem, ""), "neither owner nor QA lead");
        FramePart given = list.give(crew.act(fitter), frame.travellerId(), stem, "");
        refused(() -> list.remove(crew.act(second), given.id(), "x"), "neither owner nor QA lead");
        refused(() -> list.remove(crew.act(fitter), given.id(), ""), "reason");
        list.remove(crew.act(fitter), given.id(), "another stem");
        refused(() -> list.remove(crew.act(fitter), given.id(), "again"), "taken off before");
        assertThat(list.everOf(frame.serial())).hasSize(1);
        NewComponent elsewhere = new NewComponent(
                ComponentKind.STEM, "x", "7zz", null, false, null, "s", "1", List.of(single("b", "4", "5", "6")));
        refused(() -> give(frame, elsewhere, ""), "has no operation 7zz");
    }
}
