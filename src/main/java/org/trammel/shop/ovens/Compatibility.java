package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/** Whether a frame may be in a load: asked as it is loaded, and of every frame once more as the oven starts. */
@Component
class Compatibility {

    private final Travellers travellers;
    private final LoadedRepository frames;
    private final HeatLedgers ledgers;
    private final CureJudge cures;
    private final Formats formats;

    Compatibility(
            Travellers travellers, LoadedRepository frames, HeatLedgers ledgers, CureJudge cures, Formats formats) {
        this.travellers = travellers;
        this.frames = frames;
        this.ledgers = ledgers;
        this.cures = cures;
        this.formats = formats;
    }

    /**
     * What was found of a frame that may be loaded.
     *
     * @param operationId the operation that will wait for the run; null for a top-up that names none
     */
    record Fits(FrameSheet.Head head, @Nullable Long operationId) {}

    /**
     * Refuses a frame that may not be in the load.
     *
     * @param starting whether the oven starts now; then the operation it is for must be at hand
     */
    Fits require(RunRow run, Programme programme, long travellerId, Instant now, boolean starting) {
        FrameSheet sheet = travellers.sheet(travellerId);
        FrameSheet.Head head = sheet.head();
        String deed = head.mark() + (starting ? " cannot go into the oven." : " was not loaded.");
        if (!programme.content().metals().contains(head.metal())) {
            throw Refusal.state(
                    deed,
                    "It is of " + formats.metal(head.metal()) + ", and programme " + programme.called() + " is for "
                            + String.join(
                                    " and ",
                                    programme.content().metals().stream()
                                            .map(formats::metal)
                                            .toList())
                            + ".",
                    "Load it with frames of its own metal.");
        }
        if (!head.state().open()) {
            throw Refusal.state(deed, "It is " + head.state().word() + ".", "Read its tag again.");
        }
        frames.openLoadsOf(travellerId).stream()
                .filter(code -> !code.equals(run.code()))
                .findFirst()
                .ifPresent(code -> {
                    throw Refusal.state(
                            deed,
                            "It is in load " + code + ", which is not decided.",
                            "Take it out there, or decide that run first.");
                });
        boolean anywhere = programme.content().guards().isEmpty() && programme.purpose() == Purpose.TOP_UP;
        if (anywhere) {
            requireAged(head, deed);
        }
        // Before all else: a hold may be lifted, heat is not taken back, and another programme is chosen.
        heat(run, programme, head, deed);
        cures.cannot(programme, travellerId, now, deed).ifPresent(why -> {
            throw why;
        });
        requireNamed(programme, deed);
        FrameSheet.OperationLine operation = operation(sheet, programme, deed, starting);
        held(sheet, programme, operation, deed);
        clocks(sheet, programme, operation, now, deed);
        return new Fits(head, operation == null ? null : operation.operationId());
    }

    /** A programme says which operations it is for; what an age fell short of is made up for wherever the frame stands. */
    static void requireNamed(Programme programme, String deed) {
        if (programme.content().guards().isEmpty() && programme.purpose() != Purpose.TOP_UP) {
            throw Refusal.state(
                    deed,
                    "Programme " + programme.called()
                            + " names no operation that it is for, so that no frame stands at one.",
                    "Let the QA lead approve a revision that names them.");
        }
    }

    private void requireAged(FrameSheet.Head head, String deed) {
        boolean aged = frames.agedRunsOf(head.serial()).stream()
                .anyMatch(part -> part.isEmpty() || head.part().isEmpty() || part.equals(head.part()));
        if (!aged) {
            throw Refusal.state(
                    deed,
                    "It was in no run that aged it, and a top-up makes up for what an age fell short of.",
                    "Load it for its age.");
        }
    }

    /** The operation the run is for: at hand, or while it is loaded the next one behind that at the same station. */
    private static FrameSheet.@Nullable OperationLine operation(
            FrameSheet sheet, Programme programme, String deed, boolean starting) {
        List<String> guards = programme.content().guards();
        if (guards.isEmpty()) {
            return null;
        }
        List<FrameSheet.OperationLine> ahead = sheet.operations().stream()
                .filter(line -> line.state() != OperationState.DONE && line.state() != OperationState.REPEATED)
                .toList();
        FrameSheet.OperationLine first = ahead.isEmpty() ? null : ahead.get(0);
        if (first != null && guards.contains(first.code())) {
            if (first.state() == OperationState.AWAY || first.state() == OperationState.STOPPED) {
                throw Refusal.state(
                        deed,
                        "Operation " + first.code() + " is " + first.state().word() + ".",
                        "Take the work up again first.");
            }
            return first;
        }
        boolean next = ahead.size() > 1
                && guards.contains(ahead.get(1).code())
                && ahead.get(1).station().equals(first.station());
        if (next && !starting) {
            return ahead.get(1);
        }
        throw Refusal.state(
                deed,
                first == null
                        ? "Every operation of it is done."
                        : "It stands at operation " + first.code() + ", " + first.name() + ", which is "
                                + first.state().word() + "; programme " + programme.called() + " is for operation "
                                + String.join(" or ", guards) + ".",
                next ? "Finish and sign operation " + first.code() + " first." : "Bring it there first.");
    }

