package org.trammel.shop.coats;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;

/** Reads how the film of a second colour stands on a frame. What was recorded before it was stripped has gone with the coat. */
@Component
@Transactional(readOnly = true)
class LineRecords {

    private final LineRepository rows;
    private final StripRepository strips;
    private final Travellers travellers;
    private final Evidence evidence;

    LineRecords(LineRepository rows, StripRepository strips, Travellers travellers, Evidence evidence) {
        this.rows = rows;
        this.strips = strips;
        this.travellers = travellers;
        this.evidence = evidence;
    }

    /** What the last operation about film before one of them did. */
    enum Before {
        LAID,
        DRAWN,
        NOTHING
    }

    FilmLines of(long travellerId, long operationId, SecondColour asked, Finish finish) {
        Set<Long> all = new HashSet<>();
        operations(travellerId).forEach(line -> all.add(line.operationId()));
        // Under an older revision it was another traveller.
        Stream.of(finish.content().coatOperations(), asked.layOperations(), asked.drawOperations())
                .flatMap(List::stream)
                .forEach(code -> all.addAll(evidence.operationsOf(travellerId, code)));
        Instant stripped = strips.findByOperationIdInOrderById(all).stream()
                .map(row -> row.strip().at())
                .reduce((before, after) -> after)
                .orElse(Instant.EPOCH);
        Map<String, MaskLine> newest = new HashMap<>();
        rows.findByOperationIdInOrderById(all).stream()
                .map(LineRow::line)
                .filter(line -> line.at().isAfter(stripped))
                .forEach(line -> newest.put(line.name(), line));
        Instant sprayed = sprayed(travellerId, operationId, finish);
        return new FilmLines(
                asked.lines().stream()
                        .map(name -> new FilmLines.Line(name, newest.get(name)))
                        .toList(),
                sprayed,
                sprayed == null || asked.most_min() == null
                        ? null
                        : sprayed.plus(Duration.ofMinutes(Objects.requireNonNull(asked.most_min()))));
    }

    /** When the last coat before an operation in which film is drawn off was sprayed, at the earliest. */
    private @Nullable Instant sprayed(long travellerId, long operationId, Finish finish) {
        boolean draws = finish.draws(travellers.operation(operationId).line().code());
        return !draws
                ? null
                : before(travellerId, operationId).stream()
                        .filter(line -> finish.coats(line.code()))
                        .reduce((a, b) -> b)
                        .flatMap(coat -> Stream.concat(
                                        travellers.operation(coat.operationId()).steps().stream()
                                                .filter(step -> step.irreversible() && step.ticked())
                                                .map(FrameSheet.StepLine::tickedAt),
                                        evidence.clocks(travellerId).stream()
                                                .filter(clock ->
                                                        clock.startedBy().equals(coat.code()))
                                                .map(ClockView::startedAt))
                                .filter(Objects::nonNull)
                                .min(Instant::compareTo))
                        .orElse(null);
    }

    /** Which of the operations about film came last before a coat. */
    Before before(long travellerId, long operationId, Finish finish) {
        return before(travellerId, operationId).stream()
                .filter(line -> finish.lays(line.code()) || finish.draws(line.code()))
                .reduce((a, b) -> b)
                .map(line -> finish.lays(line.code()) ? Before.LAID : Before.DRAWN)
                .orElse(Before.NOTHING);
    }

    private List<FrameSheet.OperationLine> before(long travellerId, long operationId) {
        return operations(travellerId).stream()
                .filter(line -> line.state() != OperationState.REPEATED)
                .takeWhile(line -> line.operationId() != operationId)
                .toList();
    }

    private List<FrameSheet.OperationLine> operations(long travellerId) {
        return travellers.strips(Set.of(travellerId)).getOrDefault(travellerId, List.of());
    }
}
