package org.trammel.shop.travellers;

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
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;

/** One characteristic of one frame, with the nominal and limits it was released with, and its verdict. */
@Entity
@Table(name = "characteristic")
class Characteristic {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id")
    private long operationId;

    private int position;
    private String code;
    private String name;
    private String unit;
    private int decimals;
    private @Nullable BigDecimal nominal;

    @Column(name = "lower_limit")
    private @Nullable BigDecimal lowerLimit;

    @Column(name = "upper_limit")
    private @Nullable BigDecimal upperLimit;

    @Column(name = "gauge_kind")
    private String gaugeKind;

    private String points;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Reduction reduction;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Rule rule;

    private String signers;
    private boolean sided;

    @Column(name = "read_back")
    private boolean readBack;

    @Column(name = "second_person")
    private boolean secondPerson;

    private boolean deciding;

    @Column(name = "cold_set_clock")
    private @Nullable String coldSetClock;

    @Column(name = "cold_set_attempts")
    private int coldSetAttempts;

    @Column(name = "cold_set_amount")
    private @Nullable BigDecimal coldSetAmount;

    @Column(name = "triage_tolerances")
    private @Nullable BigDecimal triageTolerances;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private CharacteristicState state;

    @Column(name = "reading_id")
    private @Nullable Long readingId;

    private @Nullable String nonconformance;

    @Column(name = "concession_until")
    private @Nullable LocalDate concessionUntil;

    @Version
    private long version;

    protected Characteristic() {}

    Characteristic(long operationId, int position, CharacteristicSheet sheet, Limits limits) {
        this.operationId = operationId;
        this.position = position;
        this.code = sheet.code();
        this.name = sheet.name();
        this.unit = sheet.unit();
        this.decimals = sheet.decimals();
        this.nominal = limits.nominal();
        this.lowerLimit = limits.lower();
        this.upperLimit = limits.upper();
        this.gaugeKind = sheet.gaugeKind();
        this.points = String.join("|", sheet.points());
        this.reduction = sheet.reduction();
        this.rule = sheet.rule();
        this.signers = sheet.signers().stream().map(Enum::name).collect(Collectors.joining(","));
        this.sided = sheet.sided();
        this.readBack = sheet.readBack();
        this.secondPerson = sheet.secondPerson();
        this.deciding = sheet.deciding();
        this.coldSetClock = sheet.coldSetClock();
        this.coldSetAttempts = sheet.coldSetAttempts();
        this.coldSetAmount = sheet.coldSetAmount();
        this.triageTolerances = sheet.triageTolerances();
        this.state = CharacteristicState.OPEN;
    }

    /** Nominal and limits frozen at release; a missing limit is an open side. */
    record Limits(
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper) {}

    Characteristic again(long operationId) {
        Characteristic copy = new Characteristic();
        copy.operationId = operationId;
        copy.position = position;
        copy.code = code;
        copy.name = name;
        copy.unit = unit;
        copy.decimals = decimals;
        copy.nominal = nominal;
        copy.lowerLimit = lowerLimit;
        copy.upperLimit = upperLimit;
        copy.gaugeKind = gaugeKind;
        copy.points = points;
        copy.reduction = reduction;
        copy.rule = rule;
        copy.signers = signers;
        copy.sided = sided;
        copy.readBack = readBack;
        copy.secondPerson = secondPerson;
        copy.deciding = deciding;
        copy.coldSetClock = coldSetClock;
        copy.coldSetAttempts = coldSetAttempts;
        copy.coldSetAmount = coldSetAmount;
        copy.triageTolerances = triageTolerances;
        copy.state = onOwnSheet() ? CharacteristicState.OWN_SHEET : CharacteristicState.OPEN;
        return copy;
    }

    /** Takes the verdict of the newest valid reading. */
    void judge(CharacteristicState verdict, long readingId) {
        this.state = verdict;
        this.readingId = readingId;
    }

    /** The part was bent, or done over: what was read before no longer speaks for it. */
    void readAgain() {
        state = onOwnSheet() ? CharacteristicState.OWN_SHEET : CharacteristicState.OPEN;
        readingId = null;
        nonconformance = null;
        concessionUntil = null;
    }

