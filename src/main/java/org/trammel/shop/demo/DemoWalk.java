package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.drift.JigUses;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.records.Files;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.ClockState;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Signing;
import org.trammel.shop.travellers.Travellers;

/** Takes a frame along its route the way the crew would: ticks, lots, photographs, readings, signatures. */
@Component
@Profile("demo")
class DemoWalk {

    private static final String TACK = "060";
    /** Of frames whose jig the story does not tell. */
    private static final String ANY_JIG = "J3";

    private static final Duration STEP = Duration.ofMinutes(4);
    private static final Duration SOAK = Duration.ofMinutes(45);
    private static final Duration TO_THE_WATER = Duration.ofSeconds(8);

    private final DemoActs acts;
    private final DemoClock clock;
    private final Travellers travellers;
    private final Bench bench;
    private final Signing signing;
    private final Remarks remarks;
    private final Evidence evidence;
    private final Readings readings;
    private final ColdSets coldSets;
    private final JigUses jigs;
    private final DemoTable table;
    private final DemoMeans means;
    private final DemoCoats coats;
    private final DemoCuts cuts;
    private final DemoTubes tubes;
    private final DemoProofs proofs;
    private final Files files;
    private final TransactionTemplate transaction;
    private @Nullable String picture;

    DemoWalk(
            DemoActs acts,
            DemoClock clock,
            Travellers travellers,
            Bench bench,
            Signing signing,
            Remarks remarks,
            Evidence evidence,
            Readings readings,
            ColdSets coldSets,
            JigUses jigs,
            DemoTable table,
            DemoMeans means,
            DemoCoats coats,
            DemoCuts cuts,
            DemoTubes tubes,
            DemoProofs proofs,
            Files files,
            TransactionTemplate transaction) {
        this.acts = acts;
        this.clock = clock;
        this.travellers = travellers;
        this.bench = bench;
        this.signing = signing;
        this.remarks = remarks;
        this.evidence = evidence;
        this.readings = readings;
        this.coldSets = coldSets;
        this.jigs = jigs;
        this.table = table;
        this.means = means;
        this.coats = coats;
        this.cuts = cuts;
        this.tubes = tubes;
        this.proofs = proofs;
        this.files = files;
        this.transaction = transaction;
    }

    /** Walks to a place: "100:2", "030:all" (all steps, no readings) or "all". */
    void to(DemoOrder order, long travellerId, String place) {
        String target = place.equals("all") ? null : place.substring(0, place.indexOf(':'));
        String last = "";
        while (true) {
            FrameSheet sheet = travellers.sheet(travellerId);
            FrameSheet.OperationSheetOfFrame at = sheet.at();
            if (at == null) {
                return;
            }
            String code = at.line().code();
            if (!code.equals(last)) {
                moveClock(order, code, sheet);
                if (code.equals(TACK)) {
                    jigs.setUp(
                            acts.by(doer(order, at)),
                            sheet.head().serial(),
                            sheet.head().part(),
                            order.jig() == null ? ANY_JIG : order.jig(),
                            null);
                }
                last = code;
            }
            if (code.equals(target)) {
                String steps = place.substring(place.indexOf(':') + 1);
                tick(order, at, steps.equals("all") ? Integer.MAX_VALUE : Integer.parseInt(steps));
                return;
            }
            through(order, sheet.head().part(), at);
        }
    }

    /** Ticks so many further steps where it stands. */
    void on(DemoOrder order, long travellerId, int steps) {
        tick(order, Objects.requireNonNull(travellers.sheet(travellerId).at()), steps);
    }

    private void moveClock(DemoOrder order, String code, FrameSheet sheet) {
        clock.pass(Duration.ofMinutes(10));
        Instant anchor = order.anchor(code);
        if (anchor != null && anchor.isAfter(clock.instant())) {
            clock.setTo(anchor);
        }
        sheet.clocks().stream()
                .filter(c -> c.state() == ClockState.RUNNING
                        && c.kind() == org.trammel.shop.routes.ClockKind.WAIT
                        && c.gates().contains(code)
                        && c.endsAt().isAfter(clock.instant()))
                .forEach(c -> clock.setTo(c.endsAt()));
    }

    private void through(DemoOrder order, String part, FrameSheet.OperationSheetOfFrame at) {
        tick(order, at, Integer.MAX_VALUE);
        read(order, part, travellers.operation(at.line().operationId()), Integer.MAX_VALUE);
        FrameSheet.OperationSheetOfFrame now = travellers.operation(at.line().operationId());
        for (FrameSheet.CharacteristicLine c : now.characteristics()) {
            DemoTold.SetStraight told = DemoTold.setStraight(order.order(), part, c.code());
            if (told != null && !c.state().settled()) {
                setStraight(order, part, now, c, told);
                now = travellers.operation(at.line().operationId());
            }
        }
        if (now.line().state() == OperationState.AT_POINT) {
            sign(order, now);
        } else if (now.line().state() != OperationState.DONE) {
            throw new IllegalStateException(
                    order.order() + " does not pass " + at.line().code() + ": "
                            + now.characteristics().stream()
                                    .filter(c -> !c.state().settled())
                                    .toList());
        }
    }

