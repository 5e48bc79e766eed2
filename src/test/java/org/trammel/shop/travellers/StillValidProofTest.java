package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.StepSheet;

/** Still valid does not stand for what a newer route rests a tick on and nobody recorded. */
@ShopTest
class StillValidProofTest {

    @Autowired
    private ApplicationContext beans;

    private WholeShop shop;
    private long qa;
    private WholeShop.Frame old;

    @BeforeEach
    void lookOver() {
        shop = new WholeShop(beans);
        qa = shop.hire(Role.QA_LEAD);
        old = shop.frame(route(false, null));
        shop.tickAll(old, shop.hire(Role.STATION_WORKER));
    }

    private long route(boolean irreversible, @Nullable Proof proof) {
        return shop.route(SmallRoute.of(
                        op("050")
                                .step(new StepSheet("bag", "", false, irreversible, null, null, null, proof))
                                .sheet(),
                        op("200").step("pack").sheet())
                .sheet());
    }

    @Test
    void aProofThatIsNewIsNotThereByBeingStillValid() {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> supersede(route(false, Proof.WARM_DRY)));
        assertThat(refusal.why()).contains("cannot be still valid", Proof.WARM_DRY.words(), "at the step bag");
    }

    @Test
    void whatAStepThatCannotBeUndoneWaitsForWasNotAskedOfOneThatCould() {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> supersede(route(true, null)));
        assertThat(refusal.why()).contains("cannot be still valid", "because it cannot be undone");
    }

    @Test
    void theSameStepIsStillValid() {
        supersede(route(false, null));
        assertThat(shop.sheet(old).head().state()).isEqualTo(TravellerState.WITHDRAWN);
    }

    private void supersede(long route) {
        Revising revising = beans.getBean(Revising.class);
        Map<Long, Revising.Said> said = revising.finished(old.orderId()).stream()
                .collect(Collectors.toMap(
                        Revising.Finished::operationId,
                        done -> new Revising.Said(Carry.STILL_VALID, "the drawing changed elsewhere")));
        long drawing = shop.drawing(old.designId(), 2, Map.of());
        revising.supersede(shop.act(qa), old.orderId(), drawing, route, said, null);
    }
}
