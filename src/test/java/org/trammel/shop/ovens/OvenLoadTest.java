package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;

/** What may be loaded, and who says so. */
class OvenLoadTest extends AtTheOven {

    @Autowired
    private Ovens ovens;

    @Test
    void onlyWhatFitsIsLoaded() {
        Floor.Frame frame = frame();
        Run run = loads.open(crew.act(heat), null, oven.oven(), programme, "upright");
        Loads.Ready ready = ready(null);
        refused(
                () -> loads.load(
                        crew.act(heat), run.code(), List.of(frame.serial()), new Loads.Ready("1", false, true, null)),
                "vents are open");
        refused(
                () -> loads.load(
                        crew.act(heat), run.code(), List.of(frame.serial()), new Loads.Ready("1", true, false, null)),
                "dry inside");
        refused(() -> loads.load(crew.act(heat), run.code(), List.of("XX00-000-0"), ready), "check character");
        refused(() -> loads.load(crew.act(heat), run.code(), List.of(), ready), "No tag");
        refused(
                () -> loads.load(crew.act(heat), run.code(), List.of(frame.serial(), frame.serial()), ready),
                "list twice");
        long hold = holds.place(
                crew.act(qa),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.OVEN_TRACE,
                        "look at it",
                        "by hand",
                        Set.of()));
        refused(() -> loads.load(crew.act(heat), run.code(), List.of(frame.serial()), ready), "on hold");
        holds.lift(crew.act(qa), hold, "looked at");
        loads.load(crew.act(heat), run.code(), List.of(frame.serial()), ready);
        refused(() -> loads.load(crew.act(heat), run.code(), List.of(frame.serial()), ready), "in it already");
        Run other = loads.open(crew.act(heat), null, oven.oven(), programme, "upright");
        refused(
                () -> loads.load(crew.act(heat), other.code(), List.of(frame.serial()), ready),
                "in load " + run.code());
        Floor.Frame heavy = frame();
        refused(() -> loads.load(crew.act(heat), run.code(), List.of(heavy.serial()), ready("45.1")), "takes 45");
        Floor.Frame early = floor.frame(SmallRoute.of(
                        op("010").step("saw").sheet(),
                        op(operation).step("oven").sheet())
                .sheet());
        assertThat(loads.load(crew.act(heat), run.code(), List.of(early.serial()), ready)
                        .in())
                .hasSize(2);
        loads.takeOut(crew.act(heat), run.code(), frame.travellerId(), "not tonight");
        ovenRuns.sign(crew.act(heat), run.code(), heat, RunSigner.HEAT_TREATER);
        ovenRuns.sign(crew.act(second), run.code(), second, RunSigner.SECOND);
        refused(() -> ovenRuns.start(crew.act(heat), run.code()), "stands at operation 010");
    }

    @Test
    void anEmptyLoadIsNotSigned() {
        Run run = loads.open(crew.act(heat), null, oven.oven(), programme, "");
        refused(() -> ovenRuns.sign(crew.act(heat), run.code(), heat, RunSigner.HEAT_TREATER), "Nothing is in it");
    }

    @Test
    void aFrameOfAnotherMetalIsNotLoaded() {
        Floor.Frame frame = frame();
        String other = "P-O" + NUMBER.incrementAndGet();
        approve(other, Purpose.AGEING, "AL7005", "149", "16", List.of(operation));
        Run run = loads.open(crew.act(heat), null, oven.oven(), other, "");
        refused(() -> loads.load(crew.act(heat), run.code(), List.of(frame.serial()), ready(null)), "It is of");
    }

    @Test
    void aLockedOvenIsNeitherLoadedNorStarted() {
        Run run = loaded(frame());
        ovenRuns.sign(crew.act(heat), run.code(), heat, RunSigner.HEAT_TREATER);
        ovenRuns.sign(crew.act(second), run.code(), second, RunSigner.SECOND);
        new OvenFloor(register, crew).accuracy(oven.oven(), oven.load(), "7", clock.instant(), null);
        refused(() -> ovenRuns.start(crew.act(heat), run.code()), "is locked");
        refused(() -> loads.open(crew.act(heat), null, oven.oven(), programme, ""), "is locked");
    }

    @Test
    void aLoadThatIsChangedIsSignedAnew() {
        Run run = loaded(frame());
        ovenRuns.sign(crew.act(heat), run.code(), heat, RunSigner.HEAT_TREATER);
        ovenRuns.sign(crew.act(second), run.code(), second, RunSigner.SECOND);
        refused(() -> loads.load(crew.act(heat), run.code(), List.of(frame().serial()), ready(null)), "load signed");
        loads.change(crew.act(heat), run.code());
        assertThat(runs.byCode(run.code()).signatures()).noneMatch(Run.Signed::counts);
        refused(() -> ovenRuns.start(crew.act(heat), run.code()), "being loaded");
    }

    @Test
    void clocksOfTheRouteKeepAFrameOutAndARunWithoutNaturalAgeingToo() {
        Floor.Frame waits = floor.frame(SmallRoute.of(
                        op("070").step("weld").sheet(),
                        op(operation).step("oven").sheet())
                .wait("AGE", 72 * 60, "070", operation)
                .sheet());
        floor.tickAll(waits, heat);
        Run run = loads.open(crew.act(heat), null, oven.oven(), programme, "");
        refused(() -> loads.load(crew.act(heat), run.code(), List.of(waits.serial()), ready(null)), "waiting time");
        clock.pass(Duration.ofHours(72));
        loads.load(crew.act(heat), run.code(), List.of(waits.serial()), ready(null));
        Floor.Frame late = floor.frame(SmallRoute.of(
                        op("090").step("quench").sheet(),
                        op(operation).step("oven").sheet())
                .window("BY", 60, "090", operation)
                .sheet());
        floor.tickAll(late, heat);
        clock.pass(Duration.ofMinutes(61));
        refused(() -> loads.load(crew.act(heat), run.code(), List.of(late.serial()), ready(null)), "window");
    }

    @Test
    void aBakeAboveTheLimitOfHeatIsRefusedBeforeLoadingWithItsSum() {
        String cool = "P-C" + NUMBER.incrementAndGet();
        String hot = "P-H" + NUMBER.incrementAndGet();
        approve(cool, Purpose.CURE, "190", "0.3333", List.of(operation));
        approve(hot, Purpose.CURE, "200", "0.9", List.of(operation));
        Floor.Frame frame = frame();
        Run first = loads.open(crew.act(second), null, oven.oven(), cool, "");
        loads.load(crew.act(second), first.code(), List.of(frame.serial()), ready(null));
        Run next = loads.open(crew.act(second), null, oven.oven(), hot, "");
        loads.callOff(crew.act(second), first.code(), "another colour");
        // k(200 °C) at 177 °C by 115 kJ/mol times 0.9 h is above a quarter of 8 h, reckoned by hand.
        double adds = 0.9 * Math.exp(-115000 / 8.314462618 * (1 / 473.15 - 1 / 450.15));
        assertThat(adds).isGreaterThan(2);
        refused(
                () -> loads.load(crew.act(second), next.code(), List.of(frame.serial()), ready(null)),
                "the next bake adds "
                        + BigDecimal.valueOf(adds)
                                .setScale(2, java.math.RoundingMode.HALF_UP)
                                .toPlainString()
                                .replace('.', ',')
                        + " h");
        assertThat(runs.byCode(next.code()).in()).isEmpty();
    }

    @Test
    void aProgrammeThatNamesNoOperationLoadsNothing() {
        String none = "P-N" + NUMBER.incrementAndGet();
        approve(none, Purpose.CURE, "160", "0.3333", List.of());
        refused(() -> loads.open(crew.act(second), null, oven.oven(), none, ""), "names no operation");
    }

    @Test
    void aCureTakesNoFrameThatDoesNotStandAtItsOperationOrIsOnHold() {
        String bake = "P-N" + NUMBER.incrementAndGet();
        String last = "9" + NUMBER.get() + "z";
        approve(bake, Purpose.CURE, "160", "0.3333", List.of(last));
        Floor.Frame early = floor.frame(SmallRoute.of(
                        op("020").step("saw").sheet(),
                        op(last).at("2").step("on").sheet())
                .sheet());
        Run run = loads.open(crew.act(second), null, oven.oven(), bake, "");
        refused(
                () -> loads.load(crew.act(second), run.code(), List.of(early.serial()), ready(null)),
                "stands at operation 020");
        floor.tickAll(early, heat);
        long operationId = floor.sheet(early).at().line().operationId();
        long hold = holds.place(
                crew.act(qa),
                new Holds.Request(
                        early.travellerId(),
                        HoldScope.OPERATION,
                        operationId,
                        HoldReason.SAFETY,
                        "a crack was seen",
                        "by hand",
                        Set.of()));
        refused(() -> loads.load(crew.act(second), run.code(), List.of(early.serial()), ready(null)), "on hold");
        assertThat(hold).isPositive();
        assertThat(runs.byCode(run.code()).in()).isEmpty();
    }

    @Test
    void aTopUpTakesOnlyWhatWasAged() {
        String more = "P-N" + NUMBER.incrementAndGet();
        approve(more, Purpose.TOP_UP, "177", "3", List.of());
        Run run = loads.open(crew.act(heat), null, oven.oven(), more, "");
        refused(
                () -> loads.load(crew.act(heat), run.code(), List.of(frame().serial()), ready(null)),
                "no run that aged it");
    }

    @Test
    void anOvenTakesOnlyProgrammesOfWhatItIsForBetweenTheTemperaturesOfItsSurveys() {
        String cures = new OvenFloor(register, crew).ready().oven();
        register.edit(
                crew.act(qa),
                cures,
                ovens.byCode(cures).version(),
                new NewOven(
                        "cures",
                        Set.of(Purpose.CURE),
                        new BigDecimal("6"),
                        new BigDecimal("1600"),
                        new BigDecimal("900"),
                        new BigDecimal("1100"),
                        new BigDecimal("45")));
        refused(() -> loads.open(crew.act(heat), null, cures, programme, ""), cures + " is for cure of a coat");
        String hot = "P-S" + NUMBER.incrementAndGet();
        approve(hot, Purpose.SOLUTION, "560", "1", List.of(operation));
        refused(
                () -> loads.open(crew.act(heat), null, oven.oven(), hot, ""),
                "goes to 560 °C, and surveys of " + oven.oven() + " stand at 100 and 177 and 540 °C");
    }

    @Test
    void loadsStandInTheOrderTheyWereOpened() {
        Instant now = clock.instant();
        clock.pass(Duration.ofDays(2));
        Run late = loads.open(crew.act(heat), null, oven.oven(), programme, "");
        clock.setTo(now);
        Run early = loads.open(crew.act(heat), null, oven.oven(), programme, "");
        List<Long> both = List.of(late.id(), early.id());
        assertThat(runs.page(Long.MAX_VALUE, 1000)).extracting(Run::id).containsSubsequence(both);
        assertThat(runs.page(late.id(), 1000))
                .extracting(Run::id)
                .contains(early.id())
                .doesNotContain(late.id());
        assertThat(runs.page(early.id(), 1000)).extracting(Run::id).doesNotContainAnyElementsOf(both);
    }
}