    /** A push, the steps that must be done again after it, and every reading anew. */
    private void setStraight(
            DemoOrder order,
            String part,
            FrameSheet.OperationSheetOfFrame at,
            FrameSheet.CharacteristicLine c,
            DemoTold.SetStraight told) {
        clock.setTo(told.at().atZone(DemoOrder.ZONE).toInstant());
        coldSets.push(acts.by("SB"), c.characteristicId(), told.amount(), told.pushMm());
        FrameSheet.OperationSheetOfFrame again = travellers.operation(at.line().operationId());
        tick(order, again, Integer.MAX_VALUE);
        clock.pass(Duration.ofMinutes(1));
        take(order, again, "SB", c, java.util.Collections.nCopies(c.points().size(), told.after()), null);
        read(order, part, travellers.operation(at.line().operationId()), Integer.MAX_VALUE);
    }

    private void tick(DemoOrder order, FrameSheet.OperationSheetOfFrame at, int steps) {
        int left = steps;
        if (steps > 0) {
            coats.before(order, at);
        }
        for (FrameSheet.StepLine step : at.steps()) {
            if (step.ticked() || left-- <= 0) {
                continue;
            }
            clock.pass(until(at.line().code(), step));
            String by = penetrant(step) ? "TR" : step.secondPerson() ? "JA" : doer(order, at);
            if (step.photo()) {
                remarks.photo(acts.by(by), step.stepId(), picture());
            }
            if (step.proof() != null && proofs.prove(order, at, step, step.proof(), by)) {
                continue;
            }
            bench.tick(
                    acts.by(by),
                    List.of(step.stepId()),
                    tubes.lot(order, at.line().operationId(), step.lotKind(), clock.instant()),
                    null);
        }
    }

    /** How long until a step is ticked: of the quench the soak before the door, and seconds from there to the water. */
    private static Duration until(String code, FrameSheet.StepLine step) {
        return switch (code + " " + step.number()) {
            case "090a 1" -> STEP.plus(SOAK);
            case "090a 2" -> STEP.plus(STEP).minus(TO_THE_WATER);
            case "090a 3" -> TO_THE_WATER;
            default -> STEP;
        };
    }

    /** Every photograph of the demo is the same picture, which is kept once. */
    private synchronized String picture() {
        if (picture == null) {
            picture = transaction.execute(
                    t -> files.keep(DemoPicture.png(), "image/png", "demo.png").sha256());
        }
        return Objects.requireNonNull(picture);
    }

    private static boolean penetrant(FrameSheet.StepLine step) {
        return step.text().toLowerCase(java.util.Locale.ROOT).contains("penetrant");
    }

    /** Reads the first so many characteristics that are not settled, well inside their limits. */
    void read(DemoOrder order, String part, FrameSheet.OperationSheetOfFrame at, int count) {
        int left = count;
        coats.film(at);
        Set<String> given = cuts.given(at, count > 0);
        for (FrameSheet.CharacteristicLine c : onTheTable(order, part, at).characteristics()) {
            if (c.state().settled() || given.contains(c.code()) || left-- <= 0) {
                continue;
            }
            clock.pass(Duration.ofMinutes(1));
            String by = reader(order, at, c.signers());
            DemoTold.Value told = DemoTold.of(order.order(), part, c.code());
            Evidence.Wanted wanted = evidence.wanted(c.characteristicId());
            List<BigDecimal> raw = told == null
                    ? values(wanted)
                    : java.util.Collections.nCopies(wanted.points().size(), told.value());
            take(order, at, by, c, raw, told == null ? null : told.gauge());
            if (c.secondPerson()
                    && travellers.operation(at.line().operationId()).characteristics().stream()
                            .anyMatch(n -> n.characteristicId() == c.characteristicId()
                                    && n.state() == CharacteristicState.FIRST_READ)) {
                clock.pass(Duration.ofMinutes(1));
                take(order, at, by.equals("JA") ? "DO" : "JA", c, raw, null);
            }
        }
    }

    /** What the story tells by its raw heights is read before the rest. */
    private FrameSheet.OperationSheetOfFrame onTheTable(
            DemoOrder order, String part, FrameSheet.OperationSheetOfFrame at) {
        DemoTable.Heights heights = table.told(order.order(), part, at.line().code());
        if (heights == null) {
            return at;
        }
        table.read(at.line().operationId(), heights);
        return travellers.operation(at.line().operationId());
    }

