package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.when;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.materials.NewPowderSheet;
import org.trammel.shop.materials.PowderSheets;
import org.trammel.shop.orders.OrderedColours;
import org.trammel.shop.routes.StepSheet;

/** What is put on a frame has the colour that its order names for that coat. */
class OrderedColourTest extends AtTheBooth {

    @Autowired
    private OrderedColours ordered;

    @Autowired
    private PowderSheets sheets;

    private void orders(Floor.Frame frame, String... colours) {
        when(ordered.of(frame.orderId())).thenReturn(List.of(colours));
    }

    private String powderOf(String colour) {
        String lot = powderLot(null);
        sheets.enter(crew.act(qa), lot, new NewPowderSheet(colour, List.of(), null, null, null, "sheet of a test"));
        return lot;
    }

    @Test
    void aLotOfAnotherColourOrOfNoneThatIsKnownIsNotPutOn() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        orders(frame, "Traffic  Green");
        String sand = powderOf("sand");
        String unknown = powderLot(null);
        refused(() -> powder(at(frame), sand, "0.4"), sand + " is sand", "asks for Traffic  Green", "changed first");
        refused(() -> powder(at(frame), unknown, "0.4"), "was not entered", "sheet of " + unknown);
        assertThat(surfaces.of(at(frame)).spray()).isNull();
        powder(at(frame), powderOf("traffic green"), "0.4");
        measure(at(frame), "21", "50", "20");
        tick(frame, "booth clean");
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void anOrderThatWasChangedAfterTheScanShutsTheCoat() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        orders(frame, "green");
        powder(at(frame), powderOf("green"), "0.4");
        measure(at(frame), "21", "50", "20");
        tick(frame, "booth clean");
        orders(frame, "sand");
        refused(() -> tick(frame, "sprayed"), "is green", "asks for sand");
        powder(at(frame), powderOf("sand"), "0.4");
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void eachCoatOfTwoColoursAsksForItsOwn() {
        String second = coat + ".4";
        String clear = coat + ".8";
        finishes.putInForce(
                crew.act(qa),
                finish,
                new NewFinish(
                        "two colours",
                        List.of("AL6061"),
                        List.of(),
                        List.of(coat, second, clear),
                        List.of(),
                        BigDecimal.ONE,
                        BigDecimal.ONE,
                        "written for a test"));
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(coat).step(sprayed()).sheet(),
                        op(second).step(sprayed()).sheet(),
                        op(clear).step(sprayed()).sheet(),
                        op("999").step("on").sheet())
                .sheet());
        orders(frame, "sand", "green");
        String sand = powderOf("sand");
        String green = powderOf("green");
        refused(() -> powder(at(frame), green, "0.4"), "asks for sand, coat 1 of 3");
        coated(frame, sand);
        refused(() -> powder(at(frame), sand, "0.4"), "asks for green, coat 2 of 3");
        coated(frame, green);
        refused(() -> powder(at(frame), green, "0.4"), "coat 3 of 3", "names 2 colours");
        orders(frame, "sand", "green", "clear");
        coated(frame, powderOf("clear"));
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void anOrderThatNamesNoColourIsComparedWithNone() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        powder(at(frame), powderLot(null), "0.4");
        assertThat(surfaces.of(at(frame)).spray()).isNotNull();
    }

    private void coated(Floor.Frame frame, String lot) {
        powder(at(frame), lot, "0.4");
        measure(at(frame), "21", "50", "20");
        tick(frame, "sprayed");
    }

    private static StepSheet sprayed() {
        return new StepSheet("sprayed", "", false, true, null, null, null);
    }
}
