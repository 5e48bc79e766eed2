package org.trammel.shop.coats;

import jakarta.persistence.Column;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** What was read of a finished coat, with its verdict. Only added to. */
@MappedSuperclass
abstract class JudgedRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "finish_id", nullable = false)
    private long finishId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private CoatVerdict verdict;

    @Column(nullable = false)
    private String words;

    @Column
    private @Nullable String nonconformance;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected JudgedRow() {}

    JudgedRow(
            long operationId,
            long finishId,
            CoatVerdict verdict,
            List<String> words,
            @Nullable String nonconformance,
            Act act) {
        this.operationId = operationId;
        this.finishId = finishId;
        this.verdict = verdict;
        this.words = String.join("\n", words);
        this.nonconformance = nonconformance;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    CoatVerdict verdict() {
        return verdict;
    }

    List<String> words() {
        return words.lines().toList();
    }

    @Nullable
    String nonconformance() {
        return nonconformance;
    }

    long by() {
        return by;
    }

    Instant at() {
        return at;
    }
}
