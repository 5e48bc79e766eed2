package org.trammel.shop.overview;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.backtraces.OvenTraces;
import org.trammel.shop.inspection.Rejudgements;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Backups;
import org.trammel.shop.records.CheckpointSheet;
import org.trammel.shop.records.Checkpoints;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.OnTheFloor;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;

/** Puts the QA lead's desk together. */
@Component
class QaDesk {

    private final Travellers travellers;
    private final OnTheFloor floor;
    private final NonconformanceReads nonconformances;
    private final Rejudgements rejudgements;
    private final OvenTraces ovenTraces;
    private final FallingDue fallingDue;
    private final Backups backups;
    private final Checkpoints checkpoints;
    private final Names.Source names;
    private final Clock clock;

    QaDesk(
            Travellers travellers,
            OnTheFloor floor,
            NonconformanceReads nonconformances,
            Rejudgements rejudgements,
            OvenTraces ovenTraces,
            FallingDue fallingDue,
            Backups backups,
            Checkpoints checkpoints,
            Names.Source names,
            Clock clock) {
        this.travellers = travellers;
        this.floor = floor;
        this.nonconformances = nonconformances;
        this.rejudgements = rejudgements;
        this.ovenTraces = ovenTraces;
        this.fallingDue = fallingDue;
        this.backups = backups;
        this.checkpoints = checkpoints;
        this.names = names;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    DeskFacts now(Person reader) {
        Names seen = names.seenBy(reader);
        List<FrameSheet.Head> heads = travellers.inShop();
        Map<Long, FrameSheet.Head> byId =
                heads.stream().collect(Collectors.toMap(FrameSheet.Head::travellerId, h -> h));
        Map<Long, OnTheFloor.AtHandNow> atHand = floor.atHand(byId.keySet());
        List<FrameSheet.HoldLine> held = travellers.openHolds();
        Map<Long, Set<Long>> freed =
                floor.freed(held.stream().map(FrameSheet.HoldLine::holdId).toList());
        List<FrameSheet.Head> standing = ShopFacts.standing(heads);
        List<DeskFacts.WindowOpen> windows = windows(byId);
        return new DeskFacts(
                windows,
                held.stream()
                        .sorted(Comparator.comparing(
                                h -> closes(h, windows), Comparator.nullsLast(Comparator.naturalOrder())))
                        .map(h -> held(h, standing, atHand, freed, seen))
                        .toList(),
                nonconformances.undecided(),
                floor.points().stream().map(p -> point(p, reader)).toList(),
                floor.undecided().stream()
                        .map(u -> new DeskFacts.UndecidedReading(
                                u.head().serial(),
                                u.head().part(),
                                u.characteristic().code(),
                                u.characteristic().name(),
                                u.operation().code()))
                        .toList(),
                travellers.openCalls(),
                rejudgements.open(),
                ovenTraces.open(),
                fallingDue.soon(seen),
                backups.last().map(Backups.Backup::at).orElse(null),
                checkpoints.newest().map(CheckpointSheet::at).orElse(null));
    }

    private List<DeskFacts.WindowOpen> windows(Map<Long, FrameSheet.Head> heads) {
        Map<Long, List<FrameSheet.OperationLine>> strips = travellers.strips(heads.keySet());
        Map<Long, Set<String>> coldSets = floor.coldSetsLeft(heads.keySet());
        List<DeskFacts.WindowOpen> open = new ArrayList<>();
        travellers.clocks(heads.keySet()).forEach((id, clocks) -> {
            FrameSheet.Head head = heads.get(id);
            Windows.of(clocks, strips.getOrDefault(id, List.of()), coldSets.getOrDefault(id, Set.of()), clock.instant())
                    .forEach(w -> open.add(new DeskFacts.WindowOpen(
                            head.serial(), head.part(), w.name(), w.gate(), w.endsAt(), w.closed())));
        });
        open.sort(Comparator.comparing(DeskFacts.WindowOpen::endsAt));
        return open;
    }

    /** When the first window that runs on a held frame closes; a hold stops no clock. Null if none runs. */
    private static @Nullable Instant closes(FrameSheet.HoldLine hold, List<DeskFacts.WindowOpen> windows) {
        return windows.stream()
                .filter(w -> !w.closed() && w.serial().equals(hold.serial()))
                .map(DeskFacts.WindowOpen::endsAt)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    private static DeskFacts.HeldFrame held(
            FrameSheet.HoldLine h,
            List<FrameSheet.Head> heads,
            Map<Long, OnTheFloor.AtHandNow> atHand,
            Map<Long, Set<Long>> freed,
            Names seen) {
        OnTheFloor.AtHandNow free = heads.stream()
                .filter(head -> head.serial().equals(h.serial())
                        && (h.travellerId() == null || h.travellerId() == head.travellerId()))
                .map(head -> atHand.get(head.travellerId()))
                .filter(o -> o != null && mayBeFreed(h, o, freed))
                .findFirst()
                .orElse(null);
        return new DeskFacts.HeldFrame(
                h.holdId(),
                h.serial(),
                h.reason().word(),
                h.words(),
                h.source(),
                seen.at(h.placedBy(), h.placedAt()),
                h.placedAt(),
                h.reason().liftedBy(h.source()),
                h.source().startsWith("NC-"),
                resultAt(h.source()),
                free == null ? null : Long.valueOf(free.operationId()),
                free == null ? "" : free.code() + " " + free.name());
    }

    /** What a trace or a re-judgement holds is lifted by the result given there. */
    private static @Nullable String resultAt(String source) {
        if (source.startsWith("RJ-")) {
            return "/rejudgements/" + Long.valueOf(source.substring("RJ-".length()));
        }
        return source.startsWith("OT-") ? "/oven-traces/" + Long.valueOf(source.substring("OT-".length())) : null;
    }

    private static boolean mayBeFreed(FrameSheet.HoldLine h, OnTheFloor.AtHandNow o, Map<Long, Set<Long>> freed) {
        boolean about = h.scope() != HoldScope.OPERATION || o.operationId() == Objects.requireNonNull(h.operationId());
        return about
                && !o.irreversible()
                && o.state() != OperationState.AT_POINT
                && !freed.getOrDefault(h.holdId(), Set.of()).contains(o.operationId());
    }

    private static DeskFacts.PointToSign point(OnTheFloor.PointWaiting p, Person reader) {
        return new DeskFacts.PointToSign(
                p.operation().operationId(),
                p.head().serial(),
                p.head().part(),
                p.operation().code(),
                p.operation().name(),
                p.since(),
                p.missing().stream().map(Signer::word).collect(Collectors.joining(", ")),
                p.missing().contains(Signer.QA) && reader.is(Role.QA_LEAD));
    }
}
