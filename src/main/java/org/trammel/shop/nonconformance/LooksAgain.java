package org.trammel.shop.nonconformance;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/**
 * Second looks at what was seen and never measured: without a reading that conforms, only what somebody else saw says
 * that it was nothing.
 */
@Service
public class LooksAgain {

    private static final int LONGEST = 1000;

    private final NonconformanceRepository all;
    private final LookAgainRepository looks;
    private final Opening opening;
    private final Crew crew;
    private final Words words;
    private final ActLog log;

    LooksAgain(
            NonconformanceRepository all,
            LookAgainRepository looks,
            Opening opening,
            Crew crew,
            Words words,
            ActLog log) {
        this.all = all;
        this.looks = looks;
        this.opening = opening;
        this.crew = crew;
        this.words = words;
        this.log = log;
    }

    /** A look as it is read. */
    public record Seen(String name, Instant at, String words) {}

    /**
     * Records what somebody saw who looked again. Never who took part in the operation at fault.
     *
     * @param seen what was seen, and how it was looked at
     */
    @Transactional
    public void look(Act act, long id, String seen) {
        String serial = all.serialOf(id)
                .orElseThrow(() -> Refusal.missing(
                        "Nothing was done.", "There is no such nonconformance.", "Choose one from the list."));
        if (!log.opens(act, "look again", "nonconformance:" + id, Chains.bearing(serial))) {
            return;
        }
        Nonconformance n = all.findById(id).orElseThrow();
        n.requireUndecided("looked at again");
        String what = "The look at " + n.number() + " was not recorded.";
        Person person = crew.byId(act.by());
        if (!person.mayWork()) {
            throw Refusal.person(what, person.name() + " reads and changes nothing.", "Call a worker.");
        }
        if (opening.causers(n).contains(person.id())) {
            throw Refusal.person(
                    what,
                    person.name() + " took part in operation " + n.faultCode() + ", the one at fault.",
                    "Somebody who took no part in it looks.");
        }
        WordsRef kept = words.keep(TypedText.words("seen", "What was seen", what, seen, LONGEST));
        LookAgain look = looks.save(new LookAgain(n, act, kept));
        log.event(
                Chains.bearing(serial),
                "looked at again",
                Map.of(
                        "nonconformance",
                        id,
                        "words",
                        kept.id(),
                        "sha256",
                        kept.sha256(),
                        "at",
                        look.at().toString()));
    }

    /** Refuses to clear what is about no reading and no record until somebody who took no part looked again. */
    void requireLooked(Nonconformance n, String what) {
        if (n.concedable()) {
            return;
        }
        Set<Long> causers = opening.causers(n);
        if (looks.findByNonconformanceIdOrderById(n.id()).stream().allMatch(look -> causers.contains(look.by()))) {
            throw Refusal.state(
                    what,
                    n.number() + " was seen and not measured, and nobody who took no part in operation " + n.faultCode()
                            + " has looked again.",
                    "Look at it again and record what is seen; it is cleared once that is there, or decide otherwise.");
        }
    }

    /** Whether a look is what clears it: it is undecided, and about no reading and no record. */
    boolean wanted(Nonconformance n) {
        return !n.concedable() && (n.state() == NonconformanceState.OPEN || n.state() == NonconformanceState.PROPOSED);
    }

    /** Every look at one, oldest first. */
    @Transactional(readOnly = true)
    public List<Seen> of(long id) {
        List<LookAgain> found = looks.findByNonconformanceIdOrderById(id);
        Map<Long, String> names = crew.names();
        Map<Long, KeptWords> texts =
                words.findAll(found.stream().map(LookAgain::wordsId).toList());
        return found.stream()
                .map(look -> new Seen(
                        names.getOrDefault(look.by(), "Trammel"),
                        look.at(),
                        texts.get(look.wordsId()).shown()))
                .toList();
    }
}
