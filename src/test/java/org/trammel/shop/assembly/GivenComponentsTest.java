package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;

/** What a component may be given for: the places it has, and bolts that were torqued before it came. */
class GivenComponentsTest extends AtTheStand {

    /** The plate was tightened for up to 6 N·m at an operation that is done; nothing asks for its bolts again. */
    @Test
    void aPartThatAllowsLessThanAFinishedOperationGaveIsNotGivenLater() {
        String first = fit;
        String later = "9" + first;
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op(first).step("stem").sheet(),
                        SmallRoute.op(later).step("bar").sheet(),
                        SmallRoute.op("999").step("on").sheet())
                .sheet());
        give(frame, component(ComponentKind.STEM, plate(null)), "");
        tightenAll(frame);
        witness(frame, second);
        floor.tickAll(frame, fitter);
        assertThat(code(frame)).isEqualTo(later);
        fit = later;
        refused(
                () -> give(frame, component(ComponentKind.HANDLEBAR, true, "5.9"), ""),
                "face plate of stem of a test clamps it",
                "for up to 6 N·m",
                "allows 5.9 N·m",
                "opens that operation again");
        give(frame, component(ComponentKind.HANDLEBAR, true, "6"), "");
        assertThat(list.of(frame.serial(), "")).hasSize(2);
    }
}
