package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Asked;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.inspection.Verdict;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.StepSheet;

/** The film that parts two colours: laid and measured before the second, off within its time, and off before the clear coat. */
class MaskLinesTest extends AtTheBooth {

    private static final String DOWN = "down tube, from the shell";
    private static final String SEAT = "seat tube, from the shell";

    @Autowired
    private MaskLines lines;

    @Autowired
    private Readings readings;

    private String lay;
    private String second;
    private String draw;
    private String clear;
    private String tape;
    private String loupe;

    @BeforeEach
    void twoColours() {
        lay = coat + "3";
        second = coat + "4";
        draw = coat + "5";
        clear = coat + "8";
        tape = floor.gauge("TAPE", "mm", null);
        loupe = floor.gauge("FEELER", "mm", null);
    }

    @Test
    void theSecondColourWaitsForItsFilmAndTheNextCoatForItsEnd() {
        inForce(two(List.of(DOWN, SEAT), 120));
        Floor.Frame frame = frameOfTwoColours();
        assertThat(code(frame)).isEqualTo(lay);
        tick(frame, "masked");
        assertThat(code(frame)).isEqualTo(lay);
        assertThat(floor.sheet(frame).inTheWay())
                .anySatisfy(way -> assertThat(way.why()).contains("No film is recorded", DOWN, SEAT));
        laid(frame, DOWN, "220", "220.5");
        refused(() -> laid(frame, "saddle", "10", "10"), "no such line");
        laid(frame, SEAT, "80", "80");
        assertThat(code(frame)).isEqualTo(second);
        ready(frame);
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo(draw);
        FilmLines film = lines.of(at(frame));
        assertThat(film.until()).isEqualTo(clock.instant().plus(Duration.ofMinutes(120)));
        tick(frame, "drawn off");
        assertThat(floor.sheet(frame).inTheWay())
                .anySatisfy(way -> assertThat(way.why()).contains("Film is still on: " + DOWN + ", " + SEAT));
        drawn(frame, SEAT, "0");
        assertThat(code(frame)).isEqualTo(draw);
        drawn(frame, DOWN, "0.1");
        assertThat(code(frame)).isEqualTo(clear);
        refused(() -> laid(frame, DOWN, "220", "220"), "no film is laid at operation " + clear);
        ready(frame);
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo("999");
    }

    /** The film may come off at the last minute of its time, and no minute later. */
    @Test
    void filmThatStayedOnTooLongIsNotPulled() {
        inForce(two(List.of(DOWN, SEAT), 45));
        Floor.Frame frame = atTheFilm();
        clock.pass(Duration.ofMinutes(45));
        drawn(frame, DOWN, "0");
        clock.pass(Duration.ofSeconds(1));
        refused(
                () -> tick(frame, "drawn off"),
                "“drawn off”",
                "its film comes off by",
                "45 min after (finish " + finish,
                "Leave the film on and call the QA lead");
        refused(() -> drawn(frame, SEAT, "0"), "The film was not noted as off.", "45 min after", "call the QA lead");
        assertThat(lines.of(at(frame)).on()).containsExactly(SEAT);
        drawn(frame, DOWN, "0.2");
        assertThat(lines.of(at(frame)).lines().get(0).last().bleed_mm()).isEqualByComparingTo("0.2");
    }