    /** What its reading rests on is in doubt: it lets no gate be passed until that is over. */
    void doubt() {
        state = CharacteristicState.UNDECIDED;
    }

    /** It is not: the verdict of its reading stands again. */
    void doubtOver() {
        state = CharacteristicState.CONFORMING;
    }

    boolean onOwnSheet() {
        return state == CharacteristicState.OWN_SHEET;
    }

    /** Nothing is read here any more: another module records it and guards the gate. */
    void toOwnSheet() {
        state = CharacteristicState.OWN_SHEET;
        readingId = null;
    }

    /** That sheet no longer has it: it is read here. */
    void fromOwnSheet() {
        state = CharacteristicState.OPEN;
    }

    /** @param until last day on which it lets the gate be passed */
    void concede(String nonconformance, LocalDate until) {
        boolean anew = state == CharacteristicState.CONCESSION && concessionUntil != null;
        if (state != CharacteristicState.NOT_CONFORMING && state != CharacteristicState.UNDECIDED && !anew) {
            throw Refusal.state(
                    "Characteristic " + code + " cannot be released by a concession.",
                    "It is " + state.word() + ".",
                    "Only a reading that is not conforming or undecided can be conceded.");
        }
        this.state = CharacteristicState.CONCESSION;
        this.nonconformance = nonconformance;
        this.concessionUntil = until;
    }

    /** Whether it is kept by a concession that lets no gate be passed any more on that day. */
    boolean concessionOver(LocalDate day) {
        return state == CharacteristicState.CONCESSION && concessionUntil != null && concessionUntil.isBefore(day);
    }

    /** What is answered where its concession, which ended, would be needed. */
    Refusal concessionEnded(String what) {
        return Refusal.state(
                what,
                "The concession " + nonconformance + " for " + code + ", " + name + ", ended on " + concessionUntil
                        + ".",
                "Open a nonconformance for the characteristic; QA lead and owner decide anew.");
    }

    /** Kept, by a signed concession, although a newer revision asks for something else. */
    void keepByConcession(String source, LocalDate until) {
        state = CharacteristicState.CONCESSION;
        nonconformance = source;
        concessionUntil = until;
    }

    /** Takes over the verdict reached under an older revision. */
    void carriedOver(Characteristic old) {
        state = old.state;
        readingId = old.readingId;
        nonconformance = old.nonconformance;
        concessionUntil = old.concessionUntil;
    }

    @Nullable
    LocalDate concessionUntil() {
        return concessionUntil;
    }

    List<String> points() {
        return List.of(points.split("\\|"));
    }

    List<Signer> signers() {
        return signers.isEmpty()
                ? List.of()
                : Arrays.stream(signers.split(",")).map(Signer::valueOf).toList();
    }

    long id() {
        return id;
    }

    long operationId() {
        return operationId;
    }

    int position() {
        return position;
    }

    String code() {
        return code;
    }

    String name() {
        return name;
    }

    String unit() {
        return unit;
    }

    int decimals() {
        return decimals;
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

    String gaugeKind() {
        return gaugeKind;
    }

    Reduction reduction() {
        return reduction;
    }

    Rule rule() {
        return rule;
    }

    boolean sided() {
        return sided;
    }

    boolean readBack() {
        return readBack;
    }

    boolean secondPerson() {
        return secondPerson;
    }

    boolean deciding() {
        return deciding;
    }

    @Nullable
    String coldSetClock() {
        return coldSetClock;
    }

    int coldSetAttempts() {
        return coldSetAttempts;
    }

    @Nullable
    BigDecimal coldSetAmount() {
        return coldSetAmount;
    }

    @Nullable
    BigDecimal triageTolerances() {
        return triageTolerances;
    }

    CharacteristicState state() {
        return state;
    }

    @Nullable
    Long readingId() {
        return readingId;
    }

    @Nullable
    String nonconformance() {
        return nonconformance;
    }
}
