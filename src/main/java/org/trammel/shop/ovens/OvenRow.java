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
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.shop.records.Refusal;

@Entity
@Table(name = "oven")
class OvenRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String what;

    @Column(nullable = false)
    private String purposes;

    @Column(name = "uniformity_k", nullable = false)
    private BigDecimal uniformity_K;

    @Column(name = "length_mm", nullable = false)
    private int length_mm;

    @Column(name = "width_mm", nullable = false)
    private int width_mm;

    @Column(name = "height_mm", nullable = false)
    private int height_mm;

    @Column(name = "most_kg", nullable = false)
    private BigDecimal most_kg;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private OvenState state;

    @Column(name = "state_reason", nullable = false)
    private String stateReason;

    @Column(name = "state_since", nullable = false)
    private Instant stateSince;

    @Version
    private long version;

    protected OvenRow() {}

    OvenRow(String code, NewOven entry, Instant at) {
        this.code = code;
        this.state = OvenState.IN_USE;
        this.stateReason = "";
        this.stateSince = at;
        describe(entry);
    }

    private void describe(NewOven entry) {
        what = entry.what();
        purposes = entry.purposes().stream().map(Purpose::name).collect(Collectors.joining(" "));
        uniformity_K = Objects.requireNonNull(entry.uniformity_K());
        length_mm = Objects.requireNonNull(entry.length_mm()).intValueExact();
        width_mm = Objects.requireNonNull(entry.width_mm()).intValueExact();
        height_mm = Objects.requireNonNull(entry.height_mm()).intValueExact();
        most_kg = Objects.requireNonNull(entry.most_kg());
    }

    void edit(NewOven entry) {
        refuseRetired("changed");
        describe(entry);
    }

    void block(String why, Instant at) {
        refuseRetired("blocked");
        turn(OvenState.BLOCKED, why, at);
    }

    void unblock(String why, Instant at) {
        if (state != OvenState.BLOCKED) {
            throw Refusal.state(
                    code + " was not let be used again.",
                    "It is " + state.word() + ".",
                    "Open its sheet again to see where it stands.");
        }
        turn(OvenState.IN_USE, why, at);
    }

    void retire(String why, Instant at) {
        refuseRetired("retired");
        turn(OvenState.RETIRED, why, at);
    }

    void refuseRetired(String deed) {
        if (state == OvenState.RETIRED) {
            throw Refusal.state(
                    code + " was not " + deed + ".", "It is retired.", "Register another oven under its own number.");
        }
    }

    private void turn(OvenState next, String why, Instant at) {
        state = next;
        stateReason = why;
        stateSince = at;
    }

    long id() {
        return id;
    }

    String code() {
        return code;
    }

    OvenState state() {
        return state;
    }

    String stateReason() {
        return stateReason;
    }

    BigDecimal uniformity_K() {
        return uniformity_K;
    }

    BigDecimal most_kg() {
        return most_kg;
    }

    int longest_mm() {
        return Math.max(length_mm, Math.max(width_mm, height_mm));
    }

    long version() {
        return version;
    }

    private Set<Purpose> purposes() {
        return Stream.of(purposes.split(" "))
                .filter(name -> !name.isEmpty())
                .map(Purpose::valueOf)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Purpose.class)));
    }

    Oven oven(List<Fitted> fitted, OvenLocks locks) {
        return new Oven(
                id,
                code,
                what,
                purposes(),
                uniformity_K,
                length_mm,
                width_mm,
                height_mm,
                most_kg,
                state,
                stateReason,
                stateSince,
                version,
                fitted,
                locks.sentences(),
                locks.surveyed_degC());
    }
}
