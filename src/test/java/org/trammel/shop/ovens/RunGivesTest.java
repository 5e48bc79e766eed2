package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.thermal.Judged;
import org.trammel.shop.floor.Asked;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.inspection.Verdict;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;

/** What the record of a run says of a characteristic is judged as the run is decided, and nobody keys it. */
class RunGivesTest extends AtTheOven {

    @Autowired
    private Readings readings;

    @Autowired
    private NonconformanceReads nonconformances;

    @Autowired
    private Deciding deciding;

    /** 172 °C is crossed at 60 and at 555 + 75/27 min, by hand; 8.73 h at 177 °C as ruled for that log at 115 kJ/mol. */
    @Test
    void aReleasedRunGivesWhatItsProgrammeNames() {
        gives(Map.of(
                RunFigure.IN_BAND, List.of("110-1"),
                RunFigure.EQUIVALENT, List.of("110-2"),
                RunFigure.HIGHEST, List.of("110-3"),
                RunFigure.SOAK, List.of("110-4")));
        Floor.Frame frame = measured(
                Asked.of("110-1", "h", "8", "9", "OVEN-LOG"),
                Asked.of("110-2", "h", "7.5", "10", "OVEN-LOG"),
                Asked.of("110-3", "°C", null, "185", "THERMOCOUPLE"),
                Asked.of("110-4", "°C", "172", "182", "THERMOCOUPLE").reduced(2, Reduction.WORST));
        Run run = finished(0, frame);
        String log = floor.gauge("OVEN-LOG", "h", null);
        long first = line(frame, "110-1").characteristicId();
        refused(() -> floor.read(qa, first, log, "8.3"), "gives it from its record as it is released");
        release.decide(crew.act(heat), run.code(), qa, Set.of(), null);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        ReadingLine inBand = reading(frame, "110-1");
        assertThat(inBand.value().doubleValue()).isCloseTo((555 + 75.0 / 27 - 60) / 60, within(1e-6));
        assertThat(inBand.record()).isEqualTo("run " + run.code());
        assertThat(inBand.gauge()).isEqualTo(oven.load());
        assertThat(inBand.personId()).isEqualTo(qa);
        assertThat(inBand.verdict()).isEqualTo(Verdict.CONFORMING);
        assertThat(reading(frame, "110-2").value().doubleValue()).isCloseTo(8.73, within(0.005));
        assertThat(reading(frame, "110-3").value()).isEqualByComparingTo("178");
        assertThat(reading(frame, "110-4").raw())
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(new BigDecimal("172"), new BigDecimal("178"));
        refused(() -> floor.read(qa, first, log, "8.3"), "given by run " + run.code());
        refused(
                () -> readings.correct(
                        crew.act(qa),
                        inBand.readingId(),
                        new Readings.Input(List.of(BigDecimal.ONE), log, null, true),
                        "mistyped"),
                "given by run " + run.code());
    }

