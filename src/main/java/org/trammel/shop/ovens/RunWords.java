package org.trammel.shop.ovens;

import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** Keeps what people write of a run, its doors, its quench and its frames, where it can be erased. */
@Component
class RunWords {

    private final Words words;
    private final ActLog log;

    RunWords(Words words, ActLog log) {
        this.words = words;
        this.log = log;
    }

    /** Keeps a text inside an act that is open; null where nothing was written. */
    @Nullable
    Long keep(String chain, long run, String about, @Nullable String text) {
        if (text == null || text.isEmpty()) {
            return null;
        }
        WordsRef ref = words.keep(text);
        log.event(chain, "words kept", Map.of("run", run, "about", about, "words", ref.id(), "sha256", ref.sha256()));
        return ref.id();
    }

    Map<Long, KeptWords> all(Collection<@Nullable Long> ids) {
        return words.findAll(ids.stream().filter(Objects::nonNull).toList());
    }

    static String shown(Map<Long, KeptWords> texts, @Nullable Long id) {
        KeptWords said = id == null ? null : texts.get(id);
        return said == null ? "" : said.shown();
    }
}
