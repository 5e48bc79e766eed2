package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
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

    @Autowired
    private Crew crew;

    @Autowired
    private MockMvc mvc;

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

    private WholeShop.Frame readByTwo() {
        CharacteristicSheet one = characteristic("100-9", "Lean of seat tube", "°", "0.30", "100 to 400");
        return shop.frame(SmallRoute.of(
                        SmallRoute.op("100")
                                .at("4")
                                .characteristic(new CharacteristicSheet(
                                        one.code(),
                                        one.name(),
                                        one.unit(),
                                        one.decimals(),
                                        one.fromDesign(),
                                        one.nominal(),
                                        one.lowerDeviation(),
                                        one.upperDeviation(),
                                        one.gaugeKind(),
                                        one.points(),
                                        one.reduction(),
                                        one.rule(),
                                        List.of(Signer.SECOND),
                                        one.sided(),
                                        one.readBack(),
                                        true,
                                        one.deciding(),
                                        null,
                                        0,
                                        one.triageTolerances(),
                                        null,
                                        one.source()))
                                .sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
    }

    private void seatTube(long by, WholeShop.Frame frame, String low, String high) {
        read(by, frame, Spot.SEAT_LOW, low, null, null);
        read(by, frame, Spot.SEAT_HIGH, high, null, null);
    }

    @Test
    void theSecondOfTwoDoesNotHaveTheFirstOnesFiguresJudgedOnceMore() {
        WholeShop.Frame frame = readByTwo();
        long operation = operation(frame);
        seatTube(aligner, frame, "150.10", "150.12");
        reductions.reduce(shop.act(aligner), operation);
        assertThat(state(frame, "100-9")).isEqualTo(CharacteristicState.FIRST_READ);
        // one figure of two is the first one's again
        figures.anew(shop.act(other), operation);
        read(other, frame, Spot.SEAT_LOW, "150.10", null, null);
        read(aligner, frame, Spot.SEAT_HIGH, "150.13", null, null);
        Refusal refused = refusal(() -> reductions.reduce(shop.act(other), operation));
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.PERSON);
        assertThat(refused.why())
                .contains(
                        "1 of the 2 figures were read by " + crew.byId(aligner).initials());
        assertThat(state(frame, "100-9")).isEqualTo(CharacteristicState.FIRST_READ);
        // figures of their own, though the first one presses the button, are no second reading by somebody else
        figures.anew(shop.act(other), operation);
        seatTube(other, frame, "150.10", "150.13");
        assertThat(refusal(() -> reductions.reduce(shop.act(aligner), operation))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
        reductions.reduce(shop.act(other), operation);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void aFigureOfTheFirstReadingPutRightBySomebodyElseIsStillTheFirstReading() {
        WholeShop.Frame frame = readByTwo();
        long operation = operation(frame);
        seatTube(aligner, frame, "150.10", "150.12");
        reductions.reduce(shop.act(aligner), operation);
        figures.strikeOut(
                shop.act(other), operation, sheet(frame).at(Spot.SEAT_HIGH).readingId(), "read at the wrong station");
        read(other, frame, Spot.SEAT_HIGH, "150.13", null, null);
        reductions.reduce(shop.act(other), operation);
        assertThat(state(frame, "100-9")).isEqualTo(CharacteristicState.FIRST_READ);
        // both had a hand in it now
        figures.anew(shop.act(aligner), operation);
        seatTube(aligner, frame, "150.10", "150.14");
        assertThat(refusal(() -> reductions.reduce(shop.act(aligner), operation))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
        long third = shop.hire(Role.ALIGNER, Role.STATION_WORKER);
        figures.anew(shop.act(third), operation);
        seatTube(third, frame, "150.10", "150.14");
        reductions.reduce(shop.act(third), operation);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void theSecondOfTwoMayReadTheVerySame() {
        WholeShop.Frame frame = readByTwo();
        long operation = operation(frame);
        seatTube(aligner, frame, "150.10", "150.12");
        reductions.reduce(shop.act(aligner), operation);
        figures.anew(shop.act(other), operation);
        seatTube(other, frame, "150.10", "150.12");
        reductions.reduce(shop.act(other), operation);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void whoReadForTheOneWhoReducedFirstIsNoSecondEither() {
        WholeShop.Frame frame = readByTwo();
        long operation = operation(frame);
        seatTube(other, frame, "150.10", "150.12");
        reductions.reduce(shop.act(aligner), operation);
        figures.anew(shop.act(other), operation);
        seatTube(other, frame, "150.10", "150.13");
        assertThat(refusal(() -> reductions.reduce(shop.act(other), operation)).kind())
                .isEqualTo(Refusal.Kind.PERSON);
    }

    @Test
    void theSheetSaysWhoseFiguresWereJudgedAndThatNobodyNotedAJig() throws Exception {
        WholeShop.Frame frame = heldForASecond();
        long operation = operation(frame);
        read(aligner, frame, Spot.SEAT_LOW, "150.10", null, null);
        read(other, frame, Spot.SEAT_HIGH, "150.12", null, null);
        reductions.reduce(shop.act(other), operation);
        assertThat(mvc.perform(get("/alignment/" + operation).with(Signed.on(crew.byId(aligner))))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("Judged from 1 figure by " + crew.byId(aligner).name() + ", 1 figure by "
                        + crew.byId(other).name() + "; reduced by "
                        + crew.byId(other).name() + ".")
                .contains("No jig is noted for this frame");
    }
}