    @Test
    void whatDoesNotConformOpensItsNonconformanceAsTheRunIsReleased() {
        gives(Map.of(RunFigure.HIGHEST, List.of("110-3")));
        Floor.Frame frame = measured(Asked.of("110-3", "°C", null, "177.5", "THERMOCOUPLE"));
        Run run = finished(0, frame);
        release.decide(crew.act(qa), run.code(), qa, Set.of(), null);
        assertThat(line(frame, "110-3").state()).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(nonconformances.of(frame.serial())).singleElement().satisfies(one -> {
            assertThat(one.characteristicCode()).isEqualTo("110-3");
            assertThat(floor.sheet(frame).holds())
                    .anySatisfy(hold -> assertThat(hold.source()).isEqualTo(one.number()));
        });
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.IN_WORK);
    }

    @Test
    void anotherRunOfAFrameThatWasKeptBackMovesItsCharacteristics() {
        gives(Map.of(RunFigure.HIGHEST, List.of("110-3")));
        Floor.Frame frame = measured(Asked.of("110-3", "°C", null, "185", "THERMOCOUPLE"));
        Run first = finished(0, frame);
        release.decide(crew.act(qa), first.code(), qa, Set.of(frame.travellerId()), "touched the wall");
        assertThat(reading(frame, "110-3").record()).isEqualTo("run " + first.code());
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.IN_WORK);
        floor.sheet(frame).holds().forEach(hold -> holds.lift(crew.act(qa), hold.holdId(), "goes into the oven again"));
        clock.pass(java.time.Duration.ofHours(5));
        Run again = finished(1, frame);
        release.decide(crew.act(qa), again.code(), qa, Set.of(), null);
        assertThat(reading(frame, "110-3").record()).isEqualTo("run " + again.code());
        assertThat(reading(frame, "110-3").value()).isEqualByComparingTo("179");
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
    }

    @Test
    void aRunThatWasTooColdIsRefusedOnTheFrameItWasKeptBackFor() {
        gives(Map.of(RunFigure.IN_BAND, List.of("110-1")));
        Floor.Frame frame = measured(Asked.of("110-1", "h", "8", "9", "OVEN-LOG"));
        Run cold = finished(-20, frame);
        assertThat(cold.judged()).isEqualTo(Judged.NOT_CONFORMING);
        release.decide(crew.act(qa), cold.code(), qa, Set.of(frame.travellerId()), "too cold");
        assertThat(line(frame, "110-1").state()).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(reading(frame, "110-1").value()).isEqualByComparingTo("0");
        long id = nonconformances.of(frame.serial()).get(0).id();
        floor.sheet(frame).holds().stream()
                .filter(hold -> hold.source().equals(cold.code()))
                .forEach(hold -> holds.lift(crew.act(qa), hold.holdId(), "goes into the oven again"));
        deciding.propose(
                crew.act(floor.hire(Role.QA_LEAD)),
                id,
                new Proposal(
                        Decision.REWORK,
                        "age it anew",
                        operation,
                        null,
                        null,
                        false,
                        null,
                        false,
                        null,
                        null,
                        Set.of()));
        assertThat(line(frame, "110-1").state()).isEqualTo(CharacteristicState.OPEN);
        clock.pass(java.time.Duration.ofHours(5));
        Run warm = finished(0, frame);
        release.decide(crew.act(qa), warm.code(), qa, Set.of(), null);
        assertThat(line(frame, "110-1").state()).isEqualTo(CharacteristicState.CONFORMING);
    }

    /** The route asks two, and the shop has one QA lead: who judged the record of a run did no work of it. */
    @Test
    void whoDecidedTheRunSignsItsOperationToo() {
        gives(Map.of(RunFigure.HIGHEST, List.of("110-3")));
        SmallRoute.Op aged = op(operation)
                .step("in the oven")
                .hold(Signer.HEAT_TREATER, Signer.QA)
                .characteristic(
                        Asked.of("110-3", "°C", null, "185", "THERMOCOUPLE").sheet());
        Floor.Frame frame = floor.frame(
                SmallRoute.of(aged.sheet(), op("999").step("on").sheet()).sheet());
        Run run = finished(0, frame);
        release.decide(crew.act(qa), run.code(), qa, Set.of(), null);
        long at = floor.at(frame).line().operationId();
        signing.sign(crew.act(heat), at, heat, Signer.HEAT_TREATER);
        signing.sign(crew.act(qa), at, qa, Signer.QA);
        assertThat(floor.at(frame).line().code()).isEqualTo("999");
    }

    @Test
    void whatNoProgrammeNamesIsKeyed() {
        gives(Map.of(RunFigure.IN_BAND, List.of("110-1")));
        Floor.Frame frame = measured(
                Asked.of("110-2", "h", "7.5", "10", "OVEN-LOG"), Asked.of("110-1", "d", null, "1", "OVEN-LOG"));
        String log = floor.gauge("OVEN-LOG", "h", null);
        Run run = finished(0, frame);
        assertThat(floor.read(qa, line(frame, "110-2").characteristicId(), log, "8.7")
                        .record())
                .isNull();
        release.decide(crew.act(qa), run.code(), qa, Set.of(), null);
        // The record tells hours and minutes; what is asked in days it does not give, and so it is keyed after the
        // release.
        assertThat(line(frame, "110-1").state()).isEqualTo(CharacteristicState.OPEN);
        assertThat(floor.read(qa, line(frame, "110-1").characteristicId(), floor.gauge("OVEN-LOG", "d", null), "0.35")
                        .verdict())
                .isEqualTo(Verdict.CONFORMING);
    }

    /** 555 + 75/27 − 60 min, by hand; an operation may ask for it in minutes, and another for its own characteristic. */
    @Test
    void aTimeInBandIsGivenInMinutesWhereTheyAreAskedAndToWhicheverOperationHasTheCode() {
        gives(Map.of(RunFigure.IN_BAND, List.of("150.2-5", "110-1")));
        Floor.Frame frame = measured(Asked.of("110-1", "min", "480", "540", "OVEN-LOG"));
        Run run = finished(0, frame);
        release.decide(crew.act(qa), run.code(), qa, Set.of(), null);
        assertThat(reading(frame, "110-1").value().doubleValue()).isCloseTo(495 + 75.0 / 27, within(1e-6));
    }

    @Test
    void aDoubtThatTheRecordDoesNotTellIsNotLeftOut() {
        gives(Map.of(RunFigure.HIGHEST, List.of("110-3")));
        Floor.Frame frame =
                measured(Asked.of("110-3", "°C", null, "185", "THERMOCOUPLE").guarded());
        Run run = finished(0, frame);
        release.decide(crew.act(qa), run.code(), qa, Set.of(), null);
        assertThat(line(frame, "110-3").state()).isEqualTo(CharacteristicState.OPEN);
        String meter = floor.gauge("THERMOCOUPLE", "°C", "1.1");
        assertThat(floor.read(qa, line(frame, "110-3").characteristicId(), meter, "178")
                        .verdict())
                .isEqualTo(Verdict.CONFORMING);
    }

    @Test
    void aProgrammeNamesOnlyWhatARecordOfItCanTell() {
        refused(() -> gives(Map.of(RunFigure.QUENCH, List.of("090-2"))), "asks for no quench");
        refused(
                () -> gives(Map.of(RunFigure.IN_BAND, List.of("110-1"), RunFigure.HIGHEST, List.of("110-1"))),
                "named twice");
        refused(() -> gives(Map.of(RunFigure.HIGHEST, List.of("no code"))), "no code of a characteristic");
    }

    private void gives(Map<RunFigure, List<String>> codes) {
        Programme now = programmes.of(programme).get(0);
        Programme drawn =
                programmes.draw(crew.act(qa), programme, null, now.content().giving(codes));
        programmes.approve(crew.act(qa), drawn.revisionId(), drawn.version());
    }

    private Floor.Frame measured(Asked... asked) {
        SmallRoute.Op aged = op(operation).step("in the oven").hold(Signer.SECOND);
        for (Asked one : asked) {
            aged = aged.characteristic(one.sheet());
        }
        return floor.frame(
                SmallRoute.of(aged.sheet(), op("999").step("on").sheet()).sheet());
    }

    private FrameSheet.CharacteristicLine line(Floor.Frame frame, String code) {
        return floor.at(frame).characteristics().stream()
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private ReadingLine reading(Floor.Frame frame, String code) {
        return readings.of(List.of(line(frame, code).characteristicId())).stream()
                .reduce((before, after) -> after)
                .orElseThrow();
    }
}
