package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Asked;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.inspection.Verdict;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;

/** What is recorded of surface and coat gives the characteristics that its finish names, and nobody keys them. */
class CoatGivesTest extends AtTheBooth {

    @Autowired
    private Films films;

    @Autowired
    private Readings readings;

    @Autowired
    private NonconformanceReads nonconformances;

    @Autowired
    private Deciding deciding;

    /** 21 °C and 68 %: dew point 14.87 °C by Magnus (Sonntag's constants), so 17.2 °C is 2.33 K above it, 18.5 °C 3.63 K. */
    @Test
    void theMarginThatOpensTheCoatIsGivenAndOneThatIsTooSmallIsAwaited() {
        finishes.putInForce(
                crew.act(qa),
                finish,
                asked("AL6061")
                        .giving(Map.of(CoatFigure.MARGIN, List.of("150-1"), CoatFigure.EARTH, List.of("150-2"))));
        Floor.Frame frame =
                measured(coat, Asked.of("150-1", "°C", "3", null, "HYGRO"), Asked.of("150-2", "MΩ", null, "1", "OHM"));
        long operation = at(frame);
        measure(operation, "21", "68", "17.2");
        assertThat(line(frame, "150-1").state()).isEqualTo(CharacteristicState.OPEN);
        assertThat(nonconformances.of(frame.serial())).isEmpty();
        refused(
                () -> floor.read(worker, line(frame, "150-1").characteristicId(), hygrometer, "3.6"),
                "150-1 is not keyed",
                "sheet of the coat gives it");
        measure(operation, "21", "68", "18.5");
        ReadingLine margin = reading(frame, "150-1");
        assertThat(margin.value()).isEqualByComparingTo("3.63");
        assertThat(margin.verdict()).isEqualTo(Verdict.CONFORMING);
        assertThat(margin.personId()).isEqualTo(worker);
        assertThat(margin.record()).isEqualTo("the sheet of the coat");
        assertThat(margin.gauge()).isEqualTo(hygrometer + ", " + thermometer);
        measure(operation, "21", "68", "17.2");
        assertThat(line(frame, "150-1").state()).isEqualTo(CharacteristicState.OPEN);
        measure(operation, "21", "68", "18.5");
        powder(operation, powderLot(null), "0.4");
        assertThat(reading(frame, "150-2").value()).isEqualByComparingTo("0.4");
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void aBlastThatWasTooHardOpensItsNonconformance() {
        finish(Map.of(CoatFigure.PRESSURE, List.of("140-1")));
        Floor.Frame frame = measured(blast, Asked.of("140-1", "bar", null, "2.5", "PRESSURE"));
        blasted(at(frame), media(MetalFamily.ALUMINIUM), "2.6");
        assertThat(line(frame, "140-1").state()).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(nonconformances.of(frame.serial()))
                .singleElement()
                .satisfies(one -> assertThat(one.characteristicCode()).isEqualTo("140-1"));
    }

    /** Ten readings: mean 71.8, thinnest 59; by hand. Two people read the map where the route asks two. */
    @Test
    void aMapGivesEveryCharacteristicOfTheFilmByItsOwnReduction() {
        finish(Map.of(CoatFigure.FILM, List.of("150-3a", "150-3b", "150-3c")));
        Floor.Frame frame = measured(
                coat,
                Asked.of("150-3a", "µm", "60", null, "FILM-EDDY").reduced(10, Reduction.MEAN),
                Asked.of("150-3b", "µm", "48", null, "FILM-EDDY")
                        .reduced(10, Reduction.LEAST)
                        .byTwo(),
                Asked.of("150-3c", "µm", null, "80", "FILM-EDDY").reduced(10, Reduction.GREATEST));
        String eddy = floor.gauge("FILM-EDDY", "µm", "1.2");
        refused(
                () -> films.take(crew.act(worker), at(frame), Map.of("head tube", "72", "seat tube", "59"), eddy),
                "the film is not there yet");
        measure(at(frame), "21", "50", "20");
        powder(at(frame), powderLot(null), "0.4");
        tick(frame, "sprayed");
        Film film = films.take(
                crew.act(worker),
                at(frame),
                Map.of("head tube", "72 68 81 77 64", "seat tube", "59 88 73 70 66"),
                eddy);
        assertThat(film.verdict()).isEqualTo(CoatVerdict.CONFORMING);
        assertThat(reading(frame, "150-3a").value()).isEqualByComparingTo("71.8");
        assertThat(reading(frame, "150-3a").gauge()).isEqualTo(eddy);
        assertThat(reading(frame, "150-3b").value()).isEqualByComparingTo("59");
        assertThat(line(frame, "150-3b").state()).isEqualTo(CharacteristicState.FIRST_READ);
        assertThat(line(frame, "150-3c").state()).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(nonconformances.of(frame.serial()))
                .singleElement()
                .satisfies(one -> assertThat(one.characteristicCode()).isEqualTo("150-3c"));
        long other = floor.hire(Role.STATION_WORKER);
        films.take(
                crew.act(other), at(frame), Map.of("head tube", "72 68 79 77 64", "seat tube", "59 78 73 70 66"), eddy);
        assertThat(line(frame, "150-3b").state()).isEqualTo(CharacteristicState.CONFORMING);
        assertThat(line(frame, "150-3c").state()).isEqualTo(CharacteristicState.CONFORMING);
    }

    @Test
    void aConcessionReleasesAFilmWhereTheRouteHasNoCharacteristicForIt() {
        finish(Map.of());
        Floor.Frame frame = measured(coat);
        String eddy = floor.gauge("FILM-EDDY", "µm", "1.2");
        long operation = at(frame);
        measure(operation, "21", "50", "20");
        powder(operation, powderLot(null), "0.4");
        tick(frame, "sprayed");
        Film thin =
                films.take(crew.act(worker), operation, Map.of("head tube", "40 41 42", "seat tube", "45 46 47"), eddy);
        assertThat(thin.verdict()).isEqualTo(CoatVerdict.NOT_CONFORMING);
        assertThat(code(frame)).isEqualTo(coat);
        long id = nonconformances.of(frame.serial()).get(0).id();
        deciding.propose(crew.act(qa), id, concession());
        assertThat(code(frame)).isEqualTo(coat);
        deciding.agree(
                crew.act(floor.hire(Role.OWNER)),
                id,
                nonconformances.of(frame.serial()).get(0).decisionNumber());
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void aFinishNamesNoCharacteristicTwice() {
        refused(
                () -> finish(Map.of(CoatFigure.EARTH, List.of("150-1"), CoatFigure.MARGIN, List.of("150-1"))),
                "named twice");
    }

    private static Proposal concession() {
        return new Proposal(
                Decision.CONCESSION,
                "thin inside the stays, waxed",
                null,
                "this frame",
                LocalDate.of(2026, 12, 31),
                false,
                null,
                false,
                null,
                null,
                Set.of());
    }

    private void finish(Map<CoatFigure, List<String>> codes) {
        finishes.putInForce(
                crew.act(qa),
                finish,
                asked("AL6061").giving(codes),
                new CoatAsked(
                        List.of(coat),
                        List.of("head tube", "seat tube"),
                        CoatAsked.Rule.EIGHTY_TWENTY,
                        new BigDecimal("60"),
                        null,
                        null,
                        false,
                        false,
                        null,
                        null,
                        null,
                        null));
    }

    private Floor.Frame measured(String operation, Asked... asked) {
        SmallRoute.Op worked = op(operation).step(new StepSheet("sprayed", "", false, true, null, null, null));
        for (Asked one : asked) {
            worked = worked.characteristic(one.sheet());
        }
        return floor.frame(
                SmallRoute.of(worked.sheet(), op("999").step("on").sheet()).sheet());
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
