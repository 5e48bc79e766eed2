package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Signing;

/** A shop with a procedure of the test's own, a welder who is qualified for it, and what welds are measured with. */
@FloorTest
abstract class AtTheTorch {

    private static final Map<String, String> METALS = Map.of("AL", "aluminium", "TI", "titanium", "STEEL", "steel");

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    protected Floor floor;

    @Autowired
    protected Procedures procedures;

    @Autowired
    protected Welds welds;

    @Autowired
    protected Purges purges;

    @Autowired
    protected Bench bench;

    @Autowired
    protected GaugeRegister register;

    @Autowired
    protected LotRegister lots;

    @Autowired
    protected Qualifications qualifications;

    @Autowired
    protected Deciding deciding;

    @Autowired
    protected TestCrew crew;

    @Autowired
    protected TestClock clock;

    @Autowired
    protected Signing signing;

    /** Who signs the look; nobody if empty. */
    protected List<Signer> looksSigned = List.of();

    /** What whoever looks must hold; nothing if null. */
    protected @Nullable String lookedBy;

    protected long qa;
    protected long owner;
    protected long welder;
    protected String tack;
    protected String weld;
    protected String look;
    protected String code;
    protected String kind;

    @BeforeEach
    void open() {
        floor.open();
        qa = floor.hire(Role.QA_LEAD);
        owner = floor.hire(Role.OWNER);
        int number = NUMBER.incrementAndGet();
        tack = number + "t";
        weld = number + "w";
        look = number + "k";
        code = "W-T" + number;
        kind = "WELD:AL:141";
        welder = welder(held(kind, "ISO 9606-2", "0.7", "3", "BW, FW"));
    }

    protected Procedure inForce(NewProcedure content) {
        long version = procedures.draft(crew.act(qa), code, content).version();
        return procedures.putInForce(crew.act(qa), code, version);
    }

    /** For 6061, with ER4643, no look and no sample. */
    protected NewProcedure plain() {
        NewProcedure c = Written.whole("AL6061", tack, weld, look, "ER4643");
        return Written.with(
                c,
                new HeatRules(
                        BigDecimal.valueOf(120),
                        new BigDecimal("0.22"),
                        new BigDecimal("0.40"),
                        new BigDecimal("0.6"),
                        0),
                c.nodes(),
                new LookRules("", "", ""));
    }

    /** For the metal and the process that the kind is called after. */
    protected static Qualification held(
            String kind, String standard, @Nullable String from, @Nullable String to, @Nullable String joint) {
        String[] of = kind.split(":");
        return Qualification.of(kind, standard, LocalDate.of(2025, 1, 1), LocalDate.of(2027, 1, 1), false)
                .covering(
                        of.length < 3 ? "steel" : METALS.get(of[1]),
                        of.length < 3 ? "912" : of[2],
                        from == null ? null : new BigDecimal(from),
                        to == null ? null : new BigDecimal(to),
                        joint);
    }

    protected long welder(Qualification held) {
        long person = floor.hire(Role.WELDER);
        qualifications.enter(crew.act(qa), person, held);
        return person;
    }

    /** A frame at its weld: filler, gas, three nodes. */
    protected Floor.Frame frame(String metal) {
        return floor.frame(route(metal));
    }

    protected RouteSheet route(String metal) {
        RouteSheet drawn = SmallRoute.of(
                        op(weld).qualified(kind)
                                .lot("filler", "FILLER")
                                .lot("gas", "GAS")
                                .step(node("Node 1: down tube to shell"))
                                .step(node("Node 2: seat tube to shell"))
                                .step(node("Node 3: down tube to head tube"))
                                .sheet(),
                        looksSigned.isEmpty()
                                ? op(look).step(looked()).sheet()
                                : op(look).step(looked())
                                        .hold(looksSigned.toArray(Signer[]::new))
                                        .sheet(),
                        op("999").step("on").sheet())
                .sheet();
        return new RouteSheet(
                0, "TEST", "test route", "A", metal, "HARDTAIL", drawn.operations(), drawn.clocks(), List.of());
    }

    private StepSheet looked() {
        return new StepSheet(
                "looked at", "", false, false, null, null, lookedBy, lookedBy == null ? null : Proof.LOOKED);
    }

    protected static StepSheet node(String text) {
        return new StepSheet(text, "", false, true, null, null, null);
    }

    /** The same with filler and gas scanned. */
    protected Floor.Frame atTheArc() {
        Floor.Frame frame = frame("AL6061");
        scan(frame, "filler", lot(LotKind.FILLER, "ER4643"));
        scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
        return frame;
    }

