package org.trammel.shop.designs;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** The answer to one check of a revision's gate; the log keeps the answers before it. */
@Entity
@Table(name = "design_check")
class GateEntry {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long revisionId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "code")
    private GateCheck check;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private GateAnswer answer;

    private @Nullable Long decisionWords;
    private long answeredBy;
    private Instant answeredAt;
    private String givenOn;

    @ElementCollection
    @CollectionTable(name = "design_check_figure", joinColumns = @JoinColumn(name = "check_id"))
    @OrderColumn(name = "line")
    private List<CheckFigure> figures = new ArrayList<>();

    protected GateEntry() {}

    GateEntry(long revisionId, GateCheck check) {
        this.revisionId = revisionId;
        this.check = check;
    }

    /**
     * Answers it.
     *
     * @param on the figures it is answered on, with the hash of their inputs
     */
    void answer(GateAnswer newAnswer, @Nullable Long words, CheckFigures on, Act act) {
        answer = newAnswer;
        decisionWords = words;
        answeredBy = act.by();
        answeredAt = act.at();
        givenOn = on.givenOn();
        figures.clear();
        on.figures().forEach(figure -> figures.add(figure.withoutTheRider()));
    }

    GateCheck check() {
        return check;
    }

    GateAnswer answer() {
        return answer;
    }

    @Nullable
    Long decisionWords() {
        return decisionWords;
    }

    /** The figures it was answered on; of the rider only whether they were met. */
    List<CheckFigure> figures() {
        return List.copyOf(figures);
    }

    String givenOn() {
        return givenOn;
    }

    long answeredBy() {
        return answeredBy;
    }

    Instant answeredAt() {
        return answeredAt;
    }
}
