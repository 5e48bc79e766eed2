package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;

/** What is read back blind and asked about is no verdict, and stays on record. */
class BlindAttemptTest extends AtTheTable {

    @Autowired
    private BlindAttempts attempts;

    @Test
    void aNumberFarOffIsAskedAboutAndKeptOnceWithWhoReadIt() {
        WholeShop.Frame frame = frame(wanted("060-2", Rule.PLAIN, Reduction.SINGLE, true, "stack"));
        String gauge = gauge("0.010");
        long operation = shop.at(frame).line().operationId();
        Act act = shop.act(worker);
        for (int i = 0; i < 2; i++) {
            Refusal asked = catchThrowableOfType(
                    Refusal.class, () -> readings.read(act, characteristic(frame), input(gauge, false, "21.7")));
            assertThat(asked.kind()).isEqualTo(Refusal.Kind.ASK);
            assertThat(asked.why())
                    .contains("far from what the drawing of this frame says")
                    .doesNotContain("0.3");
        }
        assertThat(attempts.of(List.of(operation))).singleElement().satisfies(told -> {
            assertThat(told.readAs()).isEqualTo("21,7 °");
            assertThat(told.by()).isEqualTo(worker);
        });
        assertThat(readings.of(List.of(characteristic(frame)))).isEmpty();
        read(worker, frame, gauge, "0.1");
        read(second, frame, gauge, "0.1");
        assertThat(attempts.of(List.of(operation))).hasSize(1);
    }

    @Test
    void whatIsNotReadBackIsOnlyAskedAbout() {
        WholeShop.Frame frame = frame(wanted(Rule.PLAIN, Reduction.SINGLE, "one"));
        String gauge = gauge("0.010");
        long operation = shop.at(frame).line().operationId();
        assertThat(catchThrowableOfType(
                                Refusal.class,
                                () -> readings.read(
                                        shop.act(worker), characteristic(frame), input(gauge, false, "21.7")))
                        .kind())
                .isEqualTo(Refusal.Kind.ASK);
        assertThat(attempts.of(List.of(operation))).isEmpty();
    }
}
