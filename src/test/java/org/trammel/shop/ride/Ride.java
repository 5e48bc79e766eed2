package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.trammel.shop.TestClock;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.ride.BadFirst.Misread;
import org.trammel.shop.ride.BadFirst.Way;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.ClockState;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;

/**
 * Takes a frame, or a part of one, along its route by hand: what the sheet of its station asks for is done there, of
 * several steps or readings alike the first one, and the others elsewhere. At every gate the bad thing is tried first. Which gates there are is told by the route; what was tried, by this.
 */
final class Ride {

    /** How long what happens at an operation takes, where it is long. */
    private static final Map<String, Duration> TAKES =
            Map.of("090a", Duration.ofMinutes(70), "110a", Duration.ofMinutes(520), "150", Duration.ofMinutes(45));

    /** Longer than the two minutes in which a reading may be taken for a slip of the hand. */
    private static final Duration PAST_A_SLIP = Duration.ofMinutes(3);

    private final Sheets sheets;
    private final Workshop shop;
    private final Aftercare aftercare;
    private final Travellers travellers;
    private final Evidence evidence;
    private final Gauges gauges;
    private final Settings settings;
    private final TestClock clock;
    private final Elsewhere elsewhere;
    private final Proven proven;
    private final Map<String, Tablet> tablets = new HashMap<>();

    /** Operations at which a reading was refused, points that refused a signature, clocks that kept one out. */
    final Set<String> refusedReadings = new TreeSet<>();

    final Set<String> refusedSignatures = new TreeSet<>();
    final Set<String> closedWindows = new TreeSet<>();
    final Set<String> unjoined = new TreeSet<>();

    Ride(
            Sheets sheets,
            Workshop shop,
            Aftercare aftercare,
            Travellers travellers,
            Evidence evidence,
            Gauges gauges,
            Settings settings,
            TestClock clock,
            Elsewhere elsewhere,
            Proven proven) {
        this.sheets = sheets;
        this.shop = shop;
        this.aftercare = aftercare;
        this.travellers = travellers;
        this.evidence = evidence;
        this.gauges = gauges;
        this.settings = settings;
        this.clock = clock;
        this.elsewhere = elsewhere;
        this.proven = proven;
    }

    Tablet tablet(String station) {
        return tablets.computeIfAbsent(station, code -> new Tablet(sheets, clock, shop.token(code)));
    }

    /** Rides until every operation of the traveller is done. */
    void ride(long travellerId) {
        String seen = "";
        while (true) {
            FrameSheet sheet = travellers.sheet(travellerId);
            FrameSheet.OperationSheetOfFrame at = sheet.at();
            if (at == null) {
                return;
            }
            String place = at.line().operationId() + " " + at.line().state();
            assertThat(place).as("%s moves on", at.line()).isNotEqualTo(seen);
            seen = place;
            clock.pass(Duration.ofSeconds(30));
            if (at.line().state() == OperationState.AT_POINT) {
                sign(sheet, at);
            } else if (triedLate(sheet, at) || triedBad(sheet, at)) {
                clock.pass(PAST_A_SLIP);
            } else {
                work(sheet, at);
            }
        }
    }

    private String gate(FrameSheet sheet, String code) {
        String part = sheet.head().part();
        return part.isEmpty() ? code : part + " " + code;
    }

    private Tablet open(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at, Hand who, String query) {
        Tablet tablet = tablet(at.line().station());
        tablet.worksHere(who);
        tablet.open(sheet.head().tag() + query);
        return tablet;
    }

    // ------------------------------------------------------------------------------------------ the work

    private void work(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        Hand doer = shop.at(at.line().station());
        clock.pass(TAKES.getOrDefault(at.line().code(), Duration.ZERO));
        Tablet tablet = open(sheet, at, doer, "");
        Kept.look(tablet, sheet, at, "work");
        if (at.characteristics().stream().anyMatch(c -> "JIG-SCALE".equals(c.gaugeKind()))) {
            elsewhere.note(doer, sheet.head(), "J-1");
        }
        boolean first = true;
        for (FrameSheet.StepLine step : at.steps()) {
            if (step.ticked()) {
                continue;
            }
            if (step.proof() != null) {
                prove(sheet, at, step, doer, tablet);
            }
            Hand by = step.secondPerson() ? shop.witness : doer;
            // The closing of a node ticks it.
            if (step.proof() != Proof.WELDED && (first || step.photo())) {
                tick(sheet, at, by, step);
            } else if (step.proof() != Proof.WELDED) {
                elsewhere.tick(by, step.stepId(), step.lotKind() == null ? null : shop.lotOf(step.lotKind()));
            }
            first = false;
        }
        // What components answer is on a sheet of its own by now.
        List<FrameSheet.CharacteristicLine> asked =
                travellers.operation(at.line().operationId()).characteristics().stream()
                        .filter(c -> !c.state().settled())
                        .toList();
        for (int i = 0; i < asked.size(); i++) {
            read(sheet, at, asked.get(i), reader(at, asked.get(i)), i == 0);
        }
        List<FrameSheet.CharacteristicLine> twice = asked.stream()
                .filter(FrameSheet.CharacteristicLine::secondPerson)
                .toList();
        for (int i = 0; i < twice.size(); i++) {
            read(sheet, at, twice.get(i), shop.witness, i == 0);
        }
    }

