package org.trammel.shop.backtraces;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.DecisionLines;
import org.trammel.shop.people.SeenAs;
import org.trammel.shop.people.StaysAsItIs;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Words;

/** Reads what was said of the frames of a trace and who agreed, as far as whoever asks may read it. */
@Component
class TraceDecisions {

    private final TraceDecisionRepository decisions;
    private final TraceAgreementRepository agreements;
    private final DecisionLines lines;
    private final Words words;

    TraceDecisions(
            TraceDecisionRepository decisions, TraceAgreementRepository agreements, DecisionLines lines, Words words) {
        this.decisions = decisions;
        this.agreements = agreements;
        this.lines = lines;
        this.words = words;
    }

    /** @param decided null unless it waits for agreement or became the result */
    record Told(@Nullable String resultWords, @Nullable StaysAsItIs decided) {}

    /** A fixed number of statements, however many there are; by the id of the frame's row. */
    Map<Long, Told> of(List<TracedFrameRow> frames) {
        if (frames.isEmpty()) {
            return Map.of();
        }
        Map<Long, TraceDecisionRow> standing =
                decisions
                        .findByFrameIdInOrderByNumber(
                                frames.stream().map(TracedFrameRow::id).toList())
                        .stream()
                        .collect(Collectors.toMap(
                                TraceDecisionRow::frameId, Function.identity(), (older, newer) -> newer));
        Map<Long, StaysAsItIs> decided = standing.isEmpty()
                ? Map.of()
                : lines.of(
                        standing.values(),
                        agreements.findByDecisionIdInOrderById(standing.values().stream()
                                .map(TraceDecisionRow::id)
                                .toList()));
        Map<Long, KeptWords> texts = words.findAll(frames.stream()
                .map(TracedFrameRow::resultWordsId)
                .filter(Objects::nonNull)
                .toList());
        Map<Long, Told> told = new HashMap<>();
        frames.forEach(frame -> told.put(
                frame.id(), new Told(resultWords(frame, texts), decision(frame, standing.get(frame.id()), decided))));
        return told;
    }

    /** What was said to a customer tells about the customer. */
    private static @Nullable String resultWords(TracedFrameRow frame, Map<Long, KeptWords> texts) {
        if (frame.result() == TraceResult.OWNER_CONTACTED && SeenAs.hidden()) {
            return DecisionLines.HIDDEN;
        }
        KeptWords text = frame.resultWordsId() == null ? null : texts.get(frame.resultWordsId());
        return text == null ? null : text.shown();
    }

    private static @Nullable StaysAsItIs decision(
            TracedFrameRow frame, @Nullable TraceDecisionRow decision, Map<Long, StaysAsItIs> decided) {
        return decision == null || frame.result() != null && frame.result() != TraceResult.DECIDED
                ? null
                : decided.get(decision.id());
    }
}
