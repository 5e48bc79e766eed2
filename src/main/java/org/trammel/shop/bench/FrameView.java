package org.trammel.shop.bench;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.drawing.DrawnSheet;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.RouteView;

/**
 * The sheet of one frame at a station.
 *
 * @param heading the place: the station, or the operation where no station works
 * @param line what is in work, in a line: operation, step, since when
 * @param holds every open hold that concerns it, as banners
 * @param past the tick made last, where it can still be shown; null if there is none
 * @param plate the one next thing
 * @param toCome what follows, in order
 * @param measured characteristics of the operation at hand
 * @param pictures photographs of the operation at hand, oldest first
 * @param ahead the operations that follow, where nothing is measured at the one at hand
 * @param waiting letter of a signed revision of the drawing that is not released yet; null if there is none
 * @param drawing the frame with the part that the step at hand is about; null where there is none to show
 */
record FrameView(
        FrameSheet.Head head,
        FrameSheet.@Nullable OperationSheetOfFrame at,
        String heading,
        String line,
        List<ClockLine> clocks,
        RouteView route,
        List<HoldBanner> holds,
        @Nullable Past past,
        Plate plate,
        List<ToCome> toCome,
        List<Measured> measured,
        List<Ahead> ahead,
        List<FrameSheet.NoteLine> notes,
        List<Picture> pictures,
        @Nullable String waiting,
        @Nullable DrawnSheet drawing) {

    /** How many characteristics fit beside the plate without folding; one fewer where a hold stands above it. */
    private static final int MEASURED = 3;

    /** How many of the operations that follow stand beside a drawing. */
    private static final int AHEAD_OF_A_DRAWING = 2;

    public String tag() {
        return head.tag();
    }

    /** Whether a step at hand rests on handwork. */
    public boolean proven() {
        return at != null
                && at.steps().stream()
                        .anyMatch(step -> step.proof() != null && step.proof().sheet() == Proof.Sheet.HANDWORK);
    }

    /** What leads to a sheet: what the step at hand rests on, if it is recorded there, else the name of the sheet. */
    public String led(Proof.Sheet sheet, String name) {
        Proof proof = plate.step() == null ? null : plate.step().proof();
        return proof == null || proof.sheet() != sheet || proof == Proof.SERIAL_STRUCK
                ? name
                : "First: " + proof.words();
    }

    /** Whether a jig is set at the operation at hand, and not yet read back. */
    public boolean jig() {
        return JigSheets.setsUp(at);
    }

    /** Whether the operation at hand is read on the scales of a jig: it is noted in which one. */
    public boolean inJig() {
        return at != null && at.characteristics().stream().anyMatch(one -> "JIG-SCALE".equals(one.gaugeKind()));
    }

    /** The characteristics that stand open on the sheet: the chosen one, else those not settled first. */
    public List<Measured> shown() {
        int fit = holds.isEmpty() ? MEASURED : MEASURED - 1;
        return measured.size() <= fit
                ? measured
                : measured.stream().filter(this::open).limit(fit).toList();
    }

    /** Fewer of what follows where a drawing takes the room. */
    public List<Ahead> aheadShown() {
        return drawing == null || ahead.size() <= AHEAD_OF_A_DRAWING ? ahead : ahead.subList(0, AHEAD_OF_A_DRAWING);
    }

    /** The holds behind the first. Their reasons stay in sight, the rest of them is folded. */
    public List<HoldBanner> moreHolds() {
        return holds.subList(Math.min(1, holds.size()), holds.size());
    }

    /** How many more holds there are and why, in a line. */
    public String moreReasons() {
        List<HoldBanner> more = moreHolds();
        return more.size()
                + (more.size() == 1 ? " more hold: " : " more holds: ")
                + more.stream().map(HoldBanner::reason).distinct().collect(Collectors.joining(", "));
    }

    /** Whether the person signed on may try to lift or free one of them. */
    public boolean mayAct() {
        return holds.stream().anyMatch(hold -> hold.mayLift() || hold.mayFree());
    }

    /** The others, folded away. */
    public List<Measured> folded() {
        List<Measured> shown = shown();
        return measured.stream().filter(m -> !shown.contains(m)).toList();
    }

    private boolean open(Measured one) {
        return one.current() || !one.settled() || measured.stream().allMatch(Measured::settled);
    }

    /** What the plate is for. */
    enum Kind {
        /** Tick a step. */
        STEP,
        /** Key a reading; the reading sheet takes over. */
        READING,
        /** Open and close a node; the sheet of the weld takes over. */
        WELD,
        /** Torque the fasteners of its components; the torque sheet takes over. */
        TORQUE,
        /** A hold or witness point waits for signatures. */
        POINT,
        /** Something keeps the next thing from being done. */
        BLOCKED,
        /** Whoever is signed on may not tick the step, and the plate says why. */
        BARRED,
        /** What the step rests on is recorded first, on a sheet of its own. */
        FIRST,
        /** Work was broken off. */
        STOPPED,
        /** The frame is with somebody outside. */
        AWAY,
        /** The next operation is done at another station. */
        ELSEWHERE,
        /** Everything is done: the frame may be shipped. */
        READY,
        /** A part that waits to be joined. */
        JOIN,
        /** Shipped, scrapped or withdrawn. */
        CLOSED,
        /** Nothing to tick and nothing to read. */
        NOTHING
    }

    /**
     * The one painted plate.
     *
     * @param heading what is at hand, in a few words
     * @param words beside it on paper: the instruction, or why it cannot be done
     * @param action words on the button
     * @param step to tick; null unless the plate is for one
     * @param outOfOrder a step before it is not ticked, so that a reason is asked for
     * @param photoWanted the step asks for a photograph and there is none
     * @param obstacle what is in the way
     * @param redo the closed clock since whose start the operations may be done over; null if none
     * @param mayPass a witness point nobody came to may be passed now
     */
    record Plate(
            Kind kind,
            String heading,
            String words,
            String action,
            FrameSheet.@Nullable StepLine step,
            boolean outOfOrder,
            boolean photoWanted,
            @Nullable Refusal obstacle,
            @Nullable ClockView redo,
            boolean mayPass) {

        static Plate of(Kind kind, String heading, String words, String action) {
            return new Plate(kind, heading, words, action, null, false, false, null, null, false);
        }

        public boolean is(String name) {
            return kind.name().equals(name);
        }
    }

    /** A clock: what stands before its time and what once it has come. The kind picks the mark: in-work while it runs, stopped once it is closed. */
    record ClockLine(String before, Instant until, String after, String kind) {}

    /**
     * A hold as a banner.
     *
     * @param mayLift whether the person signed on may try to lift it here
     */
    record HoldBanner(
            long holdId,
            String reason,
            String words,
            String placed,
            String liftedBy,
            boolean mayLift,
            boolean mayFree) {}

    /**
     * The tick made last.
     *
     * @param freeUntil until when the person signed on takes it back without a reason; null if that is over
     */
    record Past(
            long stepId,
            String number,
            String words,
            @Nullable String freeUntil) {}

    /**
     * Something that follows.
     *
     * @param kind step, letter, point or next
     * @param address where a tap leads; null if nowhere
     */
    record ToCome(
            String kind,
            String balloon,
            String words,
            String note,
            @Nullable String address) {}

    /** A photograph of the operation at hand, and in words what it is of. */
    record Picture(String sha256, String words) {}

    /** An operation that follows; a hold or witness point ends it where one is said. */
    record Ahead(String code, String name, String station, String point) {}

    /** A characteristic in the list beside the drawing. */
    record Measured(
            long characteristicId,
            String letter,
            String name,
            String limits,
            String state,
            String mark,
            boolean settled,
            boolean current) {}
}