    protected void scan(Floor.Frame frame, String step, String lot) {
        bench.tick(crew.act(welder), List.of(step(frame, step)), lot, null);
    }

    protected void tick(Floor.Frame frame, String step) {
        bench.tick(crew.act(welder), List.of(step(frame, step)), null, null);
    }

    protected long at(Floor.Frame frame) {
        return floor.at(frame).line().operationId();
    }

    protected String codeAt(Floor.Frame frame) {
        return floor.at(frame).line().code();
    }

    /** Id of the step whose words begin so. */
    protected long step(Floor.Frame frame, String begins) {
        return floor.at(frame).steps().stream()
                .filter(one -> one.text().startsWith(begins))
                .mapToLong(FrameSheet.StepLine::stepId)
                .findFirst()
                .orElseThrow();
    }

    protected WeldSheet begin(Floor.Frame frame, String node, @Nullable String interpass, @Nullable String gauge) {
        return begin(frame, node, interpass, gauge, null);
    }

    protected WeldSheet begin(
            Floor.Frame frame,
            String node,
            @Nullable String interpass,
            @Nullable String gauge,
            @Nullable String reason) {
        return welds.open(
                crew.act(welder),
                at(frame),
                step(frame, node),
                new Welds.Begin(interpass == null ? null : new BigDecimal(interpass), gauge, reason));
    }

    protected WeldSheet end(Floor.Frame frame, String node, Welds.End end) {
        return welds.close(crew.act(welder), at(frame), step(frame, node), end);
    }

    protected WeldSheet end(Floor.Frame frame, String node) {
        return end(frame, node, Welds.End.plain());
    }

    protected NodeRecord record(Floor.Frame frame, String node) {
        return welds.of(at(frame)).nodes().stream()
                .filter(one -> one.node().startsWith(node))
                .findFirst()
                .orElseThrow();
    }

    protected String lot(LotKind kind, String materialClass) {
        String lot = lots.receive(
                        crew.act(qa),
                        new NewLot(
                                "WT-"
                                        + UUID.randomUUID()
                                                .toString()
                                                .substring(0, 8)
                                                .toUpperCase(Locale.ROOT),
                                kind,
                                "a lot",
                                null,
                                materialClass,
                                "",
                                "",
                                null,
                                "a supplier",
                                LocalDate.of(2025, 12, 2),
                                null,
                                null,
                                ""))
                .code();
        lots.certify(crew.act(qa), lot, "batch", "C-1", null);
        lots.release(crew.act(qa), lot);
        return lot;
    }

    protected String gauge(String kind, String unit, @Nullable String u) {
        String gauge = "W" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        register.register(
                crew.act(qa),
                gauge,
                new NewGauge(
                        "gauge of a test",
                        null,
                        "jig",
                        u == null,
                        List.of(new GaugeRange(
                                kind,
                                unit,
                                BigDecimal.ZERO,
                                new BigDecimal("2000"),
                                u == null ? null : new BigDecimal("0.1"),
                                u == null ? null : new BigDecimal(u),
                                null,
                                "from memory"))));
        register.calibrated(
                crew.act(qa),
                gauge,
                LocalDate.of(2026, 1, 1),
                LocalDate.of(2026, 12, 31),
                "C-1",
                null,
                "as it should be");
        return gauge;
    }

    protected void decide(Floor.Frame frame, Decision decision) {
        NonconformanceLine open = deciding.of(frame.serial()).stream()
                .filter(one -> one.decision() == null)
                .findFirst()
                .orElseThrow();
        boolean stays = decision == Decision.CONCESSION;
        deciding.propose(
                crew.act(qa),
                open.id(),
                new Proposal(
                        decision,
                        "looked at under the glass",
                        decision == Decision.REWORK ? weld : null,
                        stays ? "this node" : null,
                        stays ? LocalDate.of(2026, 12, 1) : null,
                        false,
                        null,
                        false,
                        BigDecimal.ONE,
                        null,
                        Set.of()));
        if (stays) {
            deciding.agree(crew.act(owner), open.id(), deciding.byId(open.id()).decisionNumber());
        }
    }

    protected NonconformanceLine found(Floor.Frame frame) {
        return deciding.of(frame.serial()).stream().reduce((a, b) -> b).orElseThrow();
    }

    protected static void refused(ThrowingCallable deed, String... says) {
        assertThatThrownBy(deed).isInstanceOf(Refusal.class).satisfies(thrown -> {
            Refusal refusal = (Refusal) thrown;
            assertThat(refusal.what() + " " + refusal.why() + " " + refusal.instead())
                    .contains(says);
        });
    }
}
