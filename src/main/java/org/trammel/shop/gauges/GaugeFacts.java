package org.trammel.shop.gauges;

import java.util.HashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** What the log says of a gauge: ids and hashes, the words beside it so that they can be erased. */
@Component
class GaugeFacts {

    private final Words words;

    GaugeFacts(Words words) {
        this.words = words;
    }

    static Map<String, Object> of(GaugeRow row) {
        Map<String, Object> facts = new HashMap<>();
        facts.put("gauge", row.id());
        facts.put("code", row.code());
        facts.put("state", row.state().name());
        return facts;
    }

    Map<String, Object> with(Map<String, Object> facts, String why) {
        WordsRef ref = words.keep(why);
        facts.put("words", ref.id());
        facts.put("sha256", ref.sha256());
        return facts;
    }
}
