package org.trammel.shop.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.assembly.TorqueSheets;
import org.trammel.shop.bench.FrameView.Kind;
import org.trammel.shop.bench.FrameView.Plate;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.AtHand;
import org.trammel.shop.travellers.Beforehand;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.web.Formats;

/** Finds the one next thing of a frame. What it offers, the service still checks. */
@Component
class Plates {

    /** The banner over the sheet says why. */
    private static final String HELD = "Leave it where it is until the hold is lifted. Measuring stays free.";

    private final AtHand atHand;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;
    private final TorqueSheets torques;
    private final Beforehand beforehand;

    Plates(
            AtHand atHand,
            Settings settings,
            Formats formats,
            Clock clock,
            TorqueSheets torques,
            Beforehand beforehand) {
        this.beforehand = beforehand;
        this.torques = torques;
        this.atHand = atHand;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    Plate of(FrameSheet sheet, SignedOn who, FrameViews.Asked asked) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        if (at == null) {
            return ended(sheet);
        }
        String station = at.line().station();
        boolean elsewhere = who.tablet()
                && !asked.here()
                && !station.isEmpty()
                && !who.stations().contains(station);
        if (elsewhere) {
            return Plate.of(
                    Kind.ELSEWHERE,
                    "Goes on to " + formats.station(station),
                    Words.called(at.line()) + " " + at.line().name() + " is next. Nothing is left to do here.",
                    "Next frames");
        }
        return switch (at.line().state()) {
            case AT_POINT -> atPoint(sheet, at);
            case AWAY -> away(at);
            case STOPPED ->
                Plate.of(
                        Kind.STOPPED,
                        "Work stopped",
                        Objects.requireNonNullElse(at.line().stateReason(), ""),
                        "Take the work up again");
            default -> work(sheet, who, at, asked);
        };
    }

    private Plate ended(FrameSheet sheet) {
        FrameSheet.Head head = sheet.head();
        if (head.state() == TravellerState.FINISHED && head.orderId() == null) {
            return Plate.of(Kind.CLOSED, "Check done", "Every step of it is ticked.", "Next frames");
        }
        if (head.state() == TravellerState.FINISHED && !head.part().isEmpty()) {
            return Plate.of(
                    Kind.JOIN,
                    "Ready to be joined",
                    "Every operation of this part is done. The frame is joined when all its parts are ready.",
                    "Next frames");
        }
        if (head.state() == TravellerState.FINISHED) {
            return Plate.of(
                    Kind.READY,
                    "Ship " + head.mark(),
                    "Read the serial from the frame in the box, beside the address.",
                    "Ship " + head.mark());
        }
        String reason = head.stateReason();
        return Plate.of(
                Kind.CLOSED,
                head.mark() + " is " + head.state().word(),
                head.shippedAt() != null
                        ? "Shipped " + formats.moment(head.shippedAt()) + "."
                        : reason == null ? "No work is recorded on it." : reason + ".",
                "Next frames");
    }

    private Plate atPoint(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        if (!sheet.inTheWay().isEmpty()) {
            return blocked(sheet, at, null, sheet.inTheWay().get(0));
        }
        boolean witness = at.line().point() == Point.WITNESS;
        Instant since = at.atPointSince();
        Duration wait = Duration.ofMinutes(settings.whole("witness.wait.minutes"));
        boolean over = witness && since != null && !clock.instant().isBefore(since.plus(wait));
        String words = witness
                ? over
                        ? "Nobody came in " + formats.span(wait) + ": the point may be passed, and the record says so."
                        : "The witness was called " + formats.moment(since) + " and has until "
                                + formats.moment(since == null ? null : since.plus(wait)) + "."
                : "The work is done. It does not go on until this is signed.";
        return new Plate(
                Kind.POINT,
                (witness ? "Witness point: " : "Hold point: ") + at.line().name(),
                words,
                "Sign here",
                null,
                false,
                false,
                null,
                null,
                over);
    }

    private Plate away(FrameSheet.OperationSheetOfFrame at) {
        return atHand.away(at.line().operationId())
                .map(a -> Plate.of(
                        Kind.AWAY,
                        "Away at " + a.recipient(),
                        "Sent out " + formats.moment(a.since()) + ". It comes back with a certificate.",
                        "Book back"))
                .orElseGet(() -> Plate.of(Kind.AWAY, "Away", "It comes back with a certificate.", "Book back"));
    }

