package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.Signing;

/** Whoever read the heights did the measuring, also where somebody else had them reduced. */
class FigureGiversTest extends OnThePlate {

    @Autowired
    private Evidence evidence;

    @Autowired
    private Signing signing;

    private WholeShop.Frame heldForASecond() {
        return shop.frame(SmallRoute.of(
                        SmallRoute.op("100")
                                .at("4")
                                .hold(Signer.SECOND)
                                .characteristic(characteristic("100-9", "Lean of seat tube", "°", "0.30", "100 to 400"))
                                .sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
    }

    @Test
    void whoReadTheHeightsDoesNotSignTheirPoint() {
        WholeShop.Frame frame = heldForASecond();
        long operation = operation(frame);
        seatTube(frame, "150.10", "150.12");
        reductions.reduce(shop.act(other), operation);
        assertThat(state(frame, "100-9")).isEqualTo(CharacteristicState.CONFORMING);
        assertThat(evidence.barredFrom(operation, Signer.SECOND)).containsExactlyInAnyOrder(aligner, other);
        assertThat(refusal(() -> signing.sign(shop.act(aligner), operation, aligner, Signer.SECOND))
                        .why())
                .contains("ticked or measured");
        long third = shop.hire(Role.STATION_WORKER);
        signing.sign(shop.act(third), operation, third, Signer.SECOND);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void whoseHeightWasStruckOutTookPartAllTheSame() {
        WholeShop.Frame frame = heldForASecond();
        long operation = operation(frame);
        read(frame, Spot.SEAT_LOW, "150.70");
        figures.strikeOut(
                shop.act(other), operation, sheet(frame).standing().get(0).readingId(), "read on the wrong tube");
        assertThat(evidence.tookPart(operation)).containsExactlyInAnyOrder(aligner, other);
    }
}
