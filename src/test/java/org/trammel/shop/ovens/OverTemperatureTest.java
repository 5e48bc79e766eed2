package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.TestClock;
import org.trammel.shop.floor.Floor;

/**
 * The thermocouple that would switch the oven off tells nothing of the load, and it holds the load where it came to what must
 * never be reached. The log of an age at 177 °C is the invented one of the runs; 185 °C is a limit of this test.
 */
class OverTemperatureTest extends AtTheOven {

    private String guard() {
        String code = "TC-G" + NUMBER.get();
        register.fit(crew.act(qa), oven.oven(), code, ThermocoupleRole.OVER_TEMPERATURE);
        new OvenFloor(register, crew)
                .accuracy(
                        oven.oven(),
                        code,
                        "0",
                        TestClock.START.minus(Duration.ofDays(20)),
                        LocalDate.parse("2026-12-31"));
        programme = "P-N" + NUMBER.get();
        Programme drawn = programmes.draw(
                crew.act(qa),
                programme,
                Purpose.AGEING,
                new NewProgramme(
                        "never above",
                        List.of("AL6061"),
                        List.of(operation),
                        List.of(ProgrammeStep.of(new BigDecimal("177"), new BigDecimal("5"), new BigDecimal("8"))),
                        new BigDecimal("185"),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        false,
                        "written for a test"));
        programmes.approve(crew.act(qa), drawn.revisionId(), drawn.version());
        return code;
    }

    /** The load as it should be, and beside it what the guard read: 20 °C, and once a peak. */
    private Run recorded(String guard, String peak, Floor.Frame frame) {
        Run run = stopped(frame);
        Instant began = clock.instant().minus(Duration.ofMinutes(600));
        String[] lines = log(began, oven.load(), 0).split("\n");
        StringBuilder text = new StringBuilder(lines[0] + ";" + guard + " °C\n");
        for (int i = 1; i < lines.length; i++) {
            text.append(lines[i])
                    .append(';')
                    .append(i == 300 ? peak : "178,000")
                    .append('\n');
        }
        Run read = read(run.code(), text.toString());
        return records.take(
                crew.act(heat), run.code(), runs.draft(read.id()).orElseThrow().id());
    }

    @Test
    void whatItExceedsHoldsTheLoad() {
        String guard = guard();
        Floor.Frame frame = frame();
        Run run = recorded(guard, "185,000", frame);
        assertThat(run.judged()).isEqualTo(Judged.NOT_CONFORMING);
        refused(() -> release.decide(crew.act(heat), run.code(), qa, Set.of(), null), "not conforming");
        release.decide(crew.act(heat), run.code(), qa, Set.of(frame.travellerId()), guard + " came too high");
        assertThat(floor.sheet(frame).holds())
                .anySatisfy(hold -> assertThat(hold.source()).isEqualTo(run.code()));
        assertThat(floor.at(frame).line().code()).isEqualTo(operation);
    }

    @Test
    void belowItTheLoadIsJudgedByItsOwnThermocoupleAlone() {
        Floor.Frame frame = frame();
        Run run = recorded(guard(), "184,900", frame);
        assertThat(run.judged()).isEqualTo(Judged.CONFORMING);
        release.decide(crew.act(heat), run.code(), qa, Set.of(), null);
        assertThat(runs.byCode(run.code()).frames().get(0).state()).isEqualTo(FrameState.RELEASED);
    }
}
