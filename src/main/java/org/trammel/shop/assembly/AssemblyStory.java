package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.web.Formats;

/** What of a frame's story was recorded here, each thing in a sentence; a fixed number of statements however much it is. */
@Service
@Transactional(readOnly = true)
public class AssemblyStory {

    private final FrameComponents components;
    private final TorqueRepository torques;
    private final WitnessRepository witnesses;
    private final InsertionRepository insertions;
    private final JoinRepository joins;
    private final BeddingRepository beddings;
    private final RideRepository rides;
    private final CountryTickRepository ticks;
    private final PackRepository packs;
    private final Formats formats;

    AssemblyStory(
            FrameComponents components,
            TorqueRepository torques,
            WitnessRepository witnesses,
            InsertionRepository insertions,
            JoinRepository joins,
            BeddingRepository beddings,
            RideRepository rides,
            CountryTickRepository ticks,
            PackRepository packs,
            Formats formats) {
        this.components = components;
        this.torques = torques;
        this.witnesses = witnesses;
        this.insertions = insertions;
        this.joins = joins;
        this.beddings = beddings;
        this.rides = rides;
        this.ticks = ticks;
        this.packs = packs;
        this.formats = formats;
    }

    /**
     * Something that happened.
     *
     * @param mark kind of the mark beside it; empty for none
     * @param more words somebody wrote with it
     */
    public record Told(
            @Nullable Long operationId,
            Instant at,
            String mark,
            String what,
            long by,
            @Nullable String more) {}

    /** Everything of a frame, oldest first. */
    public List<Told> of(String serial, Collection<Long> operationIds) {
        List<Told> told = new ArrayList<>();
        Map<TorqueRow.Key, String> names = new LinkedHashMap<>();
        List<FramePart> parts = components.everOf(serial);
        for (FramePart part : parts) {
            part.component()
                    .fasteners()
                    .forEach(f -> names.put(new TorqueRow.Key(part.id(), f.id()), f.name() + " of " + part.called()));
            told.add(new Told(null, part.givenAt(), "", "component given: " + named(part), part.givenBy(), null));
            if (part.removedAt() != null && part.removedBy() != null) {
                told.add(new Told(
                        null,
                        part.removedAt(),
                        "",
                        "component taken off: " + named(part),
                        part.removedBy(),
                        part.removedWords()));
            }
        }
        if (!names.isEmpty()) {
            torques(operationIds, names, told);
            witnesses
                    .findByOperationIdInOrderById(operationIds)
                    .forEach(row -> told.add(new Told(
                            row.operationId(),
                            row.at(),
                            "done",
                            "witnessed: " + names.getOrDefault(row.key(), "a fastener"),
                            row.personId(),
                            null)));
        }
        if (parts.stream().anyMatch(part -> part.component().leastInsertion_mm() != null)) {
            insertions
                    .findByOperationIdInOrderById(operationIds)
                    .forEach(row -> told.add(new Told(
                            row.operationId(),
                            row.at(),
                            row.inserted_mm().compareTo(row.least_mm()) >= 0 ? "done" : "not-conforming",
                            "seatpost in by " + bare(row.inserted_mm()) + " mm, " + bare(row.least_mm())
                                    + " mm at least by its own sheet",
                            row.by(),
                            null)));
        }
        builds(operationIds, told);
        return told;
    }

    private static String named(FramePart part) {
        return part.called() + ", " + part.component().called();
    }

    /** A line for each round of a fastener, at its last bolt. */
    private void torques(Collection<Long> operationIds, Map<TorqueRow.Key, String> names, List<Told> told) {
        record Round(long operationId, TorqueRow.Key key, int round) {}
        Map<Round, List<Bolt>> rounds = torques.findByOperationIdInOrderById(operationIds).stream()
                .collect(Collectors.groupingBy(
                        row -> new Round(
                                row.operationId(), row.key(), row.bolt().round()),
                        LinkedHashMap::new,
                        Collectors.mapping(TorqueRow::bolt, Collectors.toList())));
        rounds.forEach((round, bolts) -> {
            Bolt last = bolts.get(bolts.size() - 1);
            told.add(new Told(
                    round.operationId(),
                    last.at(),
                    last.verdict().mark(),
                    "torqued: " + names.getOrDefault(round.key(), "a fastener") + ", " + bolts.size()
                            + (bolts.size() == 1 ? " bolt" : " bolts, pass by pass") + ", " + bare(last.reached_Nm())
                            + " N·m with " + last.gauge() + ", " + bare(last.least_Nm()) + " to "
                            + bare(last.most_Nm()) + " allowed: "
                            + last.verdict().word(),
                    last.by(),
                    last.nonconformance()));
        });
    }

    private void builds(Collection<Long> operationIds, List<Told> told) {
        joins.findByOperationIdInOrderById(operationIds).forEach(row -> {
            BuildRecord.Joined joined = row.joined();
            told.add(new Told(
                    row.operationId(),
                    row.at(),
                    "done",
                    "joined: " + String.join(", ", joined.parts()) + "; wheel off by "
                            + formats.number(joined.rss_mm(), 2) + " mm (root of the squares), "
                            + bare(joined.worst_mm()) + " mm at worst",
                    row.by(),
                    joined.words()));
        });
        beddings.findByOperationIdInOrderById(operationIds).forEach(row -> {
            BuildRecord.Bedded bedded = row.bedded();
            told.add(new Told(
                    row.operationId(),
                    row.at(),
                    bedded.enough() ? "done" : "not-conforming",
                    bedded.brake().word() + " bedded: " + bedded.stops() + " stops from " + bare(bedded.kmh())
                            + " km/h, " + bedded.askedStops() + " asked",
                    row.by(),
                    null));
        });
        rides.findByOperationIdInOrderById(operationIds).forEach(row -> {
            BuildRecord.Ridden ridden = row.ridden();
            told.add(new Told(
                    row.operationId(),
                    row.at(),
                    ridden.good() ? "done" : "not-conforming",
                    ridden.good() ? "ridden" : "ridden, not good",
                    ridden.rider(),
                    ridden.words()));
        });
        ticks.findByOperationIdInOrderById(operationIds)
                .forEach(row -> told.add(new Told(
                        row.operationId(),
                        row.at(),
                        row.item().there() ? "done" : "",
                        (row.item().there() ? "there, as the country asks: " : "taken back: ")
                                + row.item().item(),
                        row.by(),
                        null)));
        packs.findByOperationIdInOrderById(operationIds)
                .forEach(row -> told.add(new Told(
                        row.operationId(),
                        row.at(),
                        "done",
                        "packed: frame, box and paper bear " + row.packed().serial(),
                        row.by(),
                        null)));
    }

    private String bare(BigDecimal figure) {
        return formats.number(figure.stripTrailingZeros());
    }
}
