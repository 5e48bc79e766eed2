package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.coating.FilmRule;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.routes.RouteSheet;

/** Films read by their map, judged by the rule of the finish, and what follows where they do not conform. */
class FilmTest extends AtTheBooth {

    @Autowired
    private Films films;

    @Autowired
    private NonconformanceReads nonconformances;

    private String eddy;
    private String magnet;
    private String film;

    @BeforeEach
    void gauges() {
        eddy = floor.gauge("FILM-EDDY", "µm", "1.2");
        magnet = floor.gauge("FILM-MAGNETIC", "µm", "1.2");
        film = blast.replace('b', 'f');
    }

    /** Ten readings: mean 71.8, thinnest 59 above 48, one of ten below 60; rule as told of ISO 19840, figures by hand. */
    @Test
    void aFilmThatConformsLetsTheCoatPass() {
        asks(CoatAsked.Rule.EIGHTY_TWENTY, null, false, null);
        Floor.Frame frame = coated("AL6061");
        tick(frame, "cured");
        assertThat(code(frame)).isEqualTo(film);
        assertThat(floor.sheet(frame).inTheWay())
                .anySatisfy(way -> assertThat(way.why()).contains("not read by the map"));
        Film read = read(at(frame), eddy, "72 68 81 77 64", "59 88 73 70 66");
        assertThat(read.verdict()).isEqualTo(CoatVerdict.CONFORMING);
        assertThat(read.words()).anySatisfy(words -> assertThat(words).contains("71.8"));
        assertThat(read.nonconformance()).isNull();
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void aFilmThatDoesNotOpensANonconformanceAndTheOperationStaysShut() {
        asks(CoatAsked.Rule.EIGHTY_TWENTY, null, false, null);
        Floor.Frame frame = coated("AL6061");
        tick(frame, "cured");
        long operation = at(frame);
        Film thin = read(operation, eddy, "72 58 59 77 64", "59 88 73 70 66");
        assertThat(thin.verdict()).isEqualTo(CoatVerdict.NOT_CONFORMING);
        assertThat(thin.words().get(0)).contains("3 of 10");
        assertThat(nonconformances.of(frame.serial()))
                .singleElement()
                .satisfies(one -> assertThat(one.number()).isEqualTo(thin.nonconformance()));
        assertThat(floor.sheet(frame).holds())
                .anySatisfy(hold -> assertThat(hold.source()).isEqualTo(thin.nonconformance()));
        assertThat(code(frame)).isEqualTo(film);
        Film again = read(operation, eddy, "20 58 59 77 64", "59 88 73 70 66");
        assertThat(again.nonconformance()).isEqualTo(thin.nonconformance());
        assertThat(nonconformances.of(frame.serial())).hasSize(1);
        read(operation, eddy, "72 68 81 77 64", "59 88 73 70 66");
        assertThat(code(frame)).isEqualTo(film);
    }

    /** u = 1.2 µm, factor 1.65: the band is 1.98 µm. Three readings of 61 lie above 60 as read, below it if read off by so much. */
    @Test
    void aFilmWithinTheGuardBandIsUndecidedAndOpensNothing() {
        asks(CoatAsked.Rule.EIGHTY_TWENTY, null, true, null);
        Floor.Frame frame = coated("AL6061");
        tick(frame, "cured");
        Film near = read(at(frame), eddy, "61 61 61 80 80", "80 80 80 80 80");
        assertThat(near.guard_um()).isEqualByComparingTo("1.98");
        assertThat(near.verdict()).isEqualTo(CoatVerdict.UNDECIDED);
        assertThat(nonconformances.of(frame.serial())).isEmpty();
        assertThat(floor.sheet(frame).inTheWay())
                .anySatisfy(way -> assertThat(way.why()).contains("undecided", "guard band"));
        assertThat(read(at(frame), eddy, "50 50 50 50 50", "50 50 50 50 50").verdict())
                .isEqualTo(CoatVerdict.NOT_CONFORMING);
    }

    @Test
    void aGaugeWithoutUncertaintyIsUnfitWhereItsDoubtCounts() {
        asks(CoatAsked.Rule.EIGHTY_TWENTY, null, true, null);
        Floor.Frame frame = coated("AL6061");
        String aid = floor.gauge("FILM-EDDY", "µm", null);
        refused(() -> read(at(frame), aid, "70 70 70", "70 70 70"), "unfit");
    }

    /** ISO 2178 and ISO 2360: a magnet does not feel aluminium, and steel misleads eddy currents. */
    @Test
    void aGaugeThatDoesNotFeelTheMetalIsRefused() {
        asks(CoatAsked.Rule.EIGHTY_TWENTY, null, false, null);
        Floor.Frame aluminium = coated("AL6061");
        refused(() -> read(at(aluminium), magnet, "70 70 70", "70 70 70"), "does not feel aluminium", "ISO 2360");
        Floor.Frame steel = coated("STEEL");
        refused(() -> read(at(steel), eddy, "70 70 70", "70 70 70"), "misled by steel", "ISO 2178");
        assertThat(read(at(steel), magnet, "70 70 70", "70 70 70").principle().name())
                .isEqualTo("MAGNETIC");
    }

    /** SSPC-PA 2 level 3: the mean of a spot from 80 % of the least to 120 % of the most; of an area within both. */
    @Test
    void spotsAndAreasGoByTheirLevel() {
        asks(CoatAsked.Rule.SPOTS_AND_AREAS, FilmRule.Level.THREE, false, null);
        Floor.Frame frame = coated("AL6061");
        refused(() -> read(at(frame), eddy, "70 70", "70 70 70"), "needs 3");
        assertThat(read(at(frame), eddy, "48 48 48 / 90 90 90", "70 70 70").verdict())
                .isEqualTo(CoatVerdict.CONFORMING);
        asks(CoatAsked.Rule.SPOTS_AND_AREAS, FilmRule.Level.ONE, false, null);
        assertThat(read(at(frame), eddy, "48 48 48 / 90 90 90", "70 70 70").verdict())
                .isEqualTo(CoatVerdict.NOT_CONFORMING);
    }

    @Test
    void aMapWithAHoleOrWithoutFiguresIsRefused() {
        asks(CoatAsked.Rule.MEAN_OF_AREAS, null, false, null);
        Floor.Frame frame = coated("AL6061");
        refused(() -> read(at(frame), eddy, "70 70 70", ""), "seat tube was not read");
        refused(() -> read(at(frame), eddy, "70 x 70", "70"), "“x” on head tube is no reading");
        refused(() -> read(at(frame), eddy, "0", "70"), "no film");
        refused(() -> read(at(frame), eddy, "3000", "70"), "cannot have read");
        refused(
                () -> films.take(
                        crew.act(worker), at(frame), Map.of("head tube", "1", "seat tube", "1", "saddle", "1"), eddy),
                "names an area");
    }

    @Test
    void crossCutGlossAndColourAreJudgedByTheOrder() {
        asks(CoatAsked.Rule.MEAN_OF_AREAS, null, false, 1);
        Floor.Frame frame = coated("AL6061");
        tick(frame, "cured");
        String meter = floor.gauge("GLOSS", "GU", "0.5");
        read(at(frame), eddy, "70", "70");
        assertThat(floor.sheet(frame).inTheWay())
                .anySatisfy(way -> assertThat(way.why()).contains("cross-cut"));
        refused(() -> look(at(frame), 6, "80", "1", meter), "0, nothing came off, to 5");
        refused(() -> look(at(frame), 1, null, "1", meter), "gloss is missing");
        assertThat(look(at(frame), 1, "90", "1.5", meter).verdict()).isEqualTo(CoatVerdict.CONFORMING);
        assertThat(code(frame)).isEqualTo("999");
        Floor.Frame other = coated("AL6061");
        Look bad = look(at(other), 2, "69.9", "1.51", meter);
        assertThat(bad.verdict()).isEqualTo(CoatVerdict.NOT_CONFORMING);
        assertThat(bad.words()).hasSize(3);
        assertThat(nonconformances.of(other.serial())).hasSize(1);
    }

    @Test
    void aFinishWhoseLimitsCannotBeIsNotPutInForce() {
        refused(() -> asks(null, null, false, null), "by which rule");
        refused(() -> asks(CoatAsked.Rule.EIGHTY_TWENTY, null, false, 7), "0 to 5");
    }

    private void asks(
            CoatAsked.@Nullable Rule rule,
            FilmRule.@Nullable Level level,
            boolean guarded,
            @Nullable Integer crossCut) {
        boolean look = crossCut != null;
        finishes.putInForce(
                crew.act(qa),
                finish,
                asked("AL6061", "STEEL"),
                new CoatAsked(
                        List.of(film),
                        List.of("head tube", "seat tube"),
                        rule,
                        new BigDecimal("60"),
                        rule == CoatAsked.Rule.MEAN_OF_AREAS ? null : new BigDecimal("120"),
                        level,
                        false,
                        guarded,
                        crossCut,
                        look ? new BigDecimal("80") : null,
                        look ? BigDecimal.TEN : null,
                        look ? new BigDecimal("1.5") : null));
    }

    private Floor.Frame coated(String metal) {
        RouteSheet drawn = SmallRoute.of(
                        op(film).step("cured").sheet(), op("999").step("on").sheet())
                .sheet();
        return floor.frame(new RouteSheet(
                0, "TEST", "test route", "A", metal, "HARDTAIL", drawn.operations(), List.of(), List.of()));
    }

    private Film read(long operation, String gauge, String head, String seat) {
        return films.take(crew.act(worker), operation, Map.of("head tube", head, "seat tube", seat), gauge);
    }

    private Look look(long operation, @Nullable Integer crossCut, @Nullable String gloss, String colour, String meter) {
        return films.look(
                crew.act(worker),
                operation,
                new Films.Seen(
                        crossCut,
                        gloss == null ? null : new BigDecimal(gloss),
                        new BigDecimal(Objects.requireNonNull(colour)),
                        meter));
    }
}
