package org.trammel.shop.gauges;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.JoinTable;
import jakarta.persistence.ManyToMany;
import jakarta.persistence.OneToMany;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** A gauge or set-up in the register; its verbs refuse from any state they have no business in. */
@Entity
@Table(name = "gauge")
class GaugeRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String what;

    @Column(nullable = false)
    private boolean setup;

    @Column(nullable = false)
    private boolean aid;

    @Column(name = "maker_number")
    private @Nullable String makerNumber;

    @Column(nullable = false)
    private String location;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private GaugeState state;

    @Column(name = "state_reason", nullable = false)
    private String stateReason;

    @Column(name = "state_since", nullable = false)
    private Instant stateSince;

    @Column(name = "calibrated_on")
    private @Nullable LocalDate calibratedOn;

    @Column(name = "due_on")
    private @Nullable LocalDate dueOn;

    private @Nullable String certificate;

    @Version
    private long version;

    @OneToMany(cascade = CascadeType.ALL, orphanRemoval = true)
    @JoinColumn(name = "gauge_id", nullable = false)
    private Set<GaugeRangeRow> ranges = new LinkedHashSet<>();

    @ManyToMany
    @JoinTable(
            name = "gauge_part",
            joinColumns = @JoinColumn(name = "setup_id"),
            inverseJoinColumns = @JoinColumn(name = "part_id"))
    private Set<GaugeRow> parts = new LinkedHashSet<>();

    protected GaugeRow() {}

    GaugeRow(String code, NewGauge entry, Set<GaugeRow> parts, Instant at) {
        this.code = code;
        this.setup = !parts.isEmpty();
        this.parts = parts;
        this.state = GaugeState.IN_USE;
        this.stateReason = "";
        this.stateSince = at;
        describe(entry);
        takeDatesOfParts();
    }

    void edit(NewGauge entry) {
        refuseUnless("changed", GaugeState.IN_USE, GaugeState.BLOCKED, GaugeState.FAILED);
        describe(entry);
    }

    private void describe(NewGauge entry) {
        this.what = entry.what();
        this.aid = entry.aid();
        this.makerNumber = entry.makerNumber();
        this.location = entry.location();
        if (!currentRanges().equals(entry.ranges())) {
            ranges.clear();
            entry.ranges().forEach(range -> ranges.add(new GaugeRangeRow(range)));
        }
    }

    /**
     * Takes over a calibration; one that is older than the newest only joins the history.
     *
     * @param sinceItFailed false for one from before the gauge was last found wrong: it says nothing of it since
     */
    void calibrated(LocalDate on, LocalDate due, String newCertificate, boolean sinceItFailed, Instant at) {
        requireMayBeCalibrated();
        if (calibratedOn == null || on.isAfter(calibratedOn)) {
            calibratedOn = on;
            dueOn = due;
            certificate = newCertificate;
        }
        if (state == GaugeState.FAILED && sinceItFailed) {
            turn(GaugeState.BLOCKED, "calibrated after it failed; the QA lead lets it be used again", at);
        }
    }

    void requireMayBeCalibrated() {
        refuseUnless("calibrated", GaugeState.IN_USE, GaugeState.BLOCKED, GaugeState.FAILED);
        if (setup) {
            throw Refusal.state(
                    code + " was not calibrated.",
                    "It is a set-up made of " + String.join(", ", partCodes()) + ".",
                    "Record the calibration of each of them.");
        }
    }

    void takeDatesOfParts() {
        if (!setup) {
            return;
        }
        boolean complete = parts.stream().allMatch(part -> part.calibratedOn != null);
        calibratedOn = complete
                ? earliest(parts.stream().map(part -> part.calibratedOn).toList())
                : null;
        dueOn = complete ? earliest(parts.stream().map(part -> part.dueOn).toList()) : null;
    }

    private static @Nullable LocalDate earliest(List<@Nullable LocalDate> days) {
        return days.stream()
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    void block(String reason, Instant at) {
        refuseUnless("blocked", GaugeState.IN_USE);
        turn(GaugeState.BLOCKED, reason, at);
    }

    void unblock(String reason, Instant at) {
        refuseUnless("unblocked", GaugeState.BLOCKED);
        turn(GaugeState.IN_USE, reason, at);
    }

    void requireMayFail() {
        refuseUnless("failed", GaugeState.IN_USE, GaugeState.BLOCKED, GaugeState.RETIRED);
        if (setup) {
            throw Refusal.state(
                    code + " was not failed.",
                    "It is a set-up made of " + String.join(", ", partCodes()) + ".",
                    "Fail the part that was found wrong, or block the set-up.");
        }
    }

    /** One that is retired stays so: what it read while it was in use is in doubt all the same. */
    void fail(String reason, Instant at) {
        requireMayFail();
        if (state != GaugeState.RETIRED) {
            turn(GaugeState.FAILED, reason, at);
        }
    }

    void retire(String reason, Instant at) {
        refuseUnless("retired", GaugeState.IN_USE, GaugeState.BLOCKED, GaugeState.FAILED);
        turn(GaugeState.RETIRED, reason, at);
    }

    private void turn(GaugeState next, String reason, Instant at) {
        state = next;
        stateReason = reason;
        stateSince = at;
    }

    private void refuseUnless(String done, GaugeState first, GaugeState... more) {
        if (!EnumSet.of(first, more).contains(state)) {
            throw Refusal.state(
                    code + " was not " + done + ".",
                    "It is " + state.word() + (stateReason.isEmpty() ? "." : ": " + stateReason + "."),
                    switch (state) {
                        case IN_USE -> "Block it first, with the reason.";
                        case BLOCKED -> "The QA lead unblocks it, or it is retired.";
                        case FAILED -> "Record its new calibration first.";
                        case RETIRED ->
                            done.equals("calibrated")
                                    ? "If it was found wrong, record that: what it read while it was in use is judged again."
                                    : "Register another gauge under a new number.";
                    });
        }
    }

    long id() {
        return id;
    }

    String code() {
        return code;
    }

    boolean setup() {
        return setup;
    }

    boolean aid() {
        return aid;
    }

    @Nullable
    String makerNumber() {
        return makerNumber;
    }

    String what() {
        return what;
    }

    GaugeState state() {
        return state;
    }

    String stateReason() {
        return stateReason;
    }

    Instant stateSince() {
        return stateSince;
    }

    @Nullable
    LocalDate calibratedOn() {
        return calibratedOn;
    }

    @Nullable
    LocalDate dueOn() {
        return dueOn;
    }

    Set<GaugeRow> parts() {
        return parts;
    }

    long version() {
        return version;
    }

    /** The gauges whose states and dates decide: the parts of a set-up, or the gauge itself. */
    Set<GaugeRow> made() {
        return setup ? parts : Set.of(this);
    }

    List<GaugeRange> currentRanges() {
        return ranges.stream()
                .sorted(Comparator.comparing(GaugeRangeRow::id, Comparator.nullsLast(Comparator.naturalOrder())))
                .map(GaugeRangeRow::range)
                .toList();
    }

    private List<String> partCodes() {
        return parts.stream().map(GaugeRow::code).sorted().toList();
    }

    Gauge gauge() {
        return new Gauge(
                id,
                code,
                what,
                setup,
                aid,
                makerNumber,
                location,
                state,
                stateReason,
                stateSince,
                calibratedOn,
                dueOn,
                certificate,
                currentRanges(),
                partCodes(),
                version);
    }
}
