package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.fastening.StackUp;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/** Records joins, brakes bedded, rides, what a country asks for, and packing. What is not as asked is kept and opens nothing. */
@Service
public class Builds {

    private static final int MOST_STOPS = 500;

    private final JoinRepository joins;
    private final BeddingRepository beddings;
    private final RideRepository rides;
    private final CountryTickRepository ticks;
    private final PackRepository packs;
    private final BuildRecords records;
    private final BuildTurn turn;
    private final Travellers travellers;
    private final Crew crew;
    private final ActLog log;

    Builds(
            JoinRepository joins,
            BeddingRepository beddings,
            RideRepository rides,
            CountryTickRepository ticks,
            PackRepository packs,
            BuildRecords records,
            BuildTurn turn,
            Travellers travellers,
            Crew crew,
            ActLog log) {
        this.joins = joins;
        this.beddings = beddings;
        this.rides = rides;
        this.ticks = ticks;
        this.packs = packs;
        this.records = records;
        this.turn = turn;
        this.travellers = travellers;
        this.crew = crew;
        this.log = log;
    }

    /** What stands at an operation that the rules name. */
    @Transactional(readOnly = true)
    public BuildRecord of(long operationId) {
        return read(turn.of(operationId));
    }

    /** What the record of a build lacks, whether or not it stands at its packing. */
    @Transactional(readOnly = true)
    public List<String> lacks(FrameSheet.Head head) {
        return records.lacks(head);
    }

    private BuildRecord read(BuildTurn.At at) {
        return records.of(at.head(), at.line().operationId(), at.line().code(), at.rules());
    }

    /**
     * Joins the parts that were scanned to the frame.
     *
     * @param scanned tag of each part, as it hangs on it
     * @param shares by tolerance, or as they were read of these parts
     * @param words how it moves and whether anything touches over the whole travel
     */
    @Transactional
    public BuildRecord join(
            Act act, long operationId, List<String> scanned, OffsetShares shares, @Nullable String words) {
        String deed = "The parts were not joined.";
        if (!turn.opens(act, "join-parts", operationId)) {
            return of(operationId);
        }
        BuildTurn.At at = turn.atHand(act, operationId, deed);
        turn.require(at.rules().joins(at.line().code()), at, deed);
        Set<String> tags = new TreeSet<>();
        scanned.stream().filter(tag -> !tag.isBlank()).forEach(tag -> tags.add(part(at.head(), tag, deed)));
        List<FrameSheet.Head> wanted = records.children(at.head());
        wanted.stream().filter(child -> !tags.contains(child.tag())).findFirst().ifPresent(child -> {
            throw Refusal.input(
                    "parts",
                    deed,
                    child.mark() + " belongs to it and was not scanned.",
                    "Scan the tag of every part: " + String.join(", ", records.parts(at.head())) + ".");
        });
        // A hold of a part covers the frame too; the parts are named first.
        requireReady(wanted, deed);
        turn.requireFree(operationId);
        OffsetShares read = shares.checked(deed);
        StackUp stack = read.stack();
        joins.saveAndFlush(new JoinRow(
                operationId,
                List.copyOf(tags),
                read,
                stack,
                TypedText.line("words", "How it moves", deed, words, 200),
                act));
        return told(act, at, "parts-joined", Map.of("parts", List.copyOf(tags)));
    }

