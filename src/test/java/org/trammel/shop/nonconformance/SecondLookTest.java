package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;

/** What was seen and never measured is cleared only after somebody who took no part looked again. */
class SecondLookTest extends AtTheDesk {

    @Autowired
    private LooksAgain looks;

    @Autowired
    private Crew crew;

    @Test
    void aDentThatWasSeenIsNotClearedByAWordAlone() {
        WholeShop.Frame frame = dented();
        long id = of(frame);
        assertThat(refusal(() -> deciding.propose(shop.act(qa), id, complete(Decision.CLEARED, null)))
                        .why())
                .contains("nobody who took no part in operation 080 has looked again");
        looks.look(shop.act(shop.hire(Role.STATION_WORKER)), id, "a mark of the tape, wiped off");
        assertThat(deciding.propose(shop.act(qa), id, complete(Decision.CLEARED, null)))
                .isTrue();
        assertThat(state(id)).isEqualTo(NonconformanceState.DECIDED);
        assertThat(looks.of(id))
                .singleElement()
                .satisfies(look -> assertThat(look.words()).isEqualTo("a mark of the tape, wiped off"));
    }

    @Test
    void whoTookPartDoesNotLookAgain() {
        WholeShop.Frame frame = dented();
        long id = of(frame);
        assertThat(refusal(() -> looks.look(shop.act(worker), id, "nothing there"))
                        .why())
                .contains("took part in operation 080");
    }

    @Test
    void whoWorkedAtTheOperationAtFaultDoesNotLookAgainAndTheQaLeadDoes() {
        WholeShop.Frame frame = dented();
        long id = of(frame);
        looks.look(shop.act(qa), id, "nothing there");
        deciding.blame(shop.act(qa), id, "070");
        assertThat(refusal(() -> looks.look(shop.act(worker), id, "nothing there"))
                        .why())
                .contains("took part in operation 070");
        assertThat(deciding.propose(shop.act(qa), id, complete(Decision.CLEARED, null)))
                .isTrue();
    }

    @Test
    void whoeverPutItForwardAloneIsNotOfferedToAgree() {
        WholeShop.Frame frame = dented();
        long id = of(frame);
        assertThat(deciding.propose(shop.act(qa), id, complete(Decision.REPAIR, null)))
                .isFalse();
        assertThat(deciding.agrees(id, crew.byId(qa))).isFalse();
        assertThat(deciding.agrees(id, crew.byId(owner))).isTrue();
    }

    /** A frame whose worker ticked at 080, where a dent was seen. */
    private WholeShop.Frame dented() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("070").step("weld").sheet(),
                        SmallRoute.op("080").step("look over").step("wipe").sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
        shop.tickAll(frame, worker);
        bench.tick(
                shop.act(worker),
                java.util.List.of(shop.at(frame).steps().get(0).stepId()),
                null,
                null);
        opening.byHand(
                shop.act(worker),
                frame.travellerId(),
                shop.at(frame).line().operationId(),
                null,
                null,
                "a dent in the top tube");
        return frame;
    }
}
