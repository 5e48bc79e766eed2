package org.trammel.shop.alignment;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.calc.metrology.Budget;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.metrology.ErrorKind;
import org.trammel.calc.metrology.MeasuredDeviation;

/** A deviation of a reduction with its budget, in mm or degrees. Only added to. */
@Entity
@Table(name = "alignment_deviation")
class DeviationRow {

    private static final int PLACES = 9;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "reduction_id")
    private long reductionId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Deviation deviation;

    private BigDecimal amount;
    private BigDecimal u;

    @Column(name = "u_independent")
    private BigDecimal uIndependent;

    @ElementCollection
    @CollectionTable(name = "alignment_budget", joinColumns = @JoinColumn(name = "deviation_id"))
    private List<BudgetLine> budget = new ArrayList<>();

    protected DeviationRow() {}

    DeviationRow(long reductionId, MeasuredDeviation measured) {
        Budget stated = measured.statedBudget();
        this.reductionId = reductionId;
        this.deviation = measured.what();
        this.amount = measured.judgedValue();
        this.u = measured.judgedUncertainty();
        this.uIndependent = figure(stated.uIndependent());
        stated.lines().forEach(line -> budget.add(new BudgetLine(line)));
    }

    /** One line of the budget. */
    @Embeddable
    static class BudgetLine {

        @Enumerated(EnumType.STRING)
        @JdbcTypeCode(SqlTypes.VARCHAR)
        private ErrorKind kind;

        private BigDecimal u;

        @Column(name = "u_independent")
        private BigDecimal uIndependent;

        private BigDecimal share;

        protected BudgetLine() {}

        BudgetLine(Budget.Line line) {
            this.kind = line.kind();
            this.u = figure(line.u());
            this.uIndependent = figure(line.uIndependent());
            this.share = BigDecimal.valueOf(line.share()).setScale(6, RoundingMode.HALF_EVEN);
        }
    }

    private static BigDecimal figure(double value) {
        return BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_EVEN);
    }

    DeviationLine line() {
        return new DeviationLine(
                reductionId,
                deviation,
                amount,
                u,
                uIndependent,
                budget.stream()
                        .sorted(Comparator.comparing(one -> one.kind))
                        .map(one -> new DeviationLine.Cause(one.kind, one.u, one.uIndependent, one.share))
                        .toList());
    }
}
