package org.trammel.shop.designs;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** Opens an act on a revision: log first, then who may and from which state. Design and order share one chain. */
@Component
class RevisionAct {

    private final DesignRevisionRepository revisions;
    private final ActLog log;
    private final Crew crew;
    private final Words words;

    RevisionAct(DesignRevisionRepository revisions, ActLog log, Crew crew, Words words) {
        this.revisions = revisions;
        this.log = log;
        this.crew = crew;
        this.words = words;
    }

    /** The revision to act on; empty if this act was carried out before. */
    Optional<DesignRevision> open(Act act, DesignVerb verb, long revisionId) {
        String number = revisions.drawnFor(revisionId).orElseThrow(() -> missing(revisionId));
        String kind = verb.name().toLowerCase(Locale.ROOT) + "-design";
        if (!log.opens(act, kind, "design-revision:" + revisionId, Chains.order(number))) {
            return Optional.empty();
        }
        DesignRevision revision = load(revisionId);
        crew.require(act.by(), verb.undone(revision.letter()), verb.by());
        verb.refuseUnless(revision.letter(), revision.state());
        return Optional.of(revision);
    }

    DesignRevision load(long revisionId) {
        return revisions.whole(revisionId).orElseThrow(() -> missing(revisionId));
    }

    /** Refuses when somebody changed the revision since the page was shown. */
    static void refuseIfStale(DesignRevision revision, DesignVerb verb, @Nullable Long seenVersion) {
        if (seenVersion != null && seenVersion != revision.version()) {
            throw Refusal.stale(
                    verb.undone(revision.letter()),
                    "Somebody changed it after this page was loaded.",
                    "Open it as it is now beside this page, compare, and enter there what is still wanted.");
        }
    }

    void event(DesignRevision revision, String what, Map<String, ?> facts) {
        Map<String, Object> all = new TreeMap<>(facts);
        all.put("revision", revision.id());
        all.put("letter", revision.letter());
        log.event(Chains.order(revision.design().drawnFor()), what, all);
    }

    /** Keeps what somebody wrote, and writes its id and salted hash as an event. */
    long keep(DesignRevision revision, String what, String text) {
        WordsRef kept = words.keep(text);
        event(revision, what, Map.of("words", kept.id(), "sha256", kept.sha256()));
        return kept.id();
    }

    private static Refusal missing(long revisionId) {
        return Refusal.missing(
                "The design revision was not found.",
                "No revision has the number " + revisionId + ".",
                "Open it from its order.");
    }
}
