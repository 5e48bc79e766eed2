package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Asked;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.inspection.FrameOutcome;
import org.trammel.shop.inspection.ReadingOutcome;
import org.trammel.shop.inspection.RejudgementLine;
import org.trammel.shop.inspection.RejudgementState;
import org.trammel.shop.inspection.Rejudgements;
import org.trammel.shop.travellers.Travellers;

/** A margin over the dew point is computed from two gauges and names neither alone; either found wrong puts it in doubt. */
class MarginRejudgedTest extends AtTheBooth {

    @Autowired
    private Rejudgements rejudgements;

    @Autowired
    private Travellers travellers;

    @ParameterizedTest(name = "the thermometer: {0}")
    @ValueSource(booleans = {true, false})
    void aGaugeFoundWrongBringsBackWhatWasComputedFromIt(boolean ofTheMetal) {
        finishes.putInForce(crew.act(qa), finish, asked("AL6061").giving(Map.of(CoatFigure.MARGIN, List.of("150-1"))));
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(coat).step("booth clean")
                                .characteristic(Asked.of("150-1", "°C", "3", null, "HYGRO")
                                        .sheet())
                                .sheet(),
                        op("999").step("on").sheet())
                .sheet());
        measure(at(frame), "21", "68", "18.5");
        String gauge = ofTheMetal ? thermometer : hygrometer;
        register.fail(
                crew.act(qa),
                gauge,
                new Failure(LocalDate.of(2026, 3, 18), BigDecimal.ONE, "°C", new BigDecimal("20"), "reads high"));
        rejudgements.judgeToTheEnd();
        RejudgementLine done = rejudgements.open().stream()
                .filter(line -> line.gauge().equals(gauge))
                .findFirst()
                .orElseThrow();
        assertThat(done.state()).isEqualTo(RejudgementState.OPEN);
        assertThat(done.readings()).isEqualTo(1);
        assertThat(done.judged()).isEqualTo(1);
        assertThat(rejudgements.readings(done.id(), 0, 9)).singleElement().satisfies(line -> {
            assertThat(line.code()).isEqualTo("150-1");
            assertThat(line.outcome()).isEqualTo(ReadingOutcome.MEASURE_AGAIN);
            assertThat(line.waits()).isTrue();
        });
        assertThat(rejudgements.frames(done.id(), 0, 9)).singleElement().satisfies(line -> {
            assertThat(line.serial()).isEqualTo(frame.serial());
            assertThat(line.outcome()).isEqualTo(FrameOutcome.MEASURE_AGAIN);
        });
        assertThat(travellers.holdsOf(frame.serial()))
                .anySatisfy(hold -> assertThat(hold.source()).isEqualTo(done.number()));
    }
}
