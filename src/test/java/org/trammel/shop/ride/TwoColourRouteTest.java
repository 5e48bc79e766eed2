package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mockito.Mockito.when;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.TestPropertySource;
import org.trammel.shop.TestClock;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.drift.JigUses;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.handwork.Handwork;
import org.trammel.shop.handwork.SerialReads;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.MadeOf;
import org.trammel.shop.materials.TubeIssues;
import org.trammel.shop.orders.OrderedColours;
import org.trammel.shop.ovens.HeatLedgers;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.ovens.Runs;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.routes.StarterSheets;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.ClockState;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Signing;
import org.trammel.shop.travellers.Travellers;

/**
 * A frame of 7005 in two colours and a clear coat goes its shipped route, from the saw to the final check, with the film of the
 * second colour, the colours of its order, and three bakes by their records.
 */
@FloorTest
@TestPropertySource(properties = "trammel.test.database=two_colours")
class TwoColourRouteTest {

    private static final byte[] PICTURE = Tablet.PICTURE;

    /** Bedding, ride and packing are the hardtail's to play. */
    private static final List<String> PLAYED_BY_THE_RIDE = List.of("190", "200");

    @Autowired
    private Floor floor;

    @Autowired
    private Workshop shop;

    @Autowired
    private TwoColourBooth booth;

    @Autowired
    private OrderedColours ordered;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Evidence evidence;

    @Autowired
    private Bench bench;

    @Autowired
    private Signing signing;

    @Autowired
    private Remarks remarks;

    @Autowired
    private Readings readings;

    @Autowired
    private Handwork handwork;

    @Autowired
    private SerialReads serials;

    @Autowired
    private JigUses jigs;

    @Autowired
    private TubeIssues tubes;

    @Autowired
    private Gauges gauges;

    @Autowired
    private Settings settings;

    @Autowired
    private Lots pieces;

    @Autowired
    private HeatLedgers ledgers;

    @Autowired
    private Runs runs;

    @Autowired
    private TestClock clock;

    private Floor.Frame frame;
    private Elsewhere elsewhere;

    @Test
    void aFrameInTwoColoursGoesFromTheSawToItsFinalCheck() {
        floor.open();
        shop.setUp(List.of());
        elsewhere = new Elsewhere(bench, readings, handwork, serials, jigs, tubes, clock);
        booth.setUp();
        RouteSheet route = withoutProofsElsewhere(StarterSheets.of("HT-7005-2C"));
        frame = floor.frame(route, nominals(route));
        when(ordered.of(frame.orderId())).thenReturn(List.of("sand", "green", "clear"));
        FrameSheet sheet = travellers.sheet(frame.travellerId());
        for (String seen = "";
                !PLAYED_BY_THE_RIDE.contains(sheet.at().line().code());
                sheet = travellers.sheet(frame.travellerId())) {
            FrameSheet.OperationSheetOfFrame at = sheet.at();
            String place = at.line().operationId() + " " + at.line().state();
            assertThat(place).as("%s moves on: %s", at.line(), sheet.inTheWay()).isNotEqualTo(seen);
            seen = place;
            clock.pass(Duration.ofSeconds(30));
            if (at.line().state() == OperationState.AT_POINT) {
                sign(at);
            } else {
                waits(sheet, at);
                work(sheet, at);
            }
        }
        assertThat(sheet.operations())
                .hasSize(route.operations().size())
                .filteredOn(line -> !PLAYED_BY_THE_RIDE.contains(line.code()))
                .allSatisfy(line -> assertThat(line.state()).isEqualTo(OperationState.DONE));
        assertThat(pieces.madeOf(frame.serial()).stream().map(MadeOf::lot))
                .containsSubsequence("PW-SAND-01", "PW-GREEN-02", "PW-CLEAR-01");
        baked();
    }

    /** 20 min at 160 °C are worth 0.77 h at 149 °C to 7005 at 115 kJ/mol, the 16 h of its age allow a quarter; by hand. */
    private void baked() {
        HeatLedgers.Sheet heat =
                ledgers.of(frame.serial(), "", "AL7005", null, null).orElseThrow();
        assertThat(heat.visits())
                .hasSize(3)
                .allSatisfy(visit -> assertThat(visit.byRecord()).isTrue());
        assertThat(heat.sums().used().usual_h()).isBetween(3 * 0.77, 4.0);
        assertThat(heat.sums().holds()).isTrue();
    }