    /** Limits of the route, ±1 mm to 220 and at most 0.3 mm, are held against what the tape and the loupe showed. */
    @Test
    void whatIsRecordedOfTheFilmGivesItsCharacteristics() {
        inForce(two(List.of(DOWN, SEAT), 120)
                .giving(Map.of(
                        CoatFigure.LINE, List.of("150.3-1", "150.3-2"),
                        CoatFigure.BLEED, List.of("150.5-1", "150.5-2"))));
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(lay).step("masked")
                                .characteristic(Asked.of("150.3-1", "mm", "219", "221", "TAPE")
                                        .reduced(2, Reduction.WORST)
                                        .sheet())
                                .sheet(),
                        op(second).step(cannotBeUndone("sprayed")).sheet(),
                        op(draw).step(cannotBeUndone("drawn off"))
                                .characteristic(Asked.of("150.5-1", "mm", null, "0.3", "FEELER")
                                        .sheet())
                                .sheet(),
                        op("999").step("on").sheet())
                .sheet());
        long line = floor.at(frame).characteristics().get(0).characteristicId();
        refused(
                () -> floor.read(worker, line, tape, "220", "220"),
                "150.3-1 is not keyed",
                "The sheet of the coat gives it");
        tick(frame, "masked");
        laid(frame, SEAT, "80", "80");
        assertThat(readings.of(List.of(line))).isEmpty();
        laid(frame, DOWN, "220.4", "219.5");
        ReadingLine given = readings.of(List.of(line)).get(0);
        assertThat(given.raw())
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(new BigDecimal("220.4"), new BigDecimal("219.5"));
        assertThat(given.gauge()).isEqualTo(tape);
        assertThat(given.record()).isEqualTo("the sheet of the coat");
        assertThat(given.verdict()).isEqualTo(Verdict.CONFORMING);
        assertThat(code(frame)).isEqualTo(second);
        ready(frame);
        tick(frame, "sprayed");
        tick(frame, "drawn off");
        long bleed = floor.at(frame).characteristics().get(0).characteristicId();
        drawn(frame, SEAT, "0");
        drawn(frame, DOWN, "0.4");
        assertThat(readings.of(List.of(bleed)))
                .singleElement()
                .satisfies(one -> assertThat(one.verdict()).isEqualTo(Verdict.NOT_CONFORMING));
        assertThat(code(frame)).isEqualTo(draw);
    }

    @Test
    void filmIsLaidAgainRightBeforeTheSecondColourAndTheNewestCounts() {
        inForce(two(List.of(DOWN), 120));
        Floor.Frame frame = frameOfTwoColours();
        tick(frame, "masked");
        laid(frame, DOWN, "220", "220");
        laid(frame, DOWN, "221", "221");
        assertThat(lines.of(at(frame)).lines().get(0).last().drive_mm()).isEqualByComparingTo("221");
    }

    @Test
    void halfASecondColourIsNotPutInForce() {
        refused(() -> inForce(two(List.of(), 120)), "names no line of the film");
        refused(() -> inForce(two(List.of(DOWN, DOWN), 120)), "one twice");
        refused(() -> inForce(two(List.of(DOWN), null)), "until the film is off is missing");
        refused(() -> inForce(two(List.of(DOWN), 0)), "0 min, not 1 to");
        refused(
                () -> inForce(asked("AL6061").with(new SecondColour(List.of(lay), List.of(), List.of(DOWN), 60))),
                "drawn off");
        refused(
                () -> inForce(asked("AL6061").with(new SecondColour(List.of(coat), List.of(draw), List.of(DOWN), 60))),
                "named for two of spraying");
        refused(
                () -> inForce(two(List.of(DOWN, SEAT), 60).giving(Map.of(CoatFigure.LINE, List.of("150.3-1")))),
                "one code to each line");
    }

    @Test
    void figuresThatNoTapeShowsAreRefused() {
        inForce(two(List.of(DOWN), 120));
        Floor.Frame frame = frameOfTwoColours();
        refused(() -> laid(frame, DOWN, null, "220"), "drive side is missing");
        refused(() -> laid(frame, DOWN, "220", "-3"), "does not lie above 0");
        refused(() -> laid(frame, DOWN, "220", "30000"), "does not lie above 0");
        Floor.Frame off = atTheFilm();
        refused(() -> drawn(off, DOWN, null), "ran under the edge is missing");
        refused(() -> drawn(off, DOWN, "-0.1"), "not 0 to 50 mm");
        refused(() -> laid(off, DOWN, "220", "220"), "no film is laid");
    }

    private void inForce(NewFinish content) {
        finishes.putInForce(crew.act(qa), finish, content);
    }

    private NewFinish two(List<String> names, @Nullable Integer most_min) {
        return new NewFinish(
                        "two colours of a test",
                        List.of("AL6061"),
                        List.of(),
                        List.of(coat, second, clear),
                        List.of(),
                        new BigDecimal("2.5"),
                        BigDecimal.ONE,
                        "written for a test")
                .with(new SecondColour(List.of(lay), List.of(draw), names, most_min));
    }

    /** One that stands where its film is laid. */
    private Floor.Frame frameOfTwoColours() {
        return floor.frame(SmallRoute.of(
                        op(lay).step("masked").sheet(),
                        op(second).step(cannotBeUndone("sprayed")).sheet(),
                        op(draw).step(cannotBeUndone("drawn off")).sheet(),
                        op(clear).step(cannotBeUndone("sprayed")).sheet(),
                        op("999").step("on").sheet())
                .sheet());
    }

    /** A frame whose second colour was sprayed just now over all its film. */
    private Floor.Frame atTheFilm() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(lay).step("masked").sheet(),
                        op(second).step(cannotBeUndone("sprayed")).sheet(),
                        op(draw).step(cannotBeUndone("drawn off")).sheet(),
                        op("999").step("on").sheet())
                .sheet());
        tick(frame, "masked");
        lines.of(at(frame)).lines().forEach(line -> laid(frame, line.name(), "220", "220"));
        ready(frame);
        tick(frame, "sprayed");
        return frame;
    }

    private static StepSheet cannotBeUndone(String text) {
        return new StepSheet(text, "", false, true, null, null, null);
    }

    private void ready(Floor.Frame frame) {
        measure(at(frame), "21", "50", "20");
        powder(at(frame), powderLot(null), "0.2");
    }

    private void laid(Floor.Frame frame, String line, @Nullable String drive, String other) {
        lines.lay(
                crew.act(worker),
                at(frame),
                new MaskLines.Laid(line, drive == null ? null : new BigDecimal(drive), new BigDecimal(other), tape));
    }

    private void drawn(Floor.Frame frame, String line, @Nullable String bleed) {
        lines.draw(
                crew.act(worker),
                at(frame),
                new MaskLines.Drawn(line, bleed == null ? null : new BigDecimal(bleed), loupe));
    }
}