    private Plate work(FrameSheet sheet, SignedOn who, FrameSheet.OperationSheetOfFrame at, FrameViews.Asked asked) {
        List<FrameSheet.StepLine> open =
                at.steps().stream().filter(s -> !s.ticked()).toList();
        FrameSheet.StepLine next = open.stream()
                .filter(s -> asked.stepId() != null && s.stepId() == asked.stepId())
                .findFirst()
                .orElse(open.isEmpty() ? null : open.get(0));
        boolean begun = at.line().state() != OperationState.WAITING;
        if ((!begun || at.closedWindow(sheet.clocks(), clock.instant()).isPresent())
                && !sheet.inTheWay().isEmpty()) {
            return blocked(sheet, at, next, sheet.inTheWay().get(0));
        }
        if (next != null && begun && restsOnTorques(next)) {
            Optional<Plate> torque = torque(sheet, at);
            if (torque.isPresent()) {
                return torque.get();
            }
        }
        if (next != null) {
            boolean held = !sheet.inTheWay().isEmpty() && (next.irreversible() || at.irreversible());
            return held ? blocked(sheet, at, next, sheet.inTheWay().get(0)) : step(who, at, next, open);
        }
        if (begun && sheet.holds().isEmpty()) {
            Optional<Plate> torque = torque(sheet, at);
            if (torque.isPresent()) {
                return torque.get();
            }
        }
        FrameSheet.CharacteristicLine unread = at.characteristics().stream()
                .filter(c -> !c.state().settled())
                .findFirst()
                .orElse(null);
        if (unread != null) {
            return Plate.of(Kind.READING, unread.name(), "", "Read");
        }
        return sheet.inTheWay().isEmpty()
                ? Plate.of(
                        Kind.NOTHING,
                        at.line().name(),
                        "The route gives this operation nothing to tick and nothing to read.",
                        "")
                : blocked(sheet, at, null, sheet.inTheWay().get(0));
    }

    /** Whether what a step rests on is recorded on another sheet, to which the plate leads. */
    private static boolean elsewhere(@Nullable Proof proof) {
        return proof != null
                && (proof == Proof.LOOKED || proof.sheet() == Proof.Sheet.TUBES || proof.sheet() == Proof.Sheet.BUILD);
    }

    private static Plate onlyTold(Kind kind, FrameSheet.StepLine step, String words, String action, Refusal obstacle) {
        return new Plate(kind, step.text(), words, action, step, false, false, obstacle, null, false);
    }

    private static boolean restsOnTorques(FrameSheet.StepLine step) {
        return step.proof() != null && step.proof().sheet() == Proof.Sheet.TORQUE;
    }

    private Optional<Plate> torque(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        FrameSheet.Head head = sheet.head();
        return torques.next(
                        head.serial(), head.part(), at.line().code(), at.line().operationId())
                .map(words -> Plate.of(Kind.TORQUE, words, "", "Open the torque sheet"));
    }

    private Plate step(
            SignedOn who,
            FrameSheet.OperationSheetOfFrame at,
            FrameSheet.StepLine next,
            List<FrameSheet.StepLine> open) {
        if (at.qualification() != null || next.qualification() != null || next.secondPerson()) {
            Refusal bars = beforehand.bars(next.stepId(), who.person().id()).orElse(null);
            if (bars != null) {
                return onlyTold(
                        Kind.BARRED,
                        next,
                        bars.why() + " " + bars.instead(),
                        who.person().name() + " may not tick step " + next.number(),
                        bars);
            }
        }
        if (elsewhere(next.proof())) {
            Refusal first = beforehand.unproven(next.stepId()).orElse(null);
            if (first != null) {
                return onlyTold(
                        Kind.FIRST,
                        next,
                        next.instruction(),
                        "First: " + next.proof().words(),
                        first);
            }
        }
        if (next.proof() == Proof.WELDED) {
            return new Plate(
                    Kind.WELD,
                    next.text(),
                    next.instruction(),
                    "Open the sheet of the weld",
                    next,
                    false,
                    false,
                    null,
                    null,
                    false);
        }
        boolean photoWanted =
                next.photo() && !atHand.photographed(at.line().operationId()).contains(next.stepId());
        return new Plate(
                Kind.STEP,
                next.text(),
                next.instruction(),
                next.lotKind() == null ? "Tick step " + next.number() : "Book the lot, tick step " + next.number(),
                next,
                open.get(0).stepId() != next.stepId(),
                photoWanted,
                null,
                null,
                false);
    }

    private Plate blocked(
            FrameSheet sheet,
            FrameSheet.OperationSheetOfFrame at,
            FrameSheet.@Nullable StepLine step,
            Refusal obstacle) {
        Instant now = clock.instant();
        ClockView redo = at.closedWindow(sheet.clocks(), now).orElse(null);
        return new Plate(
                Kind.BLOCKED,
                step == null ? at.line().name() : step.text(),
                sheet.holds().isEmpty() ? obstacle.why() + " " + obstacle.instead() : HELD,
                obstacle.what(),
                step,
                false,
                false,
                obstacle,
                redo,
                false);
    }
}
