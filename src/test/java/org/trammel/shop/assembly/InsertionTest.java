package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

/** A seatpost is in at least as far as its own sheet says, measured on the frame, before its operation is passed. */
class InsertionTest extends AtTheStand {

    @Autowired
    private Insertions insertions;

    @Autowired
    private InsertionGivers givers;

    @Test
    void theGateStaysShutUntilThePostIsInFarEnough() {
        Floor.Frame frame = frame();
        FramePart post = give(frame, seatpost("100"), "");
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo(fit);
        assertThat(why(frame))
                .contains("not measured how far the seatpost of a test is in", "100 mm at least by its own sheet");
        measure(frame, post, "99.9");
        assertThat(why(frame)).contains("in by 99.9 mm", "asks for 100 mm at least");
        List<PostIn> posts = measure(frame, post, "100");
        assertThat(posts).singleElement().matches(PostIn::enough);
        assertThat(why(frame)).doesNotContain("seatpost");
    }

    @Test
    void whatCannotBeIsRefused() {
        Floor.Frame frame = frame();
        FramePart post = give(frame, seatpost("100"), "");
        refused(() -> measure(frame, post, null), "not said how far it is in");
        refused(() -> measure(frame, post, "0"), "0 mm does not lie above 0");
        refused(() -> measure(frame, post, "601"), "601 mm does not lie above 0 and up to 600 mm");
        refused(() -> measure(frame, post, "100.25"), "more than one decimal", "Round it down");
        refused(() -> insertions.measure(crew.act(fitter), at(frame), -1, BigDecimal.TEN), "no such seatpost");
        long auditor = floor.hire(Role.AUDITOR);
        refused(
                () -> insertions.measure(crew.act(auditor), at(frame), post.id(), BigDecimal.TEN),
                "A reader changes nothing");
        refused(() -> inForce(seatpost("0")), "least insertion of 0 mm");
        refused(() -> inForce(seatpost("401")), "up to 400 mm");
        refused(
                () -> inForce(of(ComponentKind.STEM, "60", single("bolt", "4", "5", "6"))),
                "A stem has no least insertion");
    }

    @Test
    void theSameActTwiceIsOneRecordAndWhoeverMeasuredTookPart() {
        Floor.Frame frame = frame();
        FramePart post = give(frame, seatpost("100"), "");
        Act act = crew.act(fitter);
        insertions.measure(act, at(frame), post.id(), new BigDecimal("120"));
        assertThat(insertions.measure(act, at(frame), post.id(), new BigDecimal("50")))
                .singleElement()
                .matches(PostIn::enough);
        assertThat(givers.peopleAt(at(frame))).containsExactly(fitter);
    }

    private List<PostIn> measure(Floor.Frame frame, FramePart post, @Nullable String inserted) {
        return insertions.measure(
                crew.act(fitter), at(frame), post.id(), inserted == null ? null : new BigDecimal(inserted));
    }

    private String why(Floor.Frame frame) {
        return floor.sheet(frame).inTheWay().stream().map(way -> way.why()).reduce("", (a, b) -> a + " " + b);
    }

    private NewComponent seatpost(String least) {
        return of(ComponentKind.SEATPOST, least);
    }

    private NewComponent of(ComponentKind kind, String least, NewFastener... fasteners) {
        return new NewComponent(
                kind,
                "seatpost of a test",
                fit,
                ride,
                false,
                null,
                "its own sheet",
                "edition 2",
                List.of(fasteners),
                new BigDecimal(least));
    }
}
