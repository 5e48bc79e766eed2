package org.trammel.shop.backtraces;

import java.util.Map;
import java.util.stream.Stream;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.CustomerErased;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** Keeps what people write of a trace where it can be erased, and erases what a customer was told or said. */
@Component
class TraceWords {

    private final TracedFrameRepository frames;
    private final TraceDecisionRepository decisions;
    private final Words words;
    private final ActLog log;

    TraceWords(TracedFrameRepository frames, TraceDecisionRepository decisions, Words words, ActLog log) {
        this.frames = frames;
        this.decisions = decisions;
        this.words = words;
        this.log = log;
    }

    /** Keeps a text inside an act that is open. */
    WordsRef keep(String chain, long trace, String about, String text) {
        WordsRef ref = words.keep(text);
        log.event(
                chain, "words kept", Map.of("trace", trace, "about", about, "words", ref.id(), "sha256", ref.sha256()));
        return ref;
    }

    /** That the owner was told or agreed stays on record; who it was and what was said is erased. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void erased(CustomerErased event) {
        words.eraseAll(
                event.act(),
                Stream.concat(
                                frames.toldOf(event.serial()).stream(),
                                decisions.customerWordsOf(event.serial()).stream())
                        .toList());
    }
}
