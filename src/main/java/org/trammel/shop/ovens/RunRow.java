package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.Activation;
import org.trammel.calc.thermal.Judged;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@Entity
@Table(name = "oven_run")
class RunRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(name = "oven_id", nullable = false)
    private long ovenId;

    @Column(name = "revision_id", nullable = false)
    private long revisionId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private RunState state;

    @Column(nullable = false)
    private String hung;

    @Column(name = "void_signature_id")
    private @Nullable Long voidSignatureId;

    @Column(name = "opened_by", nullable = false)
    private long openedBy;

    @Column(name = "opened_at", nullable = false)
    private Instant openedAt;

    @Column(name = "started_by")
    private @Nullable Long startedBy;

    @Column(name = "started_at")
    private @Nullable Instant startedAt;

    @Column(name = "stopped_by")
    private @Nullable Long stoppedBy;

    @Column(name = "stopped_at")
    private @Nullable Instant stoppedAt;

    @Column(name = "decided_at")
    private @Nullable Instant decidedAt;

    private @Nullable BigDecimal energy;

    @Column(name = "energy_low")
    private @Nullable BigDecimal energyLow;

    @Column(name = "energy_high")
    private @Nullable BigDecimal energyHigh;

    @Column(name = "energy_source", nullable = false)
    private String energySource;

    @Column(name = "gap_min")
    private @Nullable BigDecimal gap_min;

    @Column(name = "lowest_k")
    private @Nullable BigDecimal lowest_K;

    @Column(name = "highest_k")
    private @Nullable BigDecimal highest_K;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private @Nullable Judged judged;

    @Version
    private long version;

    protected RunRow() {}

    RunRow(String code, long ovenId, long revisionId, String hung, Act act) {
        this.code = code;
        this.ovenId = ovenId;
        this.revisionId = revisionId;
        this.state = RunState.LOADING;
        this.hung = hung;
        this.openedBy = act.by();
        this.openedAt = act.at();
        this.energySource = "";
    }

    void requireAt(String deed, RunState... allowed) {
        Set<RunState> may = EnumSet.copyOf(List.of(allowed));
        if (!may.contains(state)) {
            throw Refusal.state(
                    "Load " + code + " cannot be " + deed + ".",
                    "It is " + state.word() + ".",
                    "That is done while it is "
                            + may.stream().map(RunState::word).collect(Collectors.joining(" or "))
                            + ". Open it again to see where it stands.");
        }
    }

    void signed() {
        requireAt("signed", RunState.LOADING);
        state = RunState.SIGNED;
    }

    /** The load is changed once more: what was signed was another load. */
    void openAgain(@Nullable Long lastSignature) {
        requireAt("changed", RunState.LOADING, RunState.SIGNED);
        state = RunState.LOADING;
        voidSignatureId = lastSignature;
    }

    /** What it is judged by is settled as it starts. */
    void start(@Nullable Activation activation, BigDecimal gap, @Nullable OvenTest survey, Act act) {
        requireAt("started", RunState.SIGNED);
        state = RunState.RUNNING;
        startedBy = act.by();
        startedAt = act.at();
        gap_min = gap;
        if (activation != null) {
            energy = BigDecimal.valueOf(activation.usual_kJPerMol());
            energyLow = BigDecimal.valueOf(activation.low_kJPerMol());
            energyHigh = BigDecimal.valueOf(activation.high_kJPerMol());
            energySource = activation.source();
        }
        if (survey != null) {
            lowest_K = survey.lowest_K();
            highest_K = survey.highest_K();
        }
    }

    void stop(Act act) {
        requireAt("stopped", RunState.RUNNING);
        state = RunState.STOPPED;
        stoppedBy = act.by();
        stoppedAt = act.at();
    }

    void judge(@Nullable Judged verdict) {
        requireAt("judged", RunState.STOPPED);
        judged = verdict;
    }

    void decide(Act act) {
        requireAt("decided", RunState.STOPPED);
        state = RunState.DECIDED;
        decidedAt = act.at();
    }

    void callOff() {
        requireAt("called off", RunState.LOADING, RunState.SIGNED);
        state = RunState.CALLED_OFF;
    }

    /** The activation energy it is judged by; null where no equivalent hours are counted. */
    @Nullable
    Activation activation() {
        return energy == null || energyLow == null || energyHigh == null
                ? null
                : new Activation(energy.doubleValue(), energyLow.doubleValue(), energyHigh.doubleValue(), energySource);
    }

    boolean counts(long signatureId) {
        return voidSignatureId == null || signatureId > voidSignatureId;
    }

    long id() {
        return id;
    }

    String code() {
        return code;
    }

    long ovenId() {
        return ovenId;
    }

    long revisionId() {
        return revisionId;
    }

    RunState state() {
        return state;
    }

    @Nullable
    Instant startedAt() {
        return startedAt;
    }

    @Nullable
    Long stoppedBy() {
        return stoppedBy;
    }

    @Nullable
    Instant stoppedAt() {
        return stoppedAt;
    }

    @Nullable
    Judged judged() {
        return judged;
    }

    double gapOrUsual_min() {
        return gap_min == null ? 2 : gap_min.doubleValue();
    }

    double lowest_K() {
        return lowest_K == null ? 0 : lowest_K.doubleValue();
    }

    double highest_K() {
        return highest_K == null ? 0 : highest_K.doubleValue();
    }

    RunHead head() {
        return new RunHead(id, code, revisionId, startedAt, stoppedAt);
    }

    Run run(
            String oven,
            Programme programme,
            List<Run.Loaded> frames,
            List<Run.Wired> wired,
            List<Run.Door> doors,
            List<Run.Signed> signatures) {
        return new Run(
                id,
                code,
                oven,
                programme,
                state,
                hung,
                openedBy,
                openedAt,
                startedBy,
                startedAt,
                stoppedAt,
                decidedAt,
                judged,
                version,
                frames,
                wired,
                doors,
                signatures);
    }
}
