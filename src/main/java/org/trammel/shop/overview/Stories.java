package org.trammel.shop.overview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.assembly.AssemblyStory;
import org.trammel.shop.coats.CoatHistory;
import org.trammel.shop.cuts.CutHistory;
import org.trammel.shop.handwork.HandHistory;
import org.trammel.shop.inspection.BlindAttempts;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.NonconformanceState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.FrameStories;
import org.trammel.shop.travellers.FrameStory;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.welding.WeldStories;

/** Puts a frame's story together from what each module keeps of it. */
@Component
class Stories {

    private final FrameStories frames;
    private final Readings readings;
    private final NonconformanceReads nonconformances;
    private final Lots lots;
    private final Orders orders;
    private final Names.Source names;
    private final ReadingWords words;
    private final Stations stations;
    private final Weighings weighings;
    private final Heats heats;
    private final AssemblyStory assembly;
    private final CoatHistory coats;
    private final WeldStories welds;
    private final HandHistory hands;
    private final CutHistory cuts;
    private final BlindAttempts attempts;

    Stories(
            FrameStories frames,
            Readings readings,
            NonconformanceReads nonconformances,
            Lots lots,
            Orders orders,
            Names.Source names,
            ReadingWords words,
            Stations stations,
            Weighings weighings,
            Heats heats,
            AssemblyStory assembly,
            CoatHistory coats,
            WeldStories welds,
            HandHistory hands,
            CutHistory cuts,
            BlindAttempts attempts) {
        this.frames = frames;
        this.readings = readings;
        this.nonconformances = nonconformances;
        this.lots = lots;
        this.orders = orders;
        this.names = names;
        this.words = words;
        this.stations = stations;
        this.weighings = weighings;
        this.heats = heats;
        this.assembly = assembly;
        this.coats = coats;
        this.welds = welds;
        this.hands = hands;
        this.cuts = cuts;
        this.attempts = attempts;
    }

    /** The story of a frame as this reader may see it. */
    @Transactional(readOnly = true)
    Story of(String serial, Person reader) {
        FrameStory told = frames.of(serial)
                .orElseThrow(() -> Refusal.missing(
                        "No frame was opened.",
                        "There is no traveller of " + serial + ".",
                        "Look it up under Frames by its number or its order."));
        Names seen = names.seenBy(reader);
        Places places = new Places(stations.all());
        FrameSheet.Head head = head(told);
        List<NonconformanceLine> found = nonconformances.of(serial);
        List<ReadingLine> read = readings.ofTravellers(
                told.travellers().stream().map(t -> t.head().travellerId()).toList());
        Map<Long, List<Story.ReadingOf>> readAt = readings(told, read, seen);
        List<Long> operations = told.travellers().stream()
                .flatMap(t -> t.operations().stream())
                .map(o -> o.line().operationId())
                .toList();
        Entries entries = new Entries(told, assembly.of(serial, operations), coats.of(operations), seen);
        entries.welds(welds.of(operations));
        entries.hands(hands.of(operations));
        entries.cuts(cuts.of(operations));
        entries.attempts(attempts(told, operations));
        List<Story.PartOf> parts = told.travellers().stream()
                .map(t -> new Story.PartOf(
                        t.head(),
                        t.operations().stream()
                                .map(o -> operation(o, readAt, entries, places))
                                .filter(o -> o.told() || t.head().state() != TravellerState.WITHDRAWN)
                                .toList()))
                .toList();
        List<Story.Entry> all = new ArrayList<>(entries.all());
        told.travellers()
                .forEach(t -> t.operations()
                        .forEach(o -> readAt.getOrDefault(o.line().operationId(), List.of())
                                .forEach(
                                        r -> all.add(entries.reading(r, o.line().operationId())))));
        found.forEach(n -> all.addAll(entries.nonconformance(n)));
        all.sort(Comparator.comparing(Story.Entry::at));
        return new Story(
                serial,
                head,
                head.orderId() == null ? null : orders.byId(head.orderId()),
                ways(told, places),
                told.holds().stream()
                        .filter(h -> h.liftedAt() == null)
                        .map(h -> new Story.HeldBy(
                                h.reason().word(),
                                h.words(),
                                h.source(),
                                seen.at(h.placedBy(), h.placedAt()),
                                h.placedAt(),
                                h.reason().liftedBy(h.source())))
                        .toList(),
                found.stream().map(n -> found(n, reader)).toList(),
                weighings.of(told, read),
                heats.clocks(told),
                heats.of(told),
                entries.at(Entries.NOWHERE),
                parts,
                all,
                lots.madeOf(serial),
                told.unconfirmed().stream()
                        .map(c -> new Story.Unconfirmed(
                                entries.place(c.operationId()),
                                seen.at(c.personId(), c.at()),
                                c.qualification(),
                                c.lapsedOn(),
                                seen.at(c.givenBy(), c.at()),
                                c.at(),
                                c.reason()))
                        .toList());
    }