    /**
     * Heat cannot be taken back: every open hold that covers the frame keeps it out, freed or not. A top-up is what a hold
     * for an oven run waits for.
     */
    private static void held(
            FrameSheet sheet, Programme programme, FrameSheet.@Nullable OperationLine operation, String deed) {
        sheet.holds().stream()
                .filter(hold -> programme.purpose() != Purpose.TOP_UP || hold.reason() != HoldReason.OVEN_TRACE)
                .filter(hold -> hold.scope() != HoldScope.OPERATION
                        || hold.operationId() == null
                        || operation != null && hold.operationId() == operation.operationId()
                        || hold.operationId().equals(sheet.head().currentOperationId()))
                .findFirst()
                .ifPresent(hold -> {
                    throw Refusal.state(
                            deed,
                            "It is on hold, " + hold.reason().word() + ": " + hold.words(),
                            "Leave it where it is until the hold is lifted.");
                });
    }

    private void clocks(
            FrameSheet sheet,
            Programme programme,
            FrameSheet.@Nullable OperationLine operation,
            Instant now,
            String deed) {
        sheet.clocks().stream().filter(ClockView::stands).findFirst().ifPresent(clock -> {
            throw Refusal.state(
                    deed,
                    "It lies in the cold store since " + formats.moment(clock.stoppedAt()) + ".",
                    "Take it out on the page of the cold store first.");
        });
        if (operation == null) {
            return;
        }
        List<ClockView> gating = sheet.clocks().stream()
                .filter(clock -> clock.gates().contains(operation.code()))
                .toList();
        BigDecimal natural = programme.content().naturalAgeing_h();
        List<Instant> ready = new ArrayList<>();
        for (ClockView clock : gating) {
            Instant begun = clock.startedAt();
            if (clock.closedAt(now)) {
                throw Refusal.state(
                        deed,
                        "The window of the clock " + clock.name() + " closed at " + formats.moment(clock.endsAt())
                                + ".",
                        "Do operation " + clock.startedBy() + " again, or call the QA lead.");
            }
            if (clock.waitingAt(now)) {
                throw waits(deed, clock.name(), clock.endsAt());
            }
            if (clock.kind() == ClockKind.WAIT && begun != null && natural != null) {
                ready.add(begun.plus(hours(natural)));
                if (now.isBefore(ready.get(ready.size() - 1))) {
                    throw waits(deed, "natural ageing of programme " + programme.called(), ready.get(ready.size() - 1));
                }
            }
        }
        if (natural != null && natural.signum() > 0 && ready.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "Programme " + programme.called() + " asks for natural ageing of " + formats.number(natural)
                            + " h, and no waiting time of its route tells when that began.",
                    "Let the route carry the waiting time that guards operation " + operation.code() + ".");
        }
        quenched(programme, operation, gating, now, deed);
    }

    private void quenched(
            Programme programme, FrameSheet.OperationLine operation, List<ClockView> gating, Instant now, String deed) {
        BigDecimal most = programme.content().quenchToAge_h();
        if (most == null) {
            return;
        }
        List<ClockView> windows = gating.stream()
                .filter(clock -> clock.kind() == ClockKind.WINDOW && clock.startedAt() != null)
                .toList();
        if (windows.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "Programme " + programme.called() + " allows " + formats.number(most)
                            + " h from quench to oven, and no window of its route tells when that began.",
                    "Let the route carry the window that guards operation " + operation.code() + ".");
        }
        for (ClockView clock : windows) {
            Instant latest = clock.startedAt().plus(hours(most));
            if (now.isAfter(latest)) {
                throw Refusal.state(
                        deed,
                        "Programme " + programme.called() + " allows " + formats.number(most)
                                + " h from quench to oven; that ended at " + formats.moment(latest) + ".",
                        "Do operation " + clock.startedBy() + " again, or call the QA lead.");
            }
        }
    }

    private Refusal waits(String deed, String clock, @Nullable Instant until) {
        return Refusal.state(
                deed,
                "The waiting time " + clock + " ends at " + formats.moment(until) + ".",
                "Load it when that is over.");
    }

    private static Duration hours(BigDecimal hours) {
        return Duration.ofSeconds(hours.multiply(BigDecimal.valueOf(3600)).longValue());
    }

    /** Refuses a bake before loading that would bring the heat of a frame above its limit. */
    private void heat(RunRow run, Programme programme, FrameSheet.Head head, String deed) {
        if (!programme.purpose().addsToTheLedger()) {
            return;
        }
        ledgers.of(head.serial(), head.part(), head.metal(), programme, run.code())
                .filter(sheet -> !sheet.sums().holds())
                .ifPresent(sheet -> {
                    throw Refusal.state(
                            deed,
                            formats.sentence(sheet.words()),
                            "Choose a cooler or shorter programme; hardness and the QA lead decide what else there is.");
                });
    }
}
