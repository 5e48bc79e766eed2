package org.trammel.shop.nonconformance;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.SeenAs;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Words;

/** Puts nonconformances together with what was said and who agreed, as far as whoever asks may read it. */
@Component
class Lines {

    private final AgreementsOfMany agreements;
    private final WordingRepository wordings;
    private final Words words;
    private final Crew crew;

    Lines(AgreementsOfMany agreements, WordingRepository wordings, Words words, Crew crew) {
        this.agreements = agreements;
        this.wordings = wordings;
        this.words = words;
        this.crew = crew;
    }

    NonconformanceLine of(Nonconformance n) {
        return of(List.of(n)).get(0);
    }

    /** A fixed number of statements, however many there are. */
    List<NonconformanceLine> of(List<Nonconformance> found) {
        if (found.isEmpty()) {
            return List.of();
        }
        List<Long> ids = found.stream().map(Nonconformance::id).toList();
        Map<Long, List<Agreement>> agreed = agreements.findByNonconformanceIdInOrderById(ids).stream()
                .collect(Collectors.groupingBy(Agreement::nonconformanceId));
        Map<Long, List<Wording>> worded = wordings.findByNonconformanceIdInOrderById(ids).stream()
                .collect(Collectors.groupingBy(Wording::nonconformanceId));
        Map<Long, KeptWords> texts = words.findAll(worded.values().stream()
                .flatMap(List::stream)
                .map(Wording::wordsId)
                .toList());
        boolean hidden = SeenAs.hidden();
        Map<Long, String> initials =
                hidden ? crew.all().stream().collect(Collectors.toMap(Person::id, Person::initials)) : new HashMap<>();
        return found.stream()
                .map(n -> NonconformanceLine.of(
                        n,
                        agreed.getOrDefault(n.id(), List.of()).stream()
                                .filter(a -> a.decisionNumber() == n.decisionNumber())
                                .map(a -> new NonconformanceLine.Agreed(
                                        initials.getOrDefault(a.personId(), hidden ? "" : a.personName()),
                                        a.agreedAs(),
                                        a.at()))
                                .toList(),
                        said(n, worded.getOrDefault(n.id(), List.of()), texts, hidden)))
                .toList();
    }

    private static Map<Wording.About, String> said(
            Nonconformance n, List<Wording> worded, Map<Long, KeptWords> texts, boolean hidden) {
        Map<Wording.About, String> said = new EnumMap<>(Wording.About.class);
        worded.stream()
                .filter(w -> w.standsFor(n) && texts.containsKey(w.wordsId()))
                .forEach(w -> said.put(w.about(), texts.get(w.wordsId()).shown()));
        if (hidden) {
            said.remove(Wording.About.CUSTOMER);
        }
        return said;
    }
}
