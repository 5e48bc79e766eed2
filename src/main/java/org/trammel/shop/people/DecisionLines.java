package org.trammel.shop.people;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Words;

/** Puts what was put forward together with what was said and who agreed, as far as whoever asks may read it. */
@Component
public class DecisionLines {

    /** In the place of what tells about a customer. */
    public static final String HIDDEN = "its words are kept from you";

    private final Words words;
    private final Crew crew;

    DecisionLines(Words words, Crew crew) {
        this.words = words;
        this.crew = crew;
    }

    /**
     * A fixed number of statements, however many there are.
     *
     * @param agreements to any of these decisions
     * @return what is shown by the id of the decision
     */
    public Map<Long, StaysAsItIs> of(
            Collection<? extends DecisionPutForward> decisions, List<? extends AgreementInRole> agreements) {
        if (decisions.isEmpty()) {
            return Map.of();
        }
        Map<Long, String> names = crew.names();
        Map<Long, List<AgreementInRole>> agreed =
                agreements.stream().collect(Collectors.groupingBy(AgreementInRole::decisionId));
        Map<Long, KeptWords> texts = words.findAll(decisions.stream()
                .flatMap(decision -> Stream.of(decision.wordsId(), decision.customerWordsId()))
                .filter(Objects::nonNull)
                .toList());
        Map<Long, StaysAsItIs> shown = new HashMap<>();
        decisions.forEach(decision -> {
            String customer = shown(decision.customerWordsId(), texts);
            shown.put(
                    decision.id(),
                    new StaysAsItIs(
                            decision.number(),
                            Objects.requireNonNullElse(shown(decision.wordsId(), texts), ""),
                            decision.changesWhatWasOrdered(),
                            customer == null || !SeenAs.hidden() ? customer : HIDDEN,
                            agreed.getOrDefault(decision.id(), List.of()).stream()
                                    .map(a -> new StaysAsItIs.Agreed(
                                            names.getOrDefault(a.said().personId(), "somebody"),
                                            a.said().as(),
                                            a.at()))
                                    .toList()));
        });
        return shown;
    }

    private static @Nullable String shown(@Nullable Long id, Map<Long, KeptWords> texts) {
        KeptWords text = id == null ? null : texts.get(id);
        return text == null ? null : text.shown();
    }
}