    /** The tag of a part of this frame; a whole frame, or a part of another one, is refused. */
    private String part(FrameSheet.Head whole, String tag, String deed) {
        if (!(SerialNumber.read(tag) instanceof SerialNumber.Result.Whole read)) {
            throw Refusal.input("parts", deed, "“" + tag + "” is no whole serial.", "Scan the tag on the part.");
        }
        String frame = read.serial().frame().stored();
        if (!frame.equals(whole.serial())) {
            throw Refusal.input(
                    "parts",
                    deed,
                    read.serial().tag() + " belongs to another frame than " + whole.mark() + ".",
                    "Take the part of this order; the two were measured for each other.");
        }
        return records.children(whole).stream()
                .map(FrameSheet.Head::tag)
                .filter(one -> SerialNumber.read(one) instanceof SerialNumber.Result.Whole child
                        && child.serial().equals(read.serial()))
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "parts",
                        deed,
                        read.serial().tag() + " is the frame itself, or no part of it in force.",
                        "Scan the tag on the front triangle and that on the swing arm."));
    }

    /** Every part that is not ready, with what it waits for: whoever stands there sees at once whether it is worth waiting. */
    private void requireReady(List<FrameSheet.Head> children, String deed) {
        List<String> open = new ArrayList<>();
        for (FrameSheet.Head child : children) {
            String holds = travellers.sheet(child.travellerId()).holds().stream()
                    .map(hold -> "on hold, " + hold.reason().word() + ": " + hold.words())
                    .distinct()
                    .collect(Collectors.joining("; "));
            if (child.state() != TravellerState.FINISHED) {
                open.add(child.mark() + " is " + child.state().word() + (holds.isEmpty() ? "" : " and " + holds));
            } else if (!holds.isEmpty()) {
                open.add(child.mark() + " is " + holds);
            }
        }
        if (!open.isEmpty()) {
            throw Refusal.state(
                    deed,
                    String.join(". ", open) + ".",
                    "Finish it first, and leave both where they are until holds are lifted.");
        }
    }

    /**
     * A brake bedded.
     *
     * @param askedStops by the sheet of its pads; null for what the rules say, below which only the QA lead goes
     * @param source the sheet that asks otherwise than the rules, and why it holds
     * @param clear whether the lever stays clear of the bar at full pull
     */
    public record Bedding(
            BuildRecord.@Nullable Brake brake,
            int stops,
            @Nullable BigDecimal kmh,
            @Nullable Integer askedStops,
            @Nullable BigDecimal asked_kmh,
            @Nullable String source,
            boolean clear) {}

    @Transactional
    public BuildRecord bed(Act act, long operationId, Bedding entry) {
        String deed = "The brake was not recorded.";
        if (!turn.opens(act, "bed-brake", operationId)) {
            return of(operationId);
        }
        BuildTurn.At at = turn.atHandAndFree(act, operationId, deed);
        turn.require(at.rules().rides(at.line().code()), at, deed);
        if (entry.brake() == null) {
            throw Refusal.input("brake", deed, "It is not said which brake.", "Choose front or rear.");
        }
        NewBuildRules rules = at.rules().content();
        int asked = entry.askedStops() == null ? rules.beddingStops() : entry.askedStops();
        requireStops("stops", deed, entry.stops());
        requireStops("askedStops", deed, asked);
        BigDecimal asked_kmh = NewBuildRules.speed(
                "askedKmh", deed, entry.asked_kmh() == null ? rules.bedding_kmh() : entry.asked_kmh());
        requireNoLess(act, at.rules(), asked, asked_kmh, deed);
        boolean own = entry.askedStops() != null || entry.asked_kmh() != null;
        String source = own
                ? TypedText.line("source", "The sheet of the pads", deed, entry.source(), 200)
                : "rules " + at.rules().letter();
        beddings.saveAndFlush(new BeddingRow(
                operationId,
                new BuildRecord.Bedded(
                        entry.brake(),
                        entry.stops(),
                        NewBuildRules.speed("kmh", deed, entry.kmh()),
                        asked,
                        asked_kmh,
                        source,
                        entry.clear(),
                        act.by(),
                        act.at()),
                act));
        return told(act, at, "brake-bedded", Map.of("brake", entry.brake().name(), "stops", entry.stops()));
    }

    /** Fewer or slower stops than the rules ask for, by whatever sheet, are the QA lead's to take. */
    private void requireNoLess(Act act, BuildRules rules, int asked, BigDecimal asked_kmh, String deed) {
        NewBuildRules content = rules.content();
        boolean less = asked < content.beddingStops()
                || asked_kmh.compareTo(java.util.Objects.requireNonNull(content.bedding_kmh())) < 0;
        if (less && !crew.byId(act.by()).is(Role.QA_LEAD)) {
            throw Refusal.person(
                    deed,
                    asked + " stops from " + NewFastener.plain(asked_kmh) + " km/h are less than rules "
                            + rules.letter() + " ask for: " + content.beddingStops() + " from "
                            + NewFastener.plain(content.bedding_kmh()) + " km/h.",
                    "Bed it as the rules ask, or the QA lead enters it with the sheet that asks for less.");
        }
    }

    private static void requireStops(String field, String deed, int stops) {
        if (stops < 1 || stops > MOST_STOPS) {
            throw Refusal.input(
                    field, deed, stops + " stops do not lie within 1 and " + MOST_STOPS + ".", "Count them.");
        }
    }

    /**
     * Somebody rode it, once both brakes are bedded. The caller has checked the rider's own PIN at this moment.
     *
     * @param words what was felt and heard
     */
    @Transactional
    public BuildRecord ride(Act act, long operationId, long riderId, boolean good, @Nullable String words) {
        String deed = "The ride was not recorded.";
        if (!turn.opens(act, "ride", operationId)) {
            return of(operationId);
        }
        BuildTurn.At at = turn.atHandAndFree(act, operationId, deed);
        turn.require(at.rules().rides(at.line().code()), at, deed);
        Person rider = crew.byId(riderId);
        if (!rider.active() || !rider.maySign()) {
            throw Refusal.person(deed, rider.name() + " may not sign for a ride.", "Somebody who signs for it rides.");
        }
        BuildRecord record = read(at);
        if (!enough(record.front()) || !enough(record.rear())) {
            throw Refusal.state(
                    deed,
                    "Its brakes are not both bedded as asked, with the lever clear of the bar.",
                    "Bed the brakes first, not on public roads.");
        }
        rides.saveAndFlush(
                new RideRow(operationId, riderId, good, TypedText.line("words", "How it went", deed, words, 400), act));
        return told(act, at, "ridden", Map.of("rider", riderId, "good", good));
    }

    static boolean enough(BuildRecord.@Nullable Bedded bedded) {
        return bedded != null && bedded.enough();
    }

    /** Ticks a thing that the country of the order asks for, or takes the tick back. */
    @Transactional
    public BuildRecord item(Act act, long operationId, @Nullable String item, boolean there) {
        String deed = "It was not ticked.";
        if (!turn.opens(act, "country-item", operationId)) {
            return of(operationId);
        }
        BuildTurn.At at = turn.atHand(act, operationId, deed);
        String country = records.country(at.head());
        if (item == null
                || !at.rules().rides(at.line().code())
                || !at.rules().itemsIn(country).contains(item)) {
            throw Refusal.input(
                    "item",
                    deed,
                    "The rules ask for no such thing in " + (country.isEmpty() ? "any country" : country) + ".",
                    "Choose from the list.");
        }
        ticks.saveAndFlush(new CountryTickRow(operationId, item, there, act));
        return told(act, at, there ? "country-item-there" : "country-item-taken-back", Map.of("item", item));
    }

    /** Frame, box and paper, each scanned: they bear one serial and the record of the build is whole, or nothing is packed. */
    @Transactional
    public BuildRecord pack(Act act, long operationId, String frame, String box, String paper) {
        String deed = "It was not packed.";
        if (!turn.opens(act, "pack", operationId)) {
            return of(operationId);
        }
        BuildTurn.At at = turn.atHandAndFree(act, operationId, deed);
        turn.require(at.rules().packs(at.line().code()), at, deed);
        Stream.of(Map.entry("frame", frame), Map.entry("box", box), Map.entry("paper", paper))
                .forEach(scan -> requireSame(at.head(), scan.getKey(), scan.getValue(), deed));
        BuildGuard.notWhole(read(at), deed).ifPresent(lacks -> {
            throw lacks;
        });
        packs.saveAndFlush(new PackRow(operationId, at.head().serial(), act));
        return told(act, at, "packed", Map.of());
    }

    private static void requireSame(FrameSheet.Head head, String field, String scanned, String deed) {
        if (!(SerialNumber.read(scanned) instanceof SerialNumber.Result.Whole read)
                || !read.serial().stored().equals(head.serial())) {
            throw Refusal.input(
                    field,
                    deed,
                    (scanned.isBlank() ? "The " + field + " was not scanned" : "The " + field + " says " + scanned)
                            + "; the frame of this sheet is " + head.serial() + ".",
                    "Look at all three, and scan each as it lies there.");
        }
    }

    private BuildRecord told(Act act, BuildTurn.At at, String what, Map<String, ?> facts) {
        Map<String, Object> all = new java.util.HashMap<>(facts);
        all.put("operation", at.line().operationId());
        log.event(Chains.bearing(at.head().serial()), what, all);
        turn.come(act, at.line().operationId());
        return read(at);
    }
}
