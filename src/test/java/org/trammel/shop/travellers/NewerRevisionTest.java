package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.routes.StepSheet;

/** What a newer revision leaves alone, does anew, and is not released over. */
@ShopTest
class NewerRevisionTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private Bench bench;

    @Autowired
    private Signing signing;

    @Autowired
    private Revising revising;

    @Autowired
    private Travellers travellers;

    private WholeShop shop;
    private long worker;
    private long second;
    private long qa;
    private int position = 2;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
    }

    @Test
    void whatIsRepeatedStartsItsClockAnewAndWhatIsKeptDoesNot() {
        long route = shop.route(SmallRoute.of(
                        op("090").step("quench", "SOFT").sheet(),
                        op("100").step("straighten").sheet(),
                        op("110").step("age").sheet())
                .window("SOFT", 60, "090", "100")
                .sheet());
        WholeShop.Frame repeated = shop.frame(route);
        shop.tickAll(repeated, worker);
        WholeShop.Frame kept = shop.frame(route);
        shop.tickAll(kept, worker);
        shop.clock().pass(Duration.ofHours(2));
        supersede(repeated, route, Carry.REPEAT);
        WholeShop.Frame anew = now(repeated);
        assertThat(shop.sheet(anew).clocks())
                .singleElement()
                .satisfies(c -> assertThat(c.state()).isEqualTo(ClockState.PLANNED));
        shop.tickAll(anew, worker);
        shop.clock().pass(Duration.ofMinutes(59));
        shop.tickAll(anew, worker);
        assertThat(shop.at(anew).line().code()).isEqualTo("110");
        supersede(kept, route, Carry.STILL_VALID);
        assertThat(refusal(() -> shop.tickAll(now(kept), worker), "kept").why()).contains("closed at");
    }

    @Test
    void aClockThatOnlyTheNewerRevisionHasRunsSinceItsStartWasDone() {
        WholeShop.Frame late = shop.frame(quenched(null));
        WholeShop.Frame early = shop.frame(quenched(null));
        shop.tickAll(late, worker);
        shop.clock().pass(Duration.ofMinutes(50));
        shop.tickAll(early, worker);
        shop.clock().pass(Duration.ofMinutes(20));
        long route = quenched(60);
        supersede(late, route, Carry.STILL_VALID);
        supersede(early, route, Carry.STILL_VALID);
        assertThat(refusal(() -> shop.tickAll(now(late), worker), "an hour and ten minutes after")
                        .why())
                .contains("closed at");
        shop.tickAll(now(early), worker);
        assertThat(shop.at(now(early)).line().code()).isEqualTo("110");
    }

    @Test
    void aWindowRunsAsLongAsTheNewerRevisionSays() {
        WholeShop.Frame frame = shop.frame(quenched(60));
        shop.tickAll(frame, worker);
        shop.clock().pass(Duration.ofMinutes(70));
        shop.lookAtClocks();
        supersede(frame, quenched(90), Carry.STILL_VALID);
        shop.clock().pass(Duration.ofMinutes(10));
        supersede(now(frame), quenched(75), Carry.STILL_VALID);
        assertThat(refusal(() -> shop.tickAll(now(frame), worker), "eighty of 75 minutes")
                        .why())
                .contains("closed at");
        supersede(now(frame), quenched(90), Carry.STILL_VALID);
        shop.tickAll(now(frame), worker);
        assertThat(shop.at(now(frame)).line().code()).isEqualTo("110");
    }

    @Test
    void aNewerRevisionIsNoSecondTryAtAReadingThatIsUndecided() {
        long route = shop.route(SmallRoute.of(
                        op("070").step("weld").sheet(),
                        op("080").guarded("080-1", "0.30", null, 0).sheet())
                .sheet());
        WholeShop.Frame frame = shop.frame(route);
        shop.tickAll(frame, worker);
        shop.read(
                worker,
                shop.at(frame).characteristics().get(0).characteristicId(),
                shop.gauge("TWIST", "°", "0.020", LocalDate.of(2027, 1, 1)),
                "0.29");
        assertThat(refusal(() -> supersede(frame, route, Carry.STILL_VALID), "undecided")
                        .why())
                .contains("080-1")
                .contains("undecided");
    }

    @Test
    void whatWasDoneByAnotherInstructionOrStandsForAnotherStepIsNotStillValid() {
        WholeShop.Frame frame = shop.frame(instructed("clamp at the lugs"));
        tickOne(frame);
        assertThat(refusal(() -> supersede(frame, instructed("clamp at the shell"), Carry.STILL_VALID), "instruction")
                        .why())
                .contains("by another instruction");
        long twice = shop.route(SmallRoute.of(
                        op("090")
                                .step(wiped("clamp at the lugs"))
                                .step(wiped("clamp at the lugs"))
                                .sheet(),
                        op("100").step("straighten").sheet())
                .sheet());
        assertThat(refusal(() -> supersede(frame, twice, Carry.STILL_VALID), "one tick for two steps")
                        .why())
                .contains("was not done");
    }

    private long instructed(String how) {
        return shop.route(SmallRoute.of(
                        op("090").step(wiped(how)).sheet(),
                        op("100").step("straighten").sheet())
                .sheet());
    }

    private static StepSheet wiped(String how) {
        return new StepSheet("wipe", how, false, false, null, null, null);
    }

    /** Quench, straighten and age, with so many minutes from the quench in which it may be straightened. */
    private long quenched(@Nullable Integer minutes) {
        SmallRoute route = SmallRoute.of(
                op("090").step("quench").sheet(),
                op("100").step("straighten").sheet(),
                op("110").step("age").sheet());
        return shop.route((minutes == null ? route : route.window("SOFT", minutes, "090", "100")).sheet());
    }

    @Test
    void whatCannotBeUndoneIsSignedOrFinishedBeforeANewerRevision() {
        long signed = shop.route(SmallRoute.of(
                        op("090")
                                .irreversible()
                                .step("quench")
                                .hold(Signer.SECOND)
                                .sheet(),
                        op("100").step("straighten").sheet())
                .sheet());
        WholeShop.Frame atPoint = shop.frame(signed);
        shop.tickAll(atPoint, worker);
        Refusal refused = refusal(() -> supersede(atPoint, signed, Carry.STILL_VALID), "at its point");
        assertThat(refused.why()).contains("is not signed at operation 090");
        assertThat(refused.instead()).contains("signed first");
        signing.sign(shop.act(second), shop.at(atPoint).line().operationId(), second, Signer.SECOND);
        supersede(atPoint, signed, Carry.STILL_VALID);
        assertThat(shop.at(now(atPoint)).line().code()).isEqualTo("100");

        long two = shop.route(SmallRoute.of(
                        op("090").irreversible().step("quench").step("rinse").sheet(),
                        op("100").step("straighten").sheet())
                .sheet());
        WholeShop.Frame stopped = shop.frame(two);
        tickOne(stopped);
        bench.stop(shop.act(worker), shop.at(stopped).line().operationId(), "no water");
        assertThat(refusal(() -> supersede(stopped, two, Carry.STILL_VALID), "stopped")
                        .why())
                .contains("is stopped at operation 090");
    }

    @Test
    void aStepThatCannotBeUndoneCountsOnceItIsTicked() {
        long route = shop.route(SmallRoute.of(op("090")
                        .step("hang up")
                        .step(irreversible("quench"))
                        .step("rinse")
                        .sheet())
                .sheet());
        WholeShop.Frame quenched = shop.frame(route);
        tickOne(quenched);
        tickOne(quenched);
        assertThat(refusal(() -> supersede(quenched, route, Carry.STILL_VALID), "quenched")
                        .why())
                .contains("is in work at operation 090")
                .contains("cannot be undone");
        WholeShop.Frame hung = shop.frame(route);
        tickOne(hung);
        supersede(hung, route, Carry.STILL_VALID);
        assertThat(shop.sheet(hung).head().state()).isEqualTo(TravellerState.WITHDRAWN);
    }

    private void tickOne(WholeShop.Frame frame) {
        FrameSheet.StepLine next = shop.at(frame).steps().stream()
                .filter(step -> !step.ticked())
                .findFirst()
                .orElseThrow();
        bench.tick(shop.act(worker), List.of(next.stepId()), null, null);
    }

    @Test
    void stillValidIsOnlyWhatIsAskedInTheSameWay() {
        WholeShop.Frame frame = shop.frame(shop.route(
                SmallRoute.of(over().sheet(), op("200").step("pack").sheet()).sheet()));
        shop.tickAll(frame, worker);
        String calliper = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), calliper, "0.1");
        signing.sign(shop.act(second), shop.at(frame).line().operationId(), second, Signer.SECOND);
        Map<String, CharacteristicSheet> otherwise = new LinkedHashMap<>();
        otherwise.put("unit", read("cm", List.of("once"), Reduction.SINGLE, Signer.WORKER, ""));
        otherwise.put("points", read("mm", List.of("left", "right"), Reduction.SINGLE, Signer.WORKER, ""));
        otherwise.put("reduction", read("mm", List.of("once"), Reduction.MEAN, Signer.WORKER, ""));
        otherwise.put("reader", read("mm", List.of("once"), Reduction.SINGLE, Signer.QA, ""));
        for (String flag : List.of("sided", "read back", "second person", "triage")) {
            otherwise.put(flag, read("mm", List.of("once"), Reduction.SINGLE, Signer.WORKER, flag));
        }
        long drawing = shop.drawing(frame.designId(), 2, Map.of());
        otherwise.forEach((what, asked) -> assertThat(refused(
                        frame,
                        drawing,
                        op("080").step("look over").hold(Signer.SECOND).characteristic(asked),
                        what))
                .contains("what is asked of 080-1"));
        SmallRoute.Op plain = op("080").hold(Signer.SECOND).plain("080-1", "0.3");
        assertThat(refused(frame, drawing, plain.photo("look over"), "photo")).contains("no photograph");
        plain = op("080").hold(Signer.SECOND).plain("080-1", "0.3");
        assertThat(refused(frame, drawing, plain.lot("look over", "TUBE"), "lot"))
                .contains("no lot (TUBE)");
        plain = op("080").hold(Signer.SECOND).plain("080-1", "0.3");
        StepSheet qualified = new StepSheet("look over", "", false, false, null, null, "PENETRANT");
        assertThat(refused(frame, drawing, plain.step(qualified), "step's qualification"))
                .contains("PENETRANT");
        assertThat(refused(frame, drawing, over().qualified("ALIGN"), "qualification"))
                .contains("ALIGN");
        assertThat(refused(frame, drawing, over().hold(Signer.SECOND, Signer.OWNER), "signer"))
                .contains("not signed as " + Signer.OWNER.word());
        supersede(
                frame,
                drawing,
                shop.route(SmallRoute.of(over().sheet(), op("200").step("pack").sheet())
                        .sheet()),
                Carry.STILL_VALID);
        assertThat(shop.at(now(frame)).line().code()).isEqualTo("200");
    }

    @Test
    void aWitnessPointThatWasNotAskedForIsNotStillValid() {
        WholeShop.Frame frame = shop.frame(shop.route(SmallRoute.of(
                        op("080").step("look over").sheet(),
                        op("200").step("pack").sheet())
                .sheet()));
        shop.tickAll(frame, worker);
        long drawing = shop.drawing(frame.designId(), 2, Map.of());
        assertThat(refused(frame, drawing, op("080").step("look over").witness(), "witness"))
                .contains("witness point");
    }

    private static SmallRoute.Op over() {
        return op("080").step("look over").hold(Signer.SECOND).plain("080-1", "0.3");
    }

    /** What the plain characteristic is, read otherwise. */
    private static CharacteristicSheet read(
            String unit, List<String> points, Reduction reduction, Signer reader, String flag) {
        return new CharacteristicSheet(
                "080-1",
                "characteristic 080-1",
                unit,
                3,
                false,
                BigDecimal.ZERO,
                new BigDecimal("-0.3"),
                new BigDecimal("0.3"),
                "CALLIPER",
                points,
                reduction,
                Rule.PLAIN,
                List.of(reader),
                flag.equals("sided"),
                flag.equals("read back"),
                flag.equals("second person"),
                true,
                null,
                0,
                flag.equals("triage") ? new BigDecimal("2") : null,
                null,
                "test");
    }

    /** Why what was done at 080 is not still valid where the newer revision asks for that. */
    private String refused(WholeShop.Frame frame, long drawing, SmallRoute.Op asked, String what) {
        long route = shop.route(
                SmallRoute.of(asked.sheet(), op("200").step("pack").sheet()).sheet());
        return refusal(() -> supersede(frame, drawing, route, Carry.STILL_VALID), what)
                .why();
    }

    private static StepSheet irreversible(String text) {
        return new StepSheet(text, "", false, true, null, null, null);
    }

    private void supersede(WholeShop.Frame frame, long route, Carry verdict) {
        supersede(frame, shop.drawing(frame.designId(), position++, Map.of()), route, verdict);
    }

    private void supersede(WholeShop.Frame frame, long drawing, long route, Carry verdict) {
        Map<Long, Revising.Said> said = revising.finished(frame.orderId()).stream()
                .collect(Collectors.toMap(
                        Revising.Finished::operationId, done -> new Revising.Said(verdict, "said in a test")));
        revising.supersede(shop.act(qa), frame.orderId(), drawing, route, said, null);
    }

    /** The same frame under the revision in force. */
    private WholeShop.Frame now(WholeShop.Frame old) {
        return new WholeShop.Frame(
                old.orderId(),
                old.designId(),
                old.number(),
                travellers.inForce(old.serial(), "").travellerId(),
                old.serial());
    }

    private static Refusal refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed, String what) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).as(what).isNotNull();
        return refused;
    }
}
