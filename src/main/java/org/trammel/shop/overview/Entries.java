package org.trammel.shop.overview;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.assembly.AssemblyStory;
import org.trammel.shop.coats.CoatHistory;
import org.trammel.shop.cuts.CutHistory;
import org.trammel.shop.handwork.HandHistory;
import org.trammel.shop.inspection.BlindAttempts;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.FrameStory;
import org.trammel.shop.welding.WeldStories;

/** What happened to a frame, each thing in a sentence. */
final class Entries {

    /** Place of what belongs to no operation. */
    static final long NOWHERE = 0;

    private final Map<Long, String> places = new HashMap<>();
    private final Map<Long, List<Story.Entry>> at = new HashMap<>();
    private final Names names;

    Entries(FrameStory told, List<AssemblyStory.Told> assembled, List<CoatHistory.Told> coats, Names names) {
        this.names = names;
        told.travellers().forEach(this::traveller);
        told.holds().forEach(hold -> hold(hold, told.agreed()));
        told.freed()
                .forEach(f -> add(
                        f.operationId(),
                        f.at(),
                        "hold",
                        "freed, the hold stays",
                        names.at(f.personId(), f.at()),
                        false,
                        f.reason(),
                        null));
        told.notes()
                .forEach(n -> add(
                        n.operationId(), n.at(), "", "note", names.at(n.personId(), n.at()), false, n.words(), null));
        told.photos()
                .forEach(p -> add(
                        p.operationId(),
                        p.at(),
                        "",
                        "photograph",
                        names.at(p.personId(), p.at()),
                        false,
                        null,
                        p.sha256()));
        coats.forEach(
                c -> add(c.operationId(), c.at(), c.kind(), c.what(), names.at(c.by(), c.at()), false, null, null));
        told.sent().forEach(this::sent);
        told.carried().forEach(this::carried);
        told.unconfirmed()
                .forEach(c -> add(
                        c.operationId(),
                        c.at(),
                        "concession",
                        "lapsed confirmation of " + c.qualification() + " overridden for "
                                + names.at(c.personId(), c.at()) + ", signed",
                        names.at(c.givenBy(), c.at()),
                        false,
                        c.reason(),
                        null));
        assembled.forEach(
                a -> add(a.operationId(), a.at(), a.mark(), a.what(), names.at(a.by(), a.at()), false, a.more(), null));
        at.values().forEach(list -> list.sort(Comparator.comparing(Story.Entry::at)));
    }

    /** An operation with the number of its loop, such as 150, or 150 loop 2. */
    static String called(FrameSheet.OperationLine line) {
        return line.loop() > 0 ? line.code() + " loop " + line.loop() : line.code();
    }

    /** Part and number of an operation; empty if it is not of this frame. */
    String place(long operationId) {
        return places.getOrDefault(operationId, "");
    }

    List<Story.Entry> at(long operationId) {
        return at.getOrDefault(operationId, List.of());
    }

    List<Story.Entry> all() {
        return at.values().stream().flatMap(List::stream).toList();
    }

    /** A reading as an entry in the order of time. */
    Story.Entry reading(Story.ReadingOf r, long operationId) {
        String u = r.u() == null ? ", no uncertainty" : "";
        return new Story.Entry(
                r.at(),
                places.getOrDefault(operationId, ""),
                r.kind(),
                r.code() + " " + r.name() + ": " + r.value() + " with " + r.gauge() + u + ", " + r.rule() + ": "
                        + r.verdict(),
                r.who(),
                r.replaced(),
                r.reason(),
                null);
    }

    /** A nonconformance opened, decided, closed. */
    List<Story.Entry> nonconformance(NonconformanceLine n) {
        List<Story.Entry> said = new ArrayList<>();
        String where = places.getOrDefault(n.operationId(), n.operationCode());
        said.add(new Story.Entry(
                n.openedAt(),
                where,
                "stopped",
                n.number() + " opened",
                names.at(n.openedBy(), n.openedAt()),
                false,
                n.words(),
                null));
        if (n.decidedAt() != null && n.decision() != null) {
            String kind = kind(n.decision());
            said.add(new Story.Entry(
                    n.decidedAt(),
                    where,
                    kind,
                    n.number() + " decided: " + n.decision().word(),
                    "",
                    false,
                    n.decisionWords(),
                    null));
        }
        if (n.closedAt() != null) {
            said.add(new Story.Entry(
                    n.closedAt(), where, "done", n.number() + " closed", "", false, n.closeWords(), null));
        }
        return said;
    }

    /** Kind of the mark of a decision. */
    static String kind(@Nullable Decision decision) {
        return decision == null ? "stopped" : decision.mark();
    }

