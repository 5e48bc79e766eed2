package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Shipping;

/** Loops: what is done over when something is decided to be, and what may stay. */
class DoneOverTest extends AtTheDesk {

    @Autowired
    private Shipping shipping;

    @ParameterizedTest
    @ValueSource(strings = {"REWORK", "REPAIR", "RETURN"})
    void aLoopDoesTheOperationsAgainUpToWhereTheFaultWasFound(Decision decision) {
        WholeShop.Frame frame = found();
        long id = of(frame);
        Proposal proposal = new Proposal(
                decision,
                "weld out again",
                "070",
                null,
                null,
                false,
                null,
                false,
                null,
                new BigDecimal("40"),
                Set.of());
        if (!deciding.propose(shop.act(qa), id, proposal)) {
            agree(owner, id);
        }
        assertThat(strip(frame))
                .extracting(AtTheDesk::called, FrameSheet.OperationLine::state)
                .containsExactly(
                        tuple("070", OperationState.REPEATED),
                        tuple("080", OperationState.REPEATED),
                        tuple("070 loop 1", OperationState.WAITING),
                        tuple("080 loop 1", OperationState.WAITING),
                        tuple("200", OperationState.WAITING));
        assertThat(shop.sheet(frame).holds()).isEmpty();
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.1");
        shop.tickAll(frame, worker);
        shipping.ship(shop.act(worker), frame.travellerId(), frame.serial());
    }

    @Test
    void whatWasReadAheadUnderAHoldIsReadAgainAfterTheLoop() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("070").step("weld").sheet(),
                        SmallRoute.op("080").plain("080-1", "0.3").sheet(),
                        SmallRoute.op("120").plain("120-1", "0.3").step("wipe").sheet())
                .sheet());
        shop.tickAll(frame, worker);
        long checked = shop.at(frame).line().operationId();
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.1");
        opening.byHand(shop.act(worker), frame.travellerId(), checked, null, null, "a crack beside the weld");
        long ahead = shop.at(frame).characteristics().get(0).characteristicId();
        shop.read(worker, ahead, gauge, "0.1");
        Proposal again = new Proposal(
                Decision.REWORK, "weld it again", "070", null, null, false, null, false, null, null, Set.of());
        deciding.propose(shop.act(qa), of(frame), again);
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.1");
        assertThat(called(shop.at(frame).line())).isEqualTo("120");
        shop.tickAll(frame, worker);
        assertThat(shop.at(frame).characteristics())
                .singleElement()
                .satisfies(c -> assertThat(c.state()).isEqualTo(CharacteristicState.OPEN));
        shop.read(worker, ahead, gauge, "0.1");
        assertThat(shop.sheet(frame).at()).isNull();
    }

    @Test
    void itIsClosedNotBeforeWhatWasDecidedIsCarriedOut() {
        WholeShop.Frame frame = found(SmallRoute.of(
                SmallRoute.op("070").step("weld").sheet(),
                SmallRoute.op("080").plain("080-1", "0.3").sheet()));
        long id = of(frame);
        deciding.propose(
                shop.act(qa),
                id,
                new Proposal(
                        Decision.REWORK, "weld it again", "070", null, null, false, null, false, null, null, Set.of()));
        assertThat(refusal(() -> deciding.close(shop.act(qa), id, "done")).why())
                .contains("070 loop 1", "is ");
        shop.tickAll(frame, worker);
        assertThat(refusal(() -> deciding.close(shop.act(qa), id, "done")).why())
                .contains("080 loop 1");
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.1");
        deciding.close(shop.act(qa), id, "welded again, and straight");
        assertThat(state(id)).isEqualTo(NonconformanceState.CLOSED);
    }

    @Test
    void aLoopBeyondTheRoutesLimitNeedsTheOwner() {
        WholeShop.Frame frame = found(SmallRoute.of(
                SmallRoute.op("080").atMost(1).plain("080-1", "0.3").sheet()));
        deciding.propose(shop.act(qa), of(frame), complete(Decision.REWORK, null));
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.5");
        long second = deciding.of(frame.serial()).get(1).id();
        assertThat(refusal(() -> deciding.propose(shop.act(qa), second, complete(Decision.REWORK, null)))
                        .why())
                .contains("allows 1");
        assertThat(state(second)).isEqualTo(NonconformanceState.OPEN);
        Proposal beyond =
                new Proposal(Decision.REWORK, "once more", "080", null, null, false, null, true, null, null, Set.of());
        assertThat(deciding.propose(shop.act(qa), second, beyond)).isFalse();
        assertThat(agree(owner, second)).isTrue();
        assertThat(called(shop.at(frame).line())).isEqualTo("080 loop 2");
    }

    @Test
    void ofTwoFoundAtOneOperationTheSecondNeedsNoLoopOfItsOwnAndHoldsUntilItIsDecided() {
        WholeShop.Frame frame = found(SmallRoute.of(
                SmallRoute.op("070").step("weld").sheet(),
                SmallRoute.op("080").plain("080-1", "0.3").plain("080-2", "0.3").sheet()));
        shop.read(worker, shop.at(frame).characteristics().get(1).characteristicId(), gauge, "0.6");
        List<NonconformanceLine> both = deciding.of(frame.serial());
        deciding.propose(shop.act(qa), both.get(0).id(), complete(Decision.REWORK, null));
        long again = shop.at(frame).characteristics().get(0).characteristicId();
        assertThat(shop.sheet(frame).inTheWay()).isNotEmpty();
        deciding.propose(shop.act(qa), both.get(1).id(), complete(Decision.REWORK, null));
        assertThat(strip(frame)).extracting(AtTheDesk::called).containsExactly("070", "080", "080 loop 1");
        assertThat(shop.sheet(frame).inTheWay()).isEmpty();
        shop.read(worker, again, gauge, "0.1");
    }
}
