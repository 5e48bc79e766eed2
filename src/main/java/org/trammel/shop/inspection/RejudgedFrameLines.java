package org.trammel.shop.inspection;

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

/** Puts the frames of a re-judgement together with what was said and who agreed, as far as whoever asks may read it. */
@Component
class RejudgedFrameLines {

    private final FrameDecisionRepository decisions;
    private final FrameAgreementRepository agreements;
    private final DecisionLines lines;
    private final Words words;

    RejudgedFrameLines(
            FrameDecisionRepository decisions, FrameAgreementRepository agreements, DecisionLines lines, Words words) {
        this.decisions = decisions;
        this.agreements = agreements;
        this.lines = lines;
        this.words = words;
    }

    /** A fixed number of statements, however many there are. */
    List<RejudgedFrameLine> of(long rejudgement, List<RejudgedFrame> frames) {
        List<String> doubtful = frames.stream()
                .filter(frame -> frame.outcome() != FrameOutcome.CLEARED)
                .map(RejudgedFrame::serial)
                .toList();
        if (doubtful.isEmpty()) {
            return frames.stream().map(frame -> frame.line(null, null)).toList();
        }
        Map<String, FrameDecision> standing =
                decisions.findByRejudgementIdAndSerialInOrderByNumber(rejudgement, doubtful).stream()
                        .collect(Collectors.toMap(FrameDecision::serial, Function.identity(), (older, newer) -> newer));
        Map<Long, StaysAsItIs> decided = standing.isEmpty()
                ? Map.of()
                : lines.of(
                        standing.values(),
                        agreements.findByDecisionIdInOrderById(standing.values().stream()
                                .map(FrameDecision::id)
                                .toList()));
        Map<Long, KeptWords> texts = words.findAll(frames.stream()
                .map(RejudgedFrame::resultWordsId)
                .filter(Objects::nonNull)
                .toList());
        return frames.stream()
                .map(frame ->
                        frame.line(resultWords(frame, texts), decision(frame, standing.get(frame.serial()), decided)))
                .toList();
    }

    /** What was said to a customer tells about the customer. */
    private static @Nullable String resultWords(RejudgedFrame frame, Map<Long, KeptWords> texts) {
        if (frame.result() == FrameResult.OWNER_CONTACTED && SeenAs.hidden()) {
            return DecisionLines.HIDDEN;
        }
        KeptWords text = frame.resultWordsId() == null ? null : texts.get(frame.resultWordsId());
        return text == null ? null : text.shown();
    }

    /** A decision is of interest while it waits and once it became the result; of one that did not, nobody asks. */
    private static @Nullable StaysAsItIs decision(
            RejudgedFrame frame, @Nullable FrameDecision decision, Map<Long, StaysAsItIs> decided) {
        return decision == null || frame.result() != null && frame.result() != FrameResult.DECIDED
                ? null
                : decided.get(decision.id());
    }
}
