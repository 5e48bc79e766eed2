package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.dew.DewGauges;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.materials.Lot;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.ovens.NewOven;
import org.trammel.shop.ovens.OvenRegister;
import org.trammel.shop.ovens.Purpose;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.Travellers;

/** What a frame's surface must be like before it is coated, and that no way leads past it. */
class SurfaceTest extends AtTheBooth {

    @Autowired
    private Lots lotsHere;

    @Autowired
    private OvenRegister ovens;

    @Autowired
    private DewGauges gauges;

    @Autowired
    private Travellers travellers;

    /** Air of 21 °C and 68 % has its dew point at 14.87 °C by the Magnus form with the constants of Sonntag (1990). */
    @Test
    void aFrameTooNearTheDewPointIsNotSprayedAndAWarmerOneIs() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        tick(frame, "booth clean");
        refused(() -> tick(frame, "sprayed"), "“sprayed”", "not measured at this operation");
        SurfaceRecord cold = measure(at(frame), "21", "68", "17.2");
        DewMargin air = Objects.requireNonNull(cold.air());
        assertThat(air.point_degC()).isEqualByComparingTo("14.87");
        assertThat(air.margin_K()).isBetween(new BigDecimal("2.32"), new BigDecimal("2.33"));
        assertThat(air.enough()).isFalse();
        assertThat(air.leastMetal_degC()).isEqualByComparingTo("17.9");
        powder(at(frame), powderLot(null), "0.4");
        refused(
                () -> tick(frame, "sprayed"),
                "17,2 °C",
                "21 °C and 68 %",
                "dew point, over water, is 14,9 °C",
                "3 K are asked for (ISO 8502-4",
                "Wait until the metal is at 17,9 °C");
        assertThat(measure(at(frame), "21", "68", "18.5").air().margin_K())
                .isBetween(new BigDecimal("3.62"), new BigDecimal("3.63"));
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void airAndMetalAreMeasuredRightBeforeTheCoat() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        measure(at(frame), "21", "50", "20");
        powder(at(frame), powderLot(null), "1");
        clock.pass(Duration.ofMinutes(31));
        tick(frame, "booth clean");
        refused(() -> tick(frame, "sprayed"), "more than 30 min ago");
        measure(at(frame), "21", "50", "20");
        clock.pass(Duration.ofMinutes(30));
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo("999");
    }

    /** At −5 °C and 80 % the frost point lies above the dew point: −7.1 °C over ice against −7.9 °C over water. */
    @Test
    void belowZeroTheFrostPointIsTold() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        DewMargin air =
                Objects.requireNonNull(measure(at(frame), "-5", "80", "-4.5").air());
        assertThat(air.overIce()).isTrue();
        assertThat(air.pointInFull()).isEqualTo("frost point, over ice");
        assertThat(air.point_degC()).isBetween(new BigDecimal("-7.2"), new BigDecimal("-7.0"));
        assertThat(air.enough()).isFalse();
        tick(frame, "booth clean");
        refused(() -> tick(frame, "sprayed"), "frost point, over ice");
    }

    @Test
    void nothingIsSprayedWithoutEarthOrWithPowderPastItsDay() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        tick(frame, "booth clean");
        measure(at(frame), "21", "50", "20");
        refused(() -> tick(frame, "sprayed"), "powder or paint was not scanned");
        refused(() -> powder(at(frame), media(MetalFamily.ALUMINIUM), "0.2"), "blast media");
        String lastDay = powderLot(LocalDate.of(2026, 3, 18));
        powder(at(frame), lastDay, "1.01");
        refused(() -> tick(frame, "sprayed"), "1,01 MΩ", "at most 1 MΩ");
        powder(at(frame), lastDay, "1");
        clock.pass(Duration.ofDays(1));
        measure(at(frame), "21", "50", "20");
        refused(() -> tick(frame, "sprayed"), lastDay);
        refused(() -> powder(at(frame), lastDay, "1"), lastDay);
        powder(at(frame), powderLot(null), "1");
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo("999");
    }

    @Test
    void aBlastPassesWithAWholeRecordOnly() {
        inForce("AL6061");
        Floor.Frame frame = frame("AL6061");
        long operation = at(frame);
        tick(frame, "white cloth");
        refused(() -> tick(frame, "blasted"), "Not masked: BB threads, ground spot");
        mask(operation, "BB threads", true);
        mask(operation, "ground spot", true);
        mask(operation, "ground spot", false);
        refused(() -> tick(frame, "blasted"), "Not masked: ground spot.");
        refused(() -> mask(operation, "saddle", true), "no such landmark");
        mask(operation, "ground spot", true);
        tick(frame, "blasted");
        assertThat(code(frame)).isEqualTo(blast);
        assertThat(floor.sheet(frame).inTheWay())
                .anySatisfy(way -> assertThat(way.why()).contains("not recorded what it was blasted with"));
        String media = media(MetalFamily.ALUMINIUM);
        blasted(operation, media, "2.6");
        assertThat(floor.sheet(frame).inTheWay())
                .anySatisfy(way -> assertThat(way.why()).contains("2,6 bar"));
        blasted(operation, media, "2.5");
        assertThat(code(frame)).isEqualTo(blast);
        measure(operation, "21", "68", "18.5");
        assertThat(code(frame)).isEqualTo(coat);
    }

    @Test
    void mediaOfAnotherMetalOrThatTouchedSteelIsNotTaken() {
        inForce("AL6061", "STEEL");
        Floor.Frame aluminium = frame("AL6061");
        String steels = media(MetalFamily.STEEL);
        refused(() -> blasted(at(aluminium), steels, "2"), "kept for steel only");
        blasted(at(frame("STEEL")), steels, "2");
        lots.quarantine(crew.act(qa), steels, "its drum stood at the wrong cabinet");
        Lot lot = register(steels);
        lots.correct(
                crew.act(qa),
                steels,
                lot.version(),
                new NewLot(
                        steels,
                        LotKind.MEDIA,
                        "a lot",
                        null,
                        "GLASS-BEAD",
                        "",
                        "",
                        MetalFamily.ALUMINIUM,
                        "a supplier",
                        LocalDate.of(2025, 12, 2),
                        null,
                        null,
                        ""));
        lots.release(crew.act(qa), steels);
        refused(() -> blasted(at(aluminium), steels, "2"), "used on steel before");
        blasted(at(aluminium), media(MetalFamily.ALUMINIUM), "2");
    }

    private Lot register(String code) {
        return lotsHere.byCode(code).orElseThrow();
    }

    @Test
    void figuresThatCannotBeAreRefused() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        refused(() -> measure(at(frame), "21", "0", "20"), "humidity");
        refused(() -> measure(at(frame), "21", "101", "20"), "humidity");
        refused(() -> measure(at(frame), "70", "50", "20"), "air temperature");
        refused(() -> measure(at(frame), "21", "50", "212"), "in °C");
        refused(() -> powder(at(frame), powderLot(null), "-1"), "not below 0");
        refused(
                () -> surfaces.measured(
                        crew.act(worker),
                        at(frame),
                        new MetalAir(BigDecimal.ONE, BigDecimal.TEN, (BigDecimal) null, hygrometer, thermometer)),
                "temperature of the metal is missing");
        refused(
                () -> surfaces.measured(
                        crew.act(worker),
                        at(frame),
                        new MetalAir(BigDecimal.ONE, BigDecimal.TEN, BigDecimal.ONE, thermometer, thermometer)),
                thermometer);
    }

    @Test
    void whatWasInWorkBeforeAnyFinishAskedGoesByPaper() {
        Floor.Frame before = atTheCoat();
        tick(before, "booth clean");
        clock.pass(Duration.ofMinutes(1));
        inForce("AL6061");
        tick(before, "sprayed");
        assertThat(code(before)).isEqualTo("999");
    }

    @Test
    void whoRecordedTheSurfaceTookPart() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        long other = floor.hire(Role.STATION_WORKER);
        surfaces.spraying(
                crew.act(other), at(frame), new Surfaces.Spraying(powderLot(null), new BigDecimal("0.4"), ohms));
        assertThat(surfaces.of(at(frame)).spray()).isNotNull();
        assertThat(evidence.tookPart(at(frame))).contains(other);
    }

    @Test
    void anotherOperationOrAReaderRecordsNothing() {
        inForce("AL6061");
        Floor.Frame frame = frame("AL6061");
        long later = floor.sheet(frame).operations().get(1).operationId();
        refused(() -> measure(later, "21", "50", "20"), "does not stand at operation " + coat);
        refused(() -> powder(at(frame), powderLot(null), "0.4"), "the other half");
        long auditor = floor.hire(Role.AUDITOR);
        refused(() -> surfaces.mask(crew.act(auditor), at(frame), "BB threads", true), "A reader changes nothing");
        Floor.Frame elsewhere =
                floor.frame(SmallRoute.of(op("998").step("on").sheet()).sheet());
        refused(() -> measure(at(elsewhere), "21", "50", "20"), "No finish names operation 998");
    }

    @Test
    void theSameActTwiceIsOneRecord() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        long operation = at(frame);
        org.trammel.shop.records.Act act = crew.act(worker);
        MetalAir entry =
                new MetalAir(new BigDecimal("21"), new BigDecimal("50"), new BigDecimal("20"), hygrometer, thermometer);
        surfaces.measured(act, operation, entry);
        surfaces.measured(act, operation, entry);
        assertThat(records.airs(operation)).hasSize(1);
    }

    @Test
    void twoFinishesDoNotAskOfOneOperation() {
        inForce("AL6061");
        finish = finish + "-2";
        refused(() -> inForce("AL6061", "STEEL"), "goes by finish");
        inForce("STEEL");
        refused(() -> finishes.putInForce(crew.act(worker), "F-NOT", asked("TI")), "QA lead");
    }

    @Test
    void aRevisionTakesThePlaceOfTheOneBefore() {
        inForce("AL6061");
        Finish next = inForce("AL6061");
        assertThat(next.letter()).isEqualTo("B");
        assertThat(finishes.of(finish).stream().filter(Finish::inForce).map(Finish::id))
                .containsExactly(next.id());
        refused(() -> inForce(), "for no metal");
        refused(
                () -> finishes.putInForce(
                        crew.act(qa),
                        finish,
                        new NewFinish(
                                "x",
                                List.of("AL6061"),
                                List.of(blast),
                                List.of(blast),
                                List.of(),
                                BigDecimal.ONE,
                                null,
                                "s")),
                "named for the blast and for the coat");
    }

    @Test
    void whatIsFittedInAnOvenReadsNoFrameInTheBooth() {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        BigDecimal size = new BigDecimal("1000");
        String oven = "OB" + coat.toUpperCase(java.util.Locale.ROOT);
        ovens.register(
                crew.act(qa),
                oven,
                new NewOven("cures", Set.of(Purpose.CURE), BigDecimal.TEN, size, size, size, BigDecimal.TEN));
        ovens.fit(crew.act(qa), oven, thermometer, ThermocoupleRole.CONTROL);
        assertThat(gauges.usableOnMetal()).doesNotContainKey(thermometer);
        refused(() -> measure(at(frame), "21", "50", "20"), thermometer + " is fitted in " + oven);
        ovens.remove(crew.act(qa), oven, thermometer, "held to frames again");
        assertThat(gauges.usableOnMetal()).containsKey(thermometer);
        measure(at(frame), "21", "50", "20");
    }

    /** Metal of 18.5 °C lay 3.63 K over its dew point, and 2.63 K with a thermometer that shows 1 K too much; 21 °C 5.1 K. */
    @Test
    void aThermometerFoundWrongCallsTheFramesItMayHaveLetPassToTheCoat() {
        inForce("AL6061");
        Floor.Frame near = atTheCoat();
        measure(at(near), "21", "68", "18.5");
        Floor.Frame far = atTheCoat();
        measure(at(far), "21", "68", "21");
        register.fail(
                crew.act(qa),
                thermometer,
                new Failure(LocalDate.of(2026, 3, 18), BigDecimal.ONE, "°C", new BigDecimal("20"), "reads high"));
        assertThat(travellers.openCalls().stream()
                        .map(Travellers.CallLine::words)
                        .filter(words -> words.contains(thermometer + " was found wrong")))
                .singleElement()
                .asString()
                .contains(travellers.head(near.travellerId()).mark(), "damp under the coat")
                .doesNotContain(travellers.head(far.travellerId()).mark());
    }
}