    private void prove(
            FrameSheet sheet, FrameSheet.OperationSheetOfFrame at, FrameSheet.StepLine step, Hand doer, Tablet tablet) {
        if (Elsewhere.proves(step.proof())) {
            elsewhere.prove(doer, shop.witness, sheet, at.line().operationId(), step.proof());
            return;
        }
        tablet.worksHere(doer);
        proven.prove(new Proven.Turn(sheet, at, step, tablet, shop, doer));
    }

    private void tick(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at, Hand doer, FrameSheet.StepLine step) {
        Tablet tablet = tablet(at.line().station());
        // What it rests on was recorded since the sheet was opened.
        if (step.proof() != null
                || !step.text().equals(tablet.heading())
                || !tablet.page().url().endsWith("/station/" + sheet.head().tag())) {
            tablet = open(sheet, at, doer, "");
        }
        assertThat(tablet.page().locator(".plate h2").innerText())
                .as("%s of %s", step.text(), at.line().code())
                .isEqualTo(step.text());
        if (step.photo()) {
            tablet.photograph();
        }
        if (step.lotKind() != null) {
            tablet.page().locator("#f-lot").fill(shop.lotOf(step.lotKind()));
        }
        tablet.press(".plate form .btn.main");
        requireTaken(tablet, step.text() + " of " + at.line());
    }

    /** The sheet of the frame is there again and nothing was refused. */
    private static void requireTaken(Tablet tablet, String what) {
        assertThat(tablet.page().url()).as(what).contains("/station/");
        assertThat(tablet.refusal()).as(what).isEmpty();
    }

    private Hand reader(FrameSheet.OperationSheetOfFrame at, FrameSheet.CharacteristicLine c) {
        Hand doer = shop.at(at.line().station());
        List<Signer> signers = c.signers();
        if (signers.isEmpty() || signers.contains(Signer.WORKER)) {
            return doer;
        }
        if (signers.contains(Signer.ALIGNER)) {
            return shop.aligner;
        }
        if (signers.contains(Signer.HEAT_TREATER)) {
            return shop.heatTreater;
        }
        return signers.contains(Signer.QA) ? shop.qa : shop.witness;
    }

    private void read(
            FrameSheet sheet,
            FrameSheet.OperationSheetOfFrame at,
            FrameSheet.CharacteristicLine c,
            Hand reader,
            boolean byHand) {
        Evidence.Wanted wanted = evidence.wanted(c.characteristicId());
        if (!byHand) {
            elsewhere.read(reader, c.characteristicId(), Values.asDrawn(wanted), finest(wanted));
            return;
        }
        Tablet tablet = key(sheet, at, wanted, reader, Values.asDrawn(wanted), finest(wanted));
        requireTaken(tablet, c.code() + " of " + at.line());
        CharacteristicState state = evidence.wanted(c.characteristicId()).state();
        if (state != CharacteristicState.FIRST_READ) {
            assertThat(tablet.page().locator(".steps").innerText())
                    .as("%s %s", c.code(), c.name())
                    .contains("conforming")
                    .doesNotContain("not conforming");
        }
    }

    private Tablet key(
            FrameSheet sheet,
            FrameSheet.OperationSheetOfFrame at,
            Evidence.Wanted wanted,
            Hand reader,
            List<BigDecimal> raw,
            String gauge) {
        String again = wanted.state() == CharacteristicState.OPEN || wanted.state() == CharacteristicState.FIRST_READ
                ? ""
                : "&again=true";
        Tablet tablet = tablet(at.line().station());
        if (wanted.secondPerson()) {
            tablet.workHere(
                    reader, reader.equals(shop.witness) ? shop.at(at.line().station()) : shop.witness);
        }
        tablet = open(sheet, at, reader, "?read=" + wanted.characteristicId() + again);
        tablet.key(wanted, raw, gauge);
        return tablet;
    }

    private String finest(Evidence.Wanted wanted) {
        return gauges.usableFor(wanted.gaugeKind(), wanted.unit(), settings.dayOf(clock.instant())).stream()
                .min(Comparator.comparing(m -> m.u() == null ? BigDecimal.ZERO : m.u()))
                .map(Means::code)
                .orElseThrow(() -> new AssertionError("no gauge serves " + wanted));
    }

    // ------------------------------------------------------------------------------------------ the bad thing first