    /** Welds, torques, ride and packing rest on records that the hardtail's ride plays; here they are ticked. */
    private static RouteSheet withoutProofsElsewhere(RouteSheet route) {
        return new RouteSheet(
                0,
                route.code(),
                route.name(),
                route.letter(),
                route.metal(),
                route.kind(),
                route.operations().stream()
                        .map(op -> new OperationSheet(
                                op.code(),
                                op.name(),
                                op.station(),
                                op.point(),
                                op.signers(),
                                op.qualification(),
                                op.together(),
                                op.outside(),
                                op.irreversible(),
                                op.joins(),
                                op.repeatLimit(),
                                op.caution(),
                                op.steps().stream()
                                        .map(TwoColourRouteTest::withoutProofElsewhere)
                                        .toList(),
                                op.characteristics()))
                        .toList(),
                route.clocks(),
                route.children());
    }

    private static StepSheet withoutProofElsewhere(StepSheet step) {
        return step.proof() == null || Elsewhere.proves(step.proof())
                ? step
                : new StepSheet(
                        step.text(),
                        step.instruction(),
                        step.photo(),
                        step.irreversible(),
                        step.lotKind(),
                        step.startsClock(),
                        step.qualification());
    }

    private static Map<String, Nominal> nominals(RouteSheet route) {
        Map<String, Nominal> nominals = new HashMap<>();
        route.operations().stream()
                .flatMap(operation -> operation.characteristics().stream())
                .filter(CharacteristicSheet::fromDesign)
                .map(CharacteristicSheet::code)
                .filter(code -> Nominals.of(code) != null)
                .forEach(code -> nominals.put(code, Nominal.of(new BigDecimal(Nominals.of(code)))));
        nominals.put("150.3-1", Nominal.of(new BigDecimal("220")));
        return nominals;
    }

    private void waits(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        sheet.clocks().stream()
                .filter(c -> c.kind() == ClockKind.WAIT && c.state() == ClockState.RUNNING)
                .filter(c -> c.gates().contains(at.line().code()) && c.endsAt().isAfter(clock.instant()))
                .forEach(c -> clock.setTo(c.endsAt().plusSeconds(1)));
    }

    private void work(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        String code = at.line().code();
        Hand doer = shop.at(at.line().station());
        if (at.characteristics().stream().anyMatch(c -> "JIG-SCALE".equals(c.gaugeKind()))) {
            elsewhere.note(doer, sheet.head(), "J-1");
        }
        if (TwoColourBooth.COLOURS.containsKey(code)) {
            booth.sprays(at);
        }
        booth.film(at);
        Run run = null;
        if (TwoColourBooth.CURES.containsKey(code)) {
            tooHot(code);
            run = booth.begins(code, frame.serial());
        }
        for (FrameSheet.StepLine step : at.steps()) {
            if (step.ticked()) {
                continue;
            }
            if (step.proof() == Proof.TUBES) {
                long operation = at.line().operationId();
                tubes.open(operation)
                        .forEach(open -> tubes.issue(
                                act(doer),
                                operation,
                                new TubeIssues.Scan(open, TwoColourBooth.TUBES, null, null, null)));
            } else if (step.proof() != null) {
                elsewhere.prove(doer, shop.witness, sheet, at.line().operationId(), step.proof());
            }
            if (step.photo()) {
                remarks.photo(act(doer), step.stepId(), new Remarks.Sent(PICTURE, "image/png", "step.png"));
            }
            bench.tick(act(doer), List.of(step.stepId()), step.lotKind() == null ? null : lotOf(code, step), null);
        }
        if (run != null) {
            booth.cured(run);
        }
        for (FrameSheet.CharacteristicLine c :
                travellers.operation(at.line().operationId()).characteristics()) {
            if (!c.state().settled()) {
                read(c, reader(at, c));
                if (c.secondPerson()) {
                    read(c, shop.witness);
                }
            }
        }
    }