    private static Story.Found found(NonconformanceLine n, Person reader) {
        boolean whole = reader.seesPersonalData();
        boolean standing = n.state() == NonconformanceState.DECIDED || n.state() == NonconformanceState.CLOSED;
        return new Story.Found(
                n.id(),
                n.number(),
                (n.part().isEmpty() ? "" : n.part() + " ") + n.operationCode(),
                n.words(),
                n.state().word(),
                n.decision() == null ? null : n.decision().word(),
                Entries.kind(n.decision()),
                n.decisionWords(),
                n.limits(),
                n.expiresOn(),
                n.agreed().stream()
                        .map(a -> whole ? a.name() + ", " + a.as().word() : a.as().word())
                        .toList(),
                whole ? n.customerAgreement() : null,
                standing && n.decision() == Decision.CONCESSION);
    }

    /** The whole frame's newest traveller that is not withdrawn. */
    private static FrameSheet.Head head(FrameStory told) {
        return told.travellers().stream()
                .map(FrameStory.Of::head)
                .filter(h -> h.part().isEmpty())
                .max(Comparator.comparing((FrameSheet.Head h) -> h.state() != TravellerState.WITHDRAWN)
                        .thenComparing(FrameSheet.Head::travellerId))
                .orElse(told.travellers().get(0).head());
    }

    /** As a value typed blind is kept back until the second has read, so is what was asked about. */
    private List<BlindAttempts.Told> attempts(FrameStory told, List<Long> operations) {
        Set<Long> blind = told.travellers().stream()
                .flatMap(t -> t.operations().stream())
                .flatMap(o -> o.characteristics().stream())
                .filter(FrameSheet.CharacteristicLine::blind)
                .map(FrameSheet.CharacteristicLine::characteristicId)
                .collect(Collectors.toSet());
        return attempts.of(operations).stream()
                .filter(one -> !blind.contains(one.characteristicId()))
                .toList();
    }

    private Map<Long, List<Story.ReadingOf>> readings(FrameStory told, List<ReadingLine> read, Names seen) {
        Map<Long, FrameSheet.CharacteristicLine> asked = new HashMap<>();
        told.travellers().stream()
                .flatMap(t -> t.operations().stream())
                .flatMap(o -> o.characteristics().stream())
                .forEach(c -> asked.put(c.characteristicId(), c));
        // A value typed blind by the first of two people is kept back until the second has read.
        return read.stream()
                .filter(r -> asked.get(r.characteristicId()) == null
                        || !asked.get(r.characteristicId()).blind())
                .collect(Collectors.groupingBy(
                        ReadingLine::operationId,
                        Collectors.mapping(
                                r -> words.of(r, asked.get(r.characteristicId()), seen), Collectors.toList())));
    }

    private Story.OperationOf operation(
            FrameStory.At o, Map<Long, List<Story.ReadingOf>> readAt, Entries entries, Places places) {
        return new Story.OperationOf(
                o.line(),
                Entries.called(o.line()),
                o.line().station().isEmpty() ? "" : places.name(o.line().station()),
                o.line().state() == OperationState.WAITING
                        ? "to come"
                        : o.line().state().word(),
                kind(o.line().state()),
                readAt.getOrDefault(o.line().operationId(), List.of()),
                entries.at(o.line().operationId()));
    }

    private static String kind(OperationState state) {
        return switch (state) {
            case WAITING -> "waiting";
            case IN_WORK, AWAY -> "in-work";
            case STOPPED -> "stopped";
            case AT_POINT -> "hold";
            case DONE -> "done";
            case REPEATED -> "rework";
        };
    }

    private List<Story.WayOf> ways(FrameStory told, Places places) {
        Set<Long> held = new HashSet<>();
        boolean all = told.holds().stream()
                .filter(h -> h.liftedAt() == null)
                .peek(h -> {
                    if (h.travellerId() != null) {
                        held.add(h.travellerId());
                    }
                })
                .anyMatch(h -> h.travellerId() == null && h.operationId() == null);
        Way way = new Way(places);
        return told.travellers().stream()
                .filter(t -> t.head().state() != TravellerState.WITHDRAWN)
                .map(t -> new Story.WayOf(
                        t.head().part(),
                        way.of(
                                t.operations().stream().map(FrameStory.At::line).toList(),
                                all
                                        || held.contains(t.head().travellerId())
                                        || t.operations().stream()
                                                .anyMatch(o -> Objects.equals(
                                                                o.line().operationId(),
                                                                t.head().currentOperationId())
                                                        && o.line().state() == OperationState.STOPPED))))
                .toList();
    }
}
