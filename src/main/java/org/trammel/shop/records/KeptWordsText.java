package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.nio.charset.StandardCharsets;
import org.springframework.data.domain.Persistable;

/** The words themselves and their salt, which go together when they are erased. */
@Entity
@Table(name = "kept_words_text")
class KeptWordsText implements Persistable<Long> {

    @Id
    @Column(name = "words_id")
    private Long wordsId;

    @Column(nullable = false)
    private String salt;

    @Column(nullable = false)
    private String words;

    protected KeptWordsText() {}

    KeptWordsText(long wordsId, String salt, String words) {
        this.wordsId = wordsId;
        this.salt = salt;
        this.words = words;
    }

    long wordsId() {
        return wordsId;
    }

    String words() {
        return words;
    }

    /** The salt keeps short words from being found by hashing guesses once they are erased. */
    static String hash(String salt, String words) {
        return Seal.sha256((salt + '\n' + words).getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public Long getId() {
        return wordsId;
    }

    /** A text is only ever added or deleted. */
    @Override
    public boolean isNew() {
        return true;
    }
}
