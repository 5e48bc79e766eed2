package org.trammel.shop.nonconformance;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.shop.records.WordsRef;

/** What somebody wrote about a nonconformance; the words themselves can be erased. Only added to. */
@Entity
@Table(name = "nonconformance_wording")
class Wording {

    /** What the words are about. */
    enum About {
        FOUND,
        DECISION,
        LIMITS,
        /** Who of the customer agreed, when and how. */
        CUSTOMER,
        CLOSING
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "nonconformance_id")
    private long nonconformanceId;

    @Column(name = "decision_number")
    private int decisionNumber;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private About about;

    @Column(name = "words_id")
    private long wordsId;

    protected Wording() {}

    Wording(Nonconformance of, About about, WordsRef words) {
        this.nonconformanceId = of.id();
        this.decisionNumber = of.decisionNumber();
        this.about = about;
        this.wordsId = words.id();
    }

    long nonconformanceId() {
        return nonconformanceId;
    }

    About about() {
        return about;
    }

    long wordsId() {
        return wordsId;
    }

    /** What was found is said once; the rest belongs to one decision, and an earlier one's words stay behind. */
    boolean standsFor(Nonconformance n) {
        return about == About.FOUND || decisionNumber == n.decisionNumber();
    }
}
