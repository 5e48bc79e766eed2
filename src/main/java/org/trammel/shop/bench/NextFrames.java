package org.trammel.shop.bench;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.handwork.ProofSheet;
import org.trammel.shop.handwork.ProofSheets;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.AtHand;
import org.trammel.shop.travellers.ClockState;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.web.Formats;

/** Lays out the list of a tablet. */
@Component
class NextFrames {

    private final AtHand atHand;
    private final Stations stations;
    private final Words words;
    private final Formats formats;
    private final ProofSheets proofs;
    private final Clock clock;

    NextFrames(AtHand atHand, Stations stations, Words words, Formats formats, ProofSheets proofs, Clock clock) {
        this.proofs = proofs;
        this.atHand = atHand;
        this.stations = stations;
        this.words = words;
        this.formats = formats;
        this.clock = clock;
    }

    /**
     * The list for whoever looks at it.
     *
     * @param chosen code of one station; null for all the tablet serves, at a desk for all there are
     */
    NextView of(SignedOn who, @Nullable String chosen) {
        boolean own = who.tablet() && !who.stations().isEmpty();
        List<Station> offered = own ? List.of() : stations.all();
        List<String> looked = chosen != null
                ? List.of(chosen)
                : own ? who.stations() : offered.stream().map(Station::code).toList();
        List<AtHand.Line> lines = atHand.at(looked);
        String heading = looked.size() == offered.size() && !own
                ? "All stations"
                : looked.stream().map(formats::station).collect(Collectors.joining(", "));
        return new NextView(
                heading,
                offered.stream()
                        .map(s ->
                                new NextView.Choice(s.code(), s.name(), s.code().equals(chosen)))
                        .toList(),
                batches(lines),
                lines.stream().sorted(pressing()).map(this::row).toList());
    }

    /**
     * What a window closes soonest first, held or not: a hold stops no clock, and somebody has to lift or free it in
     * time. Then begun work, then the longest released; then held frames whose clock does not run, alike, and last what
     * is not there yet because its parts are worked on elsewhere.
     */
    private static Comparator<AtHand.Line> pressing() {
        return Comparator.comparing(AtHand.Line::partsToCome)
                .thenComparing(NextFrames::closes, Comparator.nullsLast(Comparator.<Instant>naturalOrder()))
                .thenComparing(line -> !line.holds().isEmpty())
                .thenComparing(line -> line.operation().state() == OperationState.WAITING);
    }

    private static @Nullable Instant closes(AtHand.Line line) {
        return line.clocks().stream()
                .filter(c -> c.kind() == ClockKind.WINDOW && c.state() == ClockState.RUNNING)
                .map(c -> c.endsAt())
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    private NextView.Row row(AtHand.Line line) {
        Instant now = clock.instant();
        return new NextView.Row(
                line.head(),
                Words.called(line.operation()) + " " + line.operation().name(),
                formats.station(line.operation().station()),
                line.next() == null ? "" : line.next().text(),
                line.partsToCome()
                        ? "not there yet: its parts are in work"
                        : line.operation().state().word(),
                words.mark(line.operation().state()),
                line.clocks().stream()
                        .filter(c -> !c.closedAt(now)
                                || c.gates().contains(line.operation().code()))
                        .map(c -> words.clock(c, now))
                        .filter(Objects::nonNull)
                        .toList(),
                line.holds().isEmpty()
                        ? null
                        : line.holds().stream().map(HoldReason::word).collect(Collectors.joining(", ")),
                line.ahead().stream()
                        .map(reason -> "hold further on: " + reason.word())
                        .toList());
    }

    private List<NextView.Batch> batches(List<AtHand.Line> lines) {
        Map<String, List<AtHand.Line>> alike = lines.stream()
                .filter(NextFrames::tickedTogether)
                .collect(Collectors.groupingBy(
                        line -> line.operation().station() + " " + family(line) + " "
                                + line.operation().code() + " "
                                + Objects.requireNonNull(line.next()).text(),
                        LinkedHashMap::new,
                        Collectors.toList()));
        List<NextView.Batch> batches = new ArrayList<>();
        alike.values().stream().filter(group -> group.size() > 1).forEach(group -> {
            AtHand.Line first = group.get(0);
            batches.add(new NextView.Batch(
                    "b" + batches.size(),
                    Words.called(first.operation()) + " " + first.operation().name(),
                    formats.station(first.operation().station()),
                    Objects.requireNonNull(first.next()).text(),
                    first.next().lotKind(),
                    proof(group),
                    group.stream()
                            .map(line -> new NextView.Member(
                                    line.head(),
                                    Objects.requireNonNull(line.next()).stepId()))
                            .toList()));
        });
        return batches;
    }

    /** What touched one metal is not handed to another: those of one step that rests on more than its tick are of one family. */
    private static String family(AtHand.Line line) {
        return Objects.requireNonNull(line.next()).proof() == null
                ? ""
                : MetalFamily.of(line.head().metal()).name();
    }

    /** Of the first that still lacks it: the others are done by the same hands with the same tools. */
    private @Nullable ProofSheet proof(List<AtHand.Line> group) {
        return group.stream()
                .flatMap(line -> proofs.of(line.head(), line.operation(), line.next()).stream())
                .findFirst()
                .orElse(null);
    }

    private static boolean tickedTogether(AtHand.Line line) {
        boolean open = line.operation().state() == OperationState.WAITING
                || line.operation().state() == OperationState.IN_WORK;
        return line.together()
                && !line.partsToCome()
                && open
                && line.next() != null
                && !line.next().photo()
                && line.next().proof() != Proof.SERIAL_READ
                && line.holds().isEmpty();
    }
}
