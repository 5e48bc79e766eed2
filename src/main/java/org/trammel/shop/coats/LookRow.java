package org.trammel.shop.coats;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "coat_look")
class LookRow extends JudgedRow {

    @Column(name = "cross_cut")
    private @Nullable Integer crossCut;

    @Column
    private @Nullable BigDecimal gloss;

    @Column(name = "gloss_gauge")
    private @Nullable String glossGauge;

    @Column(name = "colour_difference")
    private @Nullable BigDecimal colourDifference;

    @Column(name = "colour_gauge")
    private @Nullable String colourGauge;

    protected LookRow() {}

    LookRow(long operationId, long finishId, Look look, @Nullable String gauge, Act act) {
        super(operationId, finishId, look.verdict(), look.words(), look.nonconformance(), act);
        this.crossCut = look.crossCut();
        this.gloss = look.gloss();
        this.glossGauge = look.gloss() == null ? null : gauge;
        this.colourDifference = look.colourDifference();
        this.colourGauge = look.colourDifference() == null ? null : gauge;
    }

    Look look() {
        return new Look(crossCut, gloss, colourDifference, verdict(), words(), nonconformance(), by(), at());
    }
}