    private void take(
            DemoOrder order,
            FrameSheet.OperationSheetOfFrame at,
            String by,
            FrameSheet.CharacteristicLine c,
            List<BigDecimal> raw,
            @Nullable String told) {
        String operation = at.line().code();
        String preferred = c.gaugeKind().equals("THERMOCOUPLE")
                ? DemoMeans.thermocouple(operation, c.code())
                : order.gauges() == null ? null : order.gauges().get(operation);
        String gauge = told == null ? means.gauge(c, raw, preferred) : told;
        readings.read(acts.by(by), c.characteristicId(), new Readings.Input(raw, gauge, null, true));
    }

    /** Plausible values: near the middle of the limits, not all alike. */
    private static List<BigDecimal> values(Evidence.Wanted w) {
        if (CharacteristicSheet.isAnswered(w.unit())) {
            return java.util.Collections.nCopies(w.points().size(), BigDecimal.ONE);
        }
        BigDecimal lower = w.lowerLimit();
        BigDecimal upper = w.upperLimit();
        BigDecimal middle;
        BigDecimal spread;
        if (w.reduction() == Reduction.COAXIAL && upper != null) {
            middle = upper.multiply(new BigDecimal("0.1"));
            spread = BigDecimal.ZERO;
        } else if (lower != null && upper != null) {
            middle = lower.add(upper).divide(BigDecimal.valueOf(2));
            spread = upper.subtract(lower).divide(BigDecimal.valueOf(20), 6, RoundingMode.HALF_EVEN);
        } else if (upper != null) {
            middle = upper.multiply(new BigDecimal("0.4"));
            spread = upper.abs().divide(BigDecimal.valueOf(20), 6, RoundingMode.HALF_EVEN);
        } else if (lower != null) {
            middle = lower.multiply(new BigDecimal("1.15"));
            spread = lower.abs().divide(BigDecimal.valueOf(50), 6, RoundingMode.HALF_EVEN);
        } else {
            middle = w.nominal() == null ? BigDecimal.ONE : w.nominal();
            spread = BigDecimal.ZERO;
        }
        List<BigDecimal> values = new ArrayList<>();
        for (int i = 0; i < w.points().size(); i++) {
            values.add(middle.add(spread.multiply(BigDecimal.valueOf(i % 3 - 1L)))
                    .setScale(w.decimals() + 1, RoundingMode.HALF_EVEN));
        }
        return values;
    }

    private void sign(DemoOrder order, FrameSheet.OperationSheetOfFrame at) {
        List<Signer> wanted = at.signers().isEmpty() ? List.of(Signer.SECOND) : at.signers();
        for (Signer signer : wanted) {
            clock.pass(Duration.ofMinutes(2));
            List<String> candidates = switch (signer) {
                case QA -> List.of("TR");
                case OWNER -> List.of("ME");
                case ALIGNER -> List.of("SB");
                case HEAT_TREATER -> List.of("RH");
                case WORKER -> List.of(doer(order, at));
                case SECOND -> List.of("JA", "DO", "LM", "RH", "SB", "IC", "PW", "HS", "TR");
            };
            signAsOneOf(at, signer, candidates);
        }
    }

    private void signAsOneOf(FrameSheet.OperationSheetOfFrame at, Signer signer, List<String> candidates) {
        Refusal refused = null;
        Set<Long> took = evidence.tookPart(at.line().operationId());
        List<String> free = candidates.size() == 1
                ? candidates
                : candidates.stream()
                        .filter(who -> !took.contains(acts.id(who)))
                        .toList();
        for (String who : free) {
            try {
                signing.sign(acts.by(who), at.line().operationId(), acts.id(who), signer);
                return;
            } catch (Refusal notThisOne) {
                refused = notThisOne;
            }
        }
        throw new IllegalStateException("Nobody may sign " + at.line().code() + " as " + signer, refused);
    }

    private String reader(DemoOrder order, FrameSheet.OperationSheetOfFrame at, List<Signer> signers) {
        if (signers.isEmpty() || signers.contains(Signer.WORKER)) {
            return doer(order, at);
        }
        if (signers.contains(Signer.ALIGNER)) {
            return "SB";
        }
        if (signers.contains(Signer.HEAT_TREATER)) {
            return "RH";
        }
        return signers.contains(Signer.SECOND) ? "JA" : "TR";
    }

    private static String doer(DemoOrder order, FrameSheet.OperationSheetOfFrame at) {
        String qualification = at.qualification() == null ? "" : at.qualification();
        if (qualification.startsWith("WELD") || qualification.equals("BRAZE")) {
            return order.welder() == null ? "IC" : order.welder();
        }
        if (Set.of("ALIGN").contains(qualification)) {
            return "SB";
        }
        return switch (at.line().station()) {
            case "1" -> "JA";
            case "2" -> "JA";
            case "3" -> order.welder() == null ? "IC" : order.welder();
            case "4", "6" -> "SB";
            case "5" -> "RH";
            case "7", "8" -> "LM";
            default -> "DO";
        };
    }
}