    private void traveller(FrameStory.Of of) {
        FrameSheet.Head head = of.head();
        String part = head.part().isEmpty() ? "" : head.part() + " ";
        add(NOWHERE, head.releasedAt(), "", part + "released, revision " + head.letter(), "", false, null, null);
        if (head.shippedAt() != null) {
            add(NOWHERE, head.shippedAt(), "done", part + "shipped", "", false, null, null);
        }
        if (head.stateReason() != null && !head.state().open() && head.finishedAt() != null) {
            add(NOWHERE, head.finishedAt(), "", part + head.state().word(), "", false, head.stateReason(), null);
        }
        for (FrameStory.At o : of.operations()) {
            long id = o.line().operationId();
            places.put(id, part + called(o.line()));
            for (FrameStory.Ticked t : o.ticks()) {
                String lot = t.lot() == null ? "" : ", lot " + t.lot();
                add(
                        id,
                        t.at(),
                        t.untick() ? "" : "done",
                        (t.untick() ? "tick taken back: " : "ticked: ") + t.step() + lot,
                        names.at(t.personId(), t.at()),
                        t.undone(),
                        t.reason(),
                        null);
            }
            o.signatures()
                    .forEach(s -> add(
                            id,
                            s.at(),
                            "hold",
                            "signed as " + s.signer().word() + ": " + s.meaning(),
                            names.at(s.personId(), s.at()),
                            !s.counts(),
                            null,
                            null));
        }
    }

    private void hold(FrameSheet.HoldLine h, List<FrameStory.Agreed> agreed) {
        String of = h.reason().word() + (h.source().equals("by hand") ? "" : ", " + h.source());
        add(
                h.operationId(),
                h.placedAt(),
                "stopped",
                "held: " + of,
                names.at(h.placedBy(), h.placedAt()),
                false,
                h.words(),
                null);
        agreed.stream()
                .filter(a -> a.holdId() == h.holdId())
                .forEach(a -> add(
                        h.operationId(),
                        a.at(),
                        "hold",
                        "agreed to lift the hold: " + of,
                        names.at(a.personId(), a.at()),
                        false,
                        a.words(),
                        null));
        if (h.liftedAt() != null) {
            add(
                    h.operationId(),
                    h.liftedAt(),
                    "done",
                    "hold lifted: " + of,
                    names.at(h.liftedBy(), h.liftedAt()),
                    false,
                    h.liftWords(),
                    null);
        }
    }

    private void carried(FrameStory.Carried c) {
        boolean left = c.newOperationId() == null;
        add(
                left ? c.oldOperationId() : c.newOperationId(),
                c.at(),
                "",
                "newer revision: " + (left ? "no longer part of the route, " : "")
                        + c.verdict().word(),
                c.ownerId() == null
                        ? names.at(c.personId(), c.at())
                        : names.at(c.personId(), c.at()) + ", " + names.at(c.ownerId(), c.at()),
                false,
                c.reason()
                        + (c.limits() == null ? "" : " Limits: " + c.limits())
                        + (c.expiresOn() == null ? "" : " To be used until " + c.expiresOn() + ".")
                        + (c.customerAgreement() == null ? "" : " Customer: " + c.customerAgreement()),
                null);
    }

    private void sent(FrameStory.Sent s) {
        add(
                s.operationId(),
                s.sentAt(),
                "in-work",
                "sent out to " + s.recipient(),
                names.at(s.sentBy(), s.sentAt()),
                false,
                null,
                null);
        if (s.backAt() != null) {
            add(
                    s.operationId(),
                    s.backAt(),
                    "done",
                    "back, certificate " + s.certificate(),
                    names.at(s.backBy(), s.backAt()),
                    false,
                    null,
                    null);
        }
    }

    /** What was recorded of the welds, each at its operation. */
    void welds(List<WeldStories.Line> lines) {
        lines.forEach(line -> add(
                line.operationId(),
                line.at(),
                line.kind(),
                line.what(),
                names.at(line.by(), line.at()),
                false,
                line.reason(),
                null));
        at.values().forEach(list -> list.sort(Comparator.comparing(Story.Entry::at)));
    }

    /** What its ticks rest on, each at its operation. */
    void hands(List<HandHistory.Told> lines) {
        lines.forEach(line -> add(
                line.operationId(),
                line.at(),
                line.kind(),
                line.what(),
                names.at(line.by(), line.at()),
                false,
                null,
                null));
        at.values().forEach(list -> list.sort(Comparator.comparing(Story.Entry::at)));
    }

    /** Tubes as they were measured. */
    void cuts(List<CutHistory.Told> lines) {
        lines.forEach(line ->
                add(line.operationId(), line.at(), "", line.what(), names.at(line.by(), line.at()), false, null, null));
        at.values().forEach(list -> list.sort(Comparator.comparing(Story.Entry::at)));
    }

    /** What was read back blind and asked about. */
    void attempts(List<BlindAttempts.Told> lines) {
        lines.forEach(line -> add(
                line.operationId(),
                line.at(),
                "undecided",
                line.code() + " read back as " + line.readAs() + ", asked about and not taken",
                names.at(line.by(), line.at()),
                false,
                null,
                null));
        at.values().forEach(list -> list.sort(Comparator.comparing(Story.Entry::at)));
    }

    private void add(
            @Nullable Long operationId,
            Instant when,
            String kind,
            String what,
            String who,
            boolean struck,
            @Nullable String more,
            @Nullable String photo) {
        long place = operationId == null ? NOWHERE : operationId;
        at.computeIfAbsent(place, id -> new ArrayList<>())
                .add(new Story.Entry(when, places.getOrDefault(place, ""), kind, what, who, struck, more, photo));
    }
}