    /**
     * 20 min at 200 °C are worth 11.39 h at 149 °C to 7005 at 115 kJ/mol, 71 % of the 16 h of its age, where a quarter is
     * allowed: by hand, 0.3333 h times exp(115 000 / 8.314 (1 / 422.15 K - 1 / 473.15 K)) = 0.3333 h times 34.2. A bake before
     * it is worth 0.77 h or a little more, with its ramps.
     */
    private void tooHot(String operation) {
        double before = ledgers.of(frame.serial(), "", "AL7005", null, null)
                .orElseThrow()
                .sums()
                .used()
                .usual_h();
        assertThatThrownBy(() -> booth.bakes(operation, frame.serial(), "P-CURE-200"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("was not loaded")
                .hasMessageContaining("the next bake adds 11,39 h")
                .hasMessageContaining("of 25 % allowed")
                .satisfies(refused ->
                        assertThat(made(refused.getMessage())).isCloseTo((before + 11.3926) / 16 * 100, within(0.1)));
        assertThat(runs.of(frame.serial(), null))
                .noneSatisfy(run -> assertThat(run.programme().code()).isEqualTo("P-CURE-200"));
    }

    /** The share of a usual age that a refusal says it would make, in per cent. */
    private static double made(String refusal) {
        Matcher share = Pattern.compile("makes ([0-9,]+) %").matcher(refusal);
        assertThat(share.find()).as(refusal).isTrue();
        return Double.parseDouble(share.group(1).replace(',', '.'));
    }

    private static String lotOf(String operation, FrameSheet.StepLine step) {
        return switch (step.lotKind()) {
            case "TUBE" -> TwoColourBooth.TUBES;
            case "FILLER" -> "FL-5356-01";
            case "GAS" -> "AR-01";
            case "MEDIA" -> "BM-GLASS-01";
            case "POWDER" -> TwoColourBooth.COLOURS.get(operation);
            default -> "BR-6902-01";
        };
    }

    private void read(FrameSheet.CharacteristicLine c, Hand reader) {
        Evidence.Wanted wanted = evidence.wanted(c.characteristicId());
        if (wanted.state().settled()) {
            return;
        }
        String gauge = gauges.usableFor(wanted.gaugeKind(), wanted.unit(), settings.dayOf(clock.instant())).stream()
                .min(Comparator.comparing(m -> m.u() == null ? BigDecimal.ZERO : m.u()))
                .map(Means::code)
                .orElseThrow(() -> new AssertionError("no gauge serves " + wanted));
        elsewhere.read(reader, c.characteristicId(), Values.asDrawn(wanted), gauge);
    }

    private Hand reader(FrameSheet.OperationSheetOfFrame at, FrameSheet.CharacteristicLine c) {
        List<Signer> signers = c.signers();
        if (signers.isEmpty() || signers.contains(Signer.WORKER)) {
            return shop.at(at.line().station());
        }
        if (signers.contains(Signer.ALIGNER)) {
            return shop.aligner;
        }
        if (signers.contains(Signer.HEAT_TREATER)) {
            return shop.heatTreater;
        }
        return signers.contains(Signer.QA) ? shop.qa : shop.witness;
    }

    private void sign(FrameSheet.OperationSheetOfFrame at) {
        for (Signer as : at.signers()) {
            Hand signer = switch (as) {
                case WORKER -> shop.at(at.line().station());
                case ALIGNER -> shop.aligner;
                case HEAT_TREATER -> shop.heatTreater;
                case QA -> shop.qa;
                case OWNER -> shop.owner;
                case SECOND -> second(at);
            };
            signing.sign(act(signer), at.line().operationId(), signer.id(), as);
        }
    }

    private Hand second(FrameSheet.OperationSheetOfFrame at) {
        Set<Long> took = evidence.tookPart(at.line().operationId());
        return List.of(shop.witness, shop.other, shop.fitter, shop.cutter).stream()
                .filter(hand -> !took.contains(hand.id()))
                .findFirst()
                .orElseThrow();
    }

    private Act act(Hand by) {
        return new Act(UUID.randomUUID(), by.id(), null, clock.instant(), null);
    }
}
