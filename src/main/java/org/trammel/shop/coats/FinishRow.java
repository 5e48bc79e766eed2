package org.trammel.shop.coats;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Table(name = "coat_finish")
class FinishRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String letter;

    @Column(nullable = false)
    private String what;

    @Column(nullable = false)
    private String metals;

    @Column(name = "blast_operations", nullable = false)
    private String blastOperations;

    @Column(name = "coat_operations", nullable = false)
    private String coatOperations;

    @Column(nullable = false)
    private String masks;

    @Column(name = "most_bar", nullable = false)
    private BigDecimal most_bar;

    @Column(name = "most_earth_mohm")
    private @Nullable BigDecimal mostEarth_MOhm;

    @Column(nullable = false)
    private String source;

    @Column(name = "set_by", nullable = false)
    private long setBy;

    @Column(name = "set_at", nullable = false)
    private Instant setAt;

    @Column(name = "superseded_at")
    private @Nullable Instant supersededAt;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Version
    private long version;

    protected FinishRow() {}

    FinishRow(String code, String letter, NewFinish content, Act act) {
        this.code = code;
        this.letter = letter;
        this.what = content.what();
        this.metals = String.join(" ", content.metals());
        this.blastOperations = String.join(" ", content.blastOperations());
        this.coatOperations = String.join(" ", content.coatOperations());
        this.masks = String.join("\n", content.masks());
        this.most_bar = content.most_bar();
        this.mostEarth_MOhm = content.mostEarth_MOhm();
        this.source = content.source();
        this.setBy = act.by();
        this.setAt = act.at();
        this.actId = act.id();
    }

    void supersede(Act act) {
        supersededAt = act.at();
    }

    Finish finish() {
        return new Finish(
                id,
                code,
                letter,
                new NewFinish(
                        what,
                        list(metals, " "),
                        list(blastOperations, " "),
                        list(coatOperations, " "),
                        list(masks, "\n"),
                        most_bar,
                        mostEarth_MOhm,
                        source),
                setBy,
                setAt,
                supersededAt);
    }

    private static List<String> list(String words, String sign) {
        return words.isEmpty() ? List.of() : List.of(words.split(sign));
    }
}
