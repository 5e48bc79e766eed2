package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.travellers.CharacteristicState;

/** What a component may be given for: the places it has, and bolts that were torqued before it came. */
class GivenComponentsTest extends AtTheStand {

    /** A face plate of four bolts in four places answers for all of them where its sheet says so; three bolts cannot. */
    @Test
    void aComponentAnswersForEveryPlaceOnlyWhereItsSheetSaysSoAndHasABoltForEach() {
        Floor.Frame frame = frame(torque("b-1", "upper left", "upper right", "lower left", "lower right"));
        refused(() -> give(frame, component(ComponentKind.STEM, plates(4, false)), ""), "upper left, upper right");
        refused(() -> give(frame, component(ComponentKind.STEM, plates(3, true)), ""), "into each of them");
        give(frame, component(ComponentKind.STEM, plates(4, true)), "");
        assertThat(state(frame, "b-1")).isEqualTo(CharacteristicState.OWN_SHEET);
        assertThat(sheet(frame).lines().get(0).fastener().bolts()).isEqualTo(4);
    }

    private static NewFastener plates(int bolts, boolean everyPlace) {
        return new NewFastener(
                "face plate",
                bolts,
                figure("5"),
                figure("5.5"),
                figure("6"),
                false,
                null,
                null,
                false,
                List.of(),
                false,
                true,
                false,
                null,
                "b-1",
                everyPlace);
    }

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
