package org.trammel.shop.inspection;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.SeenAs;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Words;

/** Puts the frames of a re-judgement together with what was said and who agreed, as far as whoever asks may read it. */
@Component
class RejudgedFrameLines {

    private static final String HIDDEN = "its words are kept from you";

    private final FrameDecisionRepository decisions;
    private final FrameAgreementRepository agreements;
    private final Words words;
    private final Crew crew;

    RejudgedFrameLines(FrameDecisionRepository decisions, FrameAgreementRepository agreements, Words words, Crew crew) {
        this.decisions = decisions;
        this.agreements = agreements;
        this.words = words;
        this.crew = crew;
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
        Map<Long, List<FrameAgreement>> agreed = standing.isEmpty()
                ? Map.of()
                : agreements
                        .findByDecisionIdInOrderById(standing.values().stream()
                                .map(FrameDecision::id)
                                .toList())
                        .stream()
                        .collect(Collectors.groupingBy(FrameAgreement::decisionId));
        Map<Long, KeptWords> texts = texts(frames, standing);
        Map<Long, String> names = standing.isEmpty() ? new HashMap<>() : crew.names();
        return frames.stream()
                .map(frame -> frame.line(
                        resultWords(frame, texts), decision(frame, standing.get(frame.serial()), agreed, texts, names)))
                .toList();
    }

    private Map<Long, KeptWords> texts(List<RejudgedFrame> frames, Map<String, FrameDecision> standing) {
        List<Long> ids = Stream.concat(
                        frames.stream().map(RejudgedFrame::resultWordsId),
                        standing.values().stream().flatMap(d -> Stream.of(d.wordsId(), d.customerWordsId())))
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        return ids.isEmpty() ? Map.of() : words.findAll(ids);
    }

    /** What was said to a customer tells about the customer. */
    private static @Nullable String resultWords(RejudgedFrame frame, Map<Long, KeptWords> texts) {
        return frame.result() == FrameResult.OWNER_CONTACTED && SeenAs.hidden()
                ? HIDDEN
                : shown(frame.resultWordsId(), texts);
    }

    private static @Nullable String shown(@Nullable Long id, Map<Long, KeptWords> texts) {
        KeptWords text = id == null ? null : texts.get(id);
        return text == null ? null : text.shown();
    }

    /** A decision is of interest while it waits and once it became the result; of one that did not, nobody asks. */
    private static RejudgedFrameLine.@Nullable Decided decision(
            RejudgedFrame frame,
            @Nullable FrameDecision decision,
            Map<Long, List<FrameAgreement>> agreed,
            Map<Long, KeptWords> texts,
            Map<Long, String> names) {
        if (decision == null || frame.result() != null && frame.result() != FrameResult.DECIDED) {
            return null;
        }
        String customer = shown(decision.customerWordsId(), texts);
        return new RejudgedFrameLine.Decided(
                decision.number(),
                Objects.requireNonNullElse(shown(decision.wordsId(), texts), ""),
                decision.changesWhatWasOrdered(),
                customer == null || !SeenAs.hidden() ? customer : HIDDEN,
                agreed.getOrDefault(decision.id(), List.of()).stream()
                        .map(a -> new RejudgedFrameLine.Agreed(
                                names.getOrDefault(a.said().personId(), "somebody"),
                                a.said().as(),
                                a.at()))
                        .toList());
    }
}
