package org.trammel.shop.drift;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;

/**
 * Welders of what was read before this program. Who belongs to the crew is kept by number; the name of anybody else lies
 * where it can be erased, and the reading then names no welder.
 */
@Service
public class EarlierWelders {

    private final EarlierWelderRepository rows;
    private final Words words;
    private final Crew crew;
    private final ActLog log;

    EarlierWelders(EarlierWelderRepository rows, Words words, Crew crew, ActLog log) {
        this.rows = rows;
        this.words = words;
        this.crew = crew;
        this.log = log;
    }

    /** Keeps the welder of each reading; a name is kept once for all of them. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void keep(Map<Long, String> welderByHistory) {
        Map<String, Long> byInitials = welderByHistory.isEmpty()
                ? Map.of()
                : people().stream().collect(Collectors.toMap(Person::initials, Person::id));
        Map<String, Long> kept = new HashMap<>();
        welderByHistory.forEach((history, welder) -> {
            Long person = byInitials.get(welder.toUpperCase(Locale.ROOT));
            rows.save(new EarlierWelder(
                    history,
                    person,
                    person == null
                            ? kept.computeIfAbsent(
                                    welder, name -> words.keep(name).id())
                            : null));
        });
    }

    private List<Person> people() {
        return crew.all();
    }

    /** Who welded, by reading: initials, or the name that was written down and not erased since. */
    Map<Long, String> of(Collection<Long> seriesIds) {
        List<EarlierWelder> all = seriesIds.isEmpty() ? List.of() : rows.of(seriesIds);
        if (all.isEmpty()) {
            return Map.of();
        }
        Map<Long, String> initials = people().stream().collect(Collectors.toMap(Person::id, Person::initials));
        Map<Long, String> names = said(all.stream()
                .map(EarlierWelder::wordsId)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet()));
        Map<Long, String> welders = new HashMap<>();
        for (EarlierWelder row : all) {
            String welder = row.personId() == null ? names.get(row.wordsId()) : initials.get(row.personId());
            if (welder != null) {
                welders.put(row.historyId(), welder);
            }
        }
        return welders;
    }

    private Map<Long, String> said(Set<Long> ids) {
        Map<Long, String> said = new HashMap<>();
        if (!ids.isEmpty()) {
            words.findAll(ids).forEach((id, text) -> {
                if (text instanceof KeptWords.Said there) {
                    said.put(id, there.words());
                }
            });
        }
        return said;
    }

    /** Names that were written down and are not of the crew. */
    @Transactional(readOnly = true)
    Set<String> names() {
        return new TreeSet<>(said(rows.written()).values());
    }

    /**
     * Erases a name for good, wherever it was written with a reading from before this program. The readings stay and name no
     * welder.
     */
    @Transactional
    public void erase(Act act, String name) {
        String not = "The name was not erased.";
        if (!log.opens(act, "erase-welder-name", "drift-names", Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), not, Role.QA_LEAD);
        Set<Long> found = new HashSet<>();
        said(rows.written()).forEach((id, said) -> {
            if (said.equals(name)) {
                found.add(id);
            }
        });
        if (found.isEmpty()) {
            throw Refusal.input(
                    "name",
                    not,
                    "No reading from before this program names this welder.",
                    "Choose one of the names that stand there.");
        }
        found.stream().sorted().forEach(id -> words.erase(act, id));
    }
}