    private boolean triedBad(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        String code = at.line().code();
        BadFirst bad = BadFirst.at(sheet.head().part(), code);
        if (bad == null || at.characteristics().isEmpty() || !refusedReadings.add(gate(sheet, code))) {
            return false;
        }
        FrameSheet.CharacteristicLine c = at.characteristics().stream()
                .filter(one -> one.code().equals(bad.characteristic()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " has no " + bad.characteristic()));
        Tablet tablet = null;
        for (Misread misread : bad.readings()) {
            Evidence.Wanted wanted = evidence.wanted(c.characteristicId());
            String gauge = misread.gauge() == null ? finest(wanted) : misread.gauge();
            tablet = key(sheet, at, wanted, reader(at, c), Values.misread(wanted, misread.value()), gauge);
            assertThat(tablet.refusal()).as("%s of %s", misread, at.line()).isEmpty();
            assertThat(tablet.page().locator(".ans .state").innerText())
                    .as("%s at %s", misread, code)
                    .isEqualTo(misread.seen());
            Kept.look(tablet, sheet, at, misread.seen().replace(' ', '-'));
        }
        if (bad.way() == Way.COLD_SET) {
            Aftercare.coldSet(bad, tablet);
        } else {
            aftercare.decide(sheet, at, bad, tablet);
        }
        return true;
    }

    private boolean triedLate(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        String code = at.line().code();
        ClockView window = sheet.clocks().stream()
                .filter(c -> c.kind() == ClockKind.WINDOW && c.state() == ClockState.RUNNING)
                .filter(c -> c.gates().contains(code) && at.line().state() == OperationState.WAITING)
                .findFirst()
                .orElse(null);
        if (window == null || !closedWindows.add(gate(sheet, window.code()))) {
            return false;
        }
        Hand doer = shop.at(at.line().station());
        Tablet tablet = open(sheet, at, doer, "");
        Page inTime = tablet.leavesOpen();
        clock.setTo(window.endsAt().plusSeconds(60));
        tablet.worksHere(doer);
        Sheets.send(inTime, () -> inTime.locator(".plate form .btn.main").click());
        assertThat(inTime.locator(".refusal").innerText())
                .as("late at %s", code)
                .contains("The window of the clock " + window.name() + " closed");
        inTime.close();
        tablet.open(sheet.head().tag());
        assertThat(tablet.page().locator(".plate button.shut").innerText()).contains("cannot begin");
        Kept.look(tablet, sheet, at, "late");
        tablet.press(".ins form[action$='/redo'] button");
        if (!tablet.refusal().isEmpty()) {
            assertThat(tablet.refusal()).contains("It is for the QA lead");
            tablet = open(sheet, at, shop.qa, "");
            tablet.press(".ins form[action$='/redo'] button");
        }
        assertThat(tablet.refusal()).isEmpty();
        return true;
    }

    /** Reads something at the joining operation while a part of the frame is not ready. */
    void joinsTooEarly(long travellerId) {
        FrameSheet sheet = travellers.sheet(travellerId);
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        Tablet tablet = open(sheet, at, shop.at(at.line().station()), "");
        assertThat(tablet.page().locator(".plate button.shut").innerText()).contains("cannot begin");
        FrameSheet.CharacteristicLine c = at.characteristics().get(0);
        Evidence.Wanted wanted = evidence.wanted(c.characteristicId());
        key(sheet, at, wanted, reader(at, c), Values.asDrawn(wanted), finest(wanted));
        assertThat(tablet.refusal()).contains("cannot begin").contains("Its part");
        Kept.look(tablet, sheet, at, "unjoined");
        unjoined.add(gate(sheet, at.line().code()));
    }

    /** Ships the frame; first with the serial of another one in the box. */
    void ships(long travellerId, String otherSerial) {
        FrameSheet.Head head = travellers.head(travellerId);
        Tablet tablet = tablet("9");
        tablet.worksHere(shop.at("9"));
        tablet.ships(head, otherSerial);
    }

    // ------------------------------------------------------------------------------------------ signatures

    private void sign(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        assertThat(at.line().point()).isEqualTo(Point.HOLD);
        Hand doer = shop.at(at.line().station());
        List<Signer> wanted = at.signers();
        Tablet tablet = open(sheet, at, doer, "");
        for (int i = 0; i < wanted.size(); i++) {
            Signer as = wanted.get(i);
            tablet.open(sheet.head().tag() + "/sign?as=" + as);
            if (i == wanted.size() - 1
                    && refusedSignatures.add(gate(sheet, at.line().code()))) {
                assertThat(tablet.shows("input[name='signer'][value='" + doer.id() + "']"))
                        .as(
                                "%s is not offered to sign %s as %s",
                                doer.name(), at.line().code(), as)
                        .isFalse();
                tablet.signsThoughNotOffered(doer);
                assertThat(tablet.refusal())
                        .as("%s signs %s as %s", doer.name(), at.line().code(), as)
                        .containsAnyOf(
                                "the one who signs took no part in it",
                                "come from different people",
                                "It is for the QA lead");
                Kept.look(tablet, sheet, at, "own-work");
                tablet.open(sheet.head().tag() + "/sign?as=" + as);
            }
            tablet.sign(signer(as, doer, tablet));
            requireTaken(tablet, as + " at " + at.line());
        }
    }

    private Hand signer(Signer as, Hand doer, Tablet tablet) {
        return switch (as) {
            case WORKER -> doer;
            case ALIGNER -> shop.aligner;
            case HEAT_TREATER -> shop.heatTreater;
            case QA -> shop.qa;
            case OWNER -> shop.owner;
            case SECOND ->
                tablet.shows("input[name='signer'][value='" + shop.witness.id() + "']") ? shop.witness : shop.other;
        };
    }
}
