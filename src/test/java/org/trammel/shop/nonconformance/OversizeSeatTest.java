package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.CharacteristicState;

/** A seat that was reamed too wide is sleeved under a concession, or the frame does not go on. */
class OversizeSeatTest extends AtTheDesk {

    private static CharacteristicSheet seat() {
        return new CharacteristicSheet(
                "130-1",
                "Head tube seats",
                "mm",
                3,
                false,
                new BigDecimal("43.95"),
                BigDecimal.ZERO,
                new BigDecimal("0.03"),
                "BORE",
                List.of("once"),
                Reduction.SINGLE,
                Rule.GUARDED,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "headset drawing");
    }

    @Test
    void anOversizeSeatGoesOnOnlyWhenQaAndOwnerConcedeTheSleeve() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("130").characteristic(seat()).sheet(),
                        SmallRoute.op("140").step("mark").sheet())
                .sheet());
        String bores = shop.gauge("BORE", "mm", "0.002", LocalDate.of(2027, 1, 1));
        long seat = shop.at(frame).characteristics().get(0).characteristicId();
        shop.read(worker, seat, bores, "44.05");
        assertThat(shop.at(frame).characteristics().get(0).state()).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(shop.sheet(frame).holds()).isNotEmpty();
        long id = of(frame);

        assertThat(refusal(() -> deciding.propose(shop.act(worker), id, sleeve()))
                        .what())
                .isNotBlank();
        deciding.propose(shop.act(qa), id, sleeve());
        assertThat(shop.at(frame).line().code())
                .as("the owner has not agreed yet")
                .isEqualTo("130");
        assertThat(agree(owner, id)).isTrue();

        assertThat(shop.sheet(frame).holds()).isEmpty();
        assertThat(shop.at(frame).line().code()).isEqualTo("140");
        assertThat(state(id)).isIn(NonconformanceState.DECIDED, NonconformanceState.CLOSED);
    }

    private static Proposal sleeve() {
        return new Proposal(
                Decision.CONCESSION,
                "Sleeve of 44,05 pressed in, bored to 43,96 and measured",
                null,
                "this frame, lower seat",
                LocalDate.of(2026, 12, 31),
                false,
                null,
                false,
                null,
                null,
                Set.of());
    }
}
