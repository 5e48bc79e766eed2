package org.trammel.shop.nonconformance;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.CustomerErased;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** Keeps what people write about nonconformances where it can be erased, and erases what a customer told. */
@Component
class Wordings {

    private final WordingRepository wordings;
    private final Words words;
    private final ActLog log;

    Wordings(WordingRepository wordings, Words words, ActLog log) {
        this.wordings = wordings;
        this.words = words;
        this.log = log;
    }

    /** Keeps a text, if there is one, inside an act that is open. */
    void keep(Nonconformance n, Wording.About about, @Nullable String text) {
        if (text == null) {
            return;
        }
        WordsRef ref = words.keep(text);
        wordings.save(new Wording(n, about, ref));
        log.event(
                Chains.bearing(n.serial()),
                "words kept",
                Map.of("nonconformance", n.id(), "about", about.name(), "words", ref.id(), "sha256", ref.sha256()));
    }

    /** That the customer agreed stays on record; who it was and how is erased. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void erased(CustomerErased event) {
        words.eraseAll(
                event.act(),
                wordings.ofCustomer(event.serial()).stream()
                        .map(Wording::wordsId)
                        .toList());
    }
}
