package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.metrology.DecisionBasis;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.travellers.Evidence;

/** One reading of a characteristic, with all its verdict was given on. Only added to. */
@Entity
@Table(name = "reading")
class Reading {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "characteristic_id")
    private long characteristicId;

    @Column(name = "operation_id")
    private long operationId;

    @Column(name = "traveller_id")
    private long travellerId;

    @Column(name = "characteristic_code")
    private String characteristicCode;

    @Column(name = "raw_values")
    private String raw;

    @Column(name = "reading_value")
    private BigDecimal value;

    private String unit;
    private @Nullable BigDecimal u;

    @Column(name = "gauge_id")
    private @Nullable Long gaugeId;

    @Column(name = "gauge_code")
    private String gaugeCode;

    @Column(name = "gauge_due_on")
    private @Nullable LocalDate gaugeDueOn;

    @Column(name = "temperature_deg_c")
    private @Nullable BigDecimal temperatureDegC;

    @Column(name = "to_twenty")
    private @Nullable BigDecimal toTwenty;

    private @Nullable BigDecimal nominal;

    @Column(name = "lower_limit")
    private @Nullable BigDecimal lowerLimit;

    @Column(name = "upper_limit")
    private @Nullable BigDecimal upperLimit;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "rule_asked")
    private Rule ruleAsked;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "rule_used")
    private Rule ruleUsed;

    private @Nullable BigDecimal factor;

    @Column(name = "factor_setting_id")
    private @Nullable Long factorSettingId;

    @Column(name = "guard_band")
    private BigDecimal guardBand;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Verdict verdict;

    private boolean deciding;
    private boolean confirmed;
    private boolean alike;

    @Column(name = "person_id")
    private long personId;

    @Column(name = "device_id")
    private @Nullable Long deviceId;

    private Instant at;

    @Column(name = "device_at")
    private @Nullable Instant deviceAt;

    @Column(name = "act_id")
    private UUID actId;

    @Column(name = "replaces_id")
    private @Nullable Long replacesId;

    @Column(name = "follows_id")
    private @Nullable Long followsId;

    private @Nullable String reason;

    @Column(name = "reduction_id")
    private @Nullable Long reductionId;

    @Column
    private @Nullable String record;

    protected Reading() {}

    /**
     * What was read, beside the verdict.
     *
     * @param toTwenty what was added to the reduced value to give it at 20 °C; null if it was not corrected
     */
    record Taken(
            List<BigDecimal> raw,
            BigDecimal value,
            @Nullable BigDecimal toTwenty,
            @Nullable BigDecimal temperatureDegC,
            boolean confirmed,
            boolean alike,
            @Nullable Long replacesId,
            @Nullable String reason,
            @Nullable Long reductionId) {}

    /** How it was judged; without limits there is no basis. */
    record Judged(
            Verdict verdict,
            @Nullable DecisionBasis basis,
            @Nullable Long factorSettingId) {}

    /**
     * What it was read with.
     *
     * @param gaugeId its row in the register; null for what is kept by the module whose record gives the reading
     * @param record the record that gives it, as people call it; null where it was read and keyed
     */
    record With(
            @Nullable Long gaugeId,
            String code,
            @Nullable LocalDate dueOn,
            @Nullable BigDecimal u,
            @Nullable String record) {

        static With of(Means means) {
            return of(means, null);
        }

        static With of(Means means, @Nullable String record) {
            return new With(means.gaugeId(), means.code(), means.dueOn(), means.u(), record);
        }
    }

    Reading(Act act, Evidence.Wanted wanted, With with, Taken taken, Judged judged) {
        this.characteristicId = wanted.characteristicId();
        this.operationId = wanted.operationId();
        this.travellerId = wanted.travellerId();
        this.characteristicCode = wanted.code();
        this.raw = taken.raw().stream().map(BigDecimal::toPlainString).collect(Collectors.joining(";"));
        this.value = taken.value();
        this.unit = wanted.unit();
        this.u = with.u();
        this.gaugeId = with.gaugeId();
        this.gaugeCode = with.code();
        this.gaugeDueOn = with.dueOn();
        this.record = with.record();
        this.temperatureDegC = taken.temperatureDegC();
        this.toTwenty = taken.toTwenty();
        this.nominal = wanted.nominal();
        this.lowerLimit = wanted.lowerLimit();
        this.upperLimit = wanted.upperLimit();
        this.ruleAsked = wanted.rule();
        DecisionBasis basis = judged.basis();
        this.ruleUsed =
                basis == null ? wanted.rule() : Rule.valueOf(basis.used().name());
        this.factor = basis == null ? null : basis.factor();
        this.factorSettingId = judged.factorSettingId();
        this.guardBand = basis == null ? BigDecimal.ZERO : basis.guardBand();
        this.verdict = judged.verdict();
        this.deciding = wanted.deciding();
        this.confirmed = taken.confirmed();
        this.alike = taken.alike();
        this.personId = act.by();
        this.deviceId = act.device();
        this.at = act.at();
        this.deviceAt = act.deviceAt();
        this.actId = act.id();
        this.replacesId = taken.replacesId();
        this.followsId = wanted.readingId();
        this.reason = taken.reason();
        this.reductionId = taken.reductionId();
    }

    List<BigDecimal> raw() {
        return Arrays.stream(raw.split(";")).map(BigDecimal::new).toList();
    }

    long id() {
        return id;
    }

    UUID actId() {
        return actId;
    }

    long characteristicId() {
        return characteristicId;
    }

    long operationId() {
        return operationId;
    }

    long travellerId() {
        return travellerId;
    }

    String characteristicCode() {
        return characteristicCode;
    }

    BigDecimal value() {
        return value;
    }

    String unit() {
        return unit;
    }

    @Nullable
    BigDecimal u() {
        return u;
    }

    @Nullable
    String record() {
        return record;
    }

    @Nullable
    Long gaugeId() {
        return gaugeId;
    }

    String gaugeCode() {
        return gaugeCode;
    }

    /** What was added to give the value at 20 °C; null if it was not corrected. */
    @Nullable
    BigDecimal toTwenty() {
        return toTwenty;
    }

    /** The values as they were judged: as read, and at 20 °C where they were corrected. */
    List<BigDecimal> judgedRaw() {
        BigDecimal shift = toTwenty;
        return shift == null
                ? raw()
                : raw().stream().map(value -> value.add(shift)).toList();
    }

    @Nullable
    BigDecimal temperatureDegC() {
        return temperatureDegC;
    }

    @Nullable
    BigDecimal nominal() {
        return nominal;
    }

    @Nullable
    BigDecimal lowerLimit() {
        return lowerLimit;
    }

    @Nullable
    BigDecimal upperLimit() {
        return upperLimit;
    }

    Rule ruleAsked() {
        return ruleAsked;
    }

    Rule ruleUsed() {
        return ruleUsed;
    }

    @Nullable
    BigDecimal factor() {
        return factor;
    }

    BigDecimal guardBand() {
        return guardBand;
    }

    Verdict verdict() {
        return verdict;
    }

    boolean deciding() {
        return deciding;
    }

    boolean alike() {
        return alike;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }

    @Nullable
    Instant deviceAt() {
        return deviceAt;
    }

    @Nullable
    Long replacesId() {
        return replacesId;
    }

    /** The one that judged when this was taken; null if none did, or it was taken before that was kept. */
    @Nullable
    Long followsId() {
        return followsId;
    }

    @Nullable
    String reason() {
        return reason;
    }

    @Nullable
    Long reductionId() {
        return reductionId;
    }
}
