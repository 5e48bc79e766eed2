package org.trammel.shop.records;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.Collection;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * What people write in their own words, apart from the log so that it can be erased. The log gets the id and the salted
 * hash:
 *
 * <pre>
 * WordsRef said = words.keep(typed);
 * log.event(chain, "noted", Map.of("words", said.id(), "sha256", said.sha256()));
 * </pre>
 */
@Service
public class Words {

    /** Characters that are kept of one text. */
    public static final int LONGEST = 8000;

    private static final int SALT_BYTES = 32;

    private final KeptWordsRepository kept;
    private final KeptWordsTextRepository texts;
    private final ErasureRepository erasures;
    private final ActLog log;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    Words(
            KeptWordsRepository kept,
            KeptWordsTextRepository texts,
            ErasureRepository erasures,
            ActLog log,
            Clock clock) {
        this.kept = kept;
        this.texts = texts;
        this.erasures = erasures;
        this.log = log;
        this.clock = clock;
    }

    /**
     * Keeps a text in the transaction of the act it belongs to.
     *
     * @throws Refusal if nothing was written or more than {@value #LONGEST} characters
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public WordsRef keep(String typed) {
        String words = PlainText.of(typed);
        if (words.isEmpty() || words.length() > LONGEST) {
            throw Refusal.input(
                    "words",
                    "This was not recorded.",
                    words.isEmpty()
                            ? "Nothing was written."
                            : "It is " + words.length() + " characters long; " + LONGEST + " are kept.",
                    words.isEmpty() ? "Say it in a few words." : "Shorten it, or keep it as a file.");
        }
        byte[] bytes = new byte[SALT_BYTES];
        random.nextBytes(bytes);
        String salt = HexFormat.of().formatHex(bytes);
        KeptWordsRow row = kept.save(new KeptWordsRow(KeptWordsText.hash(salt, words), clock.instant()));
        texts.save(new KeptWordsText(row.id(), salt, words));
        return new WordsRef(row.id(), row.sha256());
    }

    /**
     * Finds one text.
     *
     * @throws Refusal if nothing was ever kept under the id
     */
    @Transactional(readOnly = true)
    public KeptWords find(long id) {
        return texts.findById(id)
                .<KeptWords>map(text -> new KeptWords.Said(text.words()))
                .orElseGet(() -> erasures.findById(Erasure.words(id))
                        .<KeptWords>map(erasure -> new KeptWords.Erased(erasure.at()))
                        .orElseThrow(() -> Refusal.missing(
                                "There are no such words.",
                                "Nothing was kept as " + id + ".",
                                "Go back to the record.")));
    }

    /** Finds many texts at once; ids that nothing was kept under are left out. */
    @Transactional(readOnly = true)
    public Map<Long, KeptWords> findAll(Collection<Long> ids) {
        Map<Long, KeptWords> found = new HashMap<>();
        texts.findAllById(ids).forEach(text -> found.put(text.wordsId(), new KeptWords.Said(text.words())));
        if (found.size() < ids.size()) {
            erasures.findAllById(ids.stream().map(Erasure::words).toList())
                    .forEach(erasure -> found.put(
                            Long.valueOf(
                                    erasure.thing().substring(Erasure.words(0).length() - 1)),
                            new KeptWords.Erased(erasure.at())));
        }
        return found;
    }

    /** Erases a text for good. Its hash stays in the log, and that it was erased. */
    @Transactional
    public KeptWords erase(Act act, long id) {
        if (!log.opens(act, "erase words", Erasure.words(id), Chains.SHOP)) {
            return find(id);
        }
        if (texts.erase(id) == 0) {
            KeptWords before = find(id);
            throw Refusal.state(
                    "The words were not erased.", "They are " + before.shown() + " already.", "Nothing is left to do.");
        }
        erasures.save(new Erasure(Erasure.words(id), act));
        log.event(Chains.SHOP, "words erased", Map.of("words", id));
        return new KeptWords.Erased(act.at());
    }

    /** Erases those of these texts that are not erased yet, in the transaction of the act that asks for it. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void eraseAll(Act act, Collection<Long> ids) {
        ids.stream().filter(id -> find(id) instanceof KeptWords.Said).forEach(id -> erase(act, id));
    }
}
