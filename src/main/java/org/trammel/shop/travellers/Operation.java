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
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Signer;

/** One operation of one frame, frozen from the route, and where it stands. */
@Entity
@Table(name = "operation")
class Operation {

    /** Room between neighbours for the operations that loops put in. */
    static final int SPACING = 1000;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "traveller_id")
    private long travellerId;

    private int position;
    private String code;
    private String name;
    private String station;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Point point;

    private String signers;
    private @Nullable String qualification;
    private boolean together;
    private boolean outside;
    private boolean irreversible;
    private boolean joins;

    /** It joins the parts of the frame, or comes after the one that does. */
    @Column(name = "since_join")
    private boolean sinceJoin;

    @Column(name = "repeat_limit")
    private @Nullable Integer repeatLimit;

    private String caution;

    @Column(name = "loop_number")
    private int loop;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private OperationState state;

    @Column(name = "state_reason")
    private @Nullable String stateReason;

    @Column(name = "started_at")
    private @Nullable Instant startedAt;

    @Column(name = "finished_at")
    private @Nullable Instant finishedAt;

    @Column(name = "at_point_since")
    private @Nullable Instant atPointSince;

    /** Done under an older revision and kept by a signed decision: its signatures stand there. */
    private boolean carried;

    /** Signatures up to this one no longer count: the operation was opened again after it. */
    @Column(name = "void_signature_id")
    private @Nullable Long voidSignatureId;

    @Version
    private long version;

    protected Operation() {}

    Operation(long travellerId, int position, OperationSheet sheet, boolean sinceJoin) {
        this.travellerId = travellerId;
        this.position = position;
        this.code = sheet.code();
        this.name = sheet.name();
        this.station = sheet.station();
        this.point = sheet.point();
        this.signers = sheet.signers().stream().map(Enum::name).collect(Collectors.joining(","));
        this.qualification = sheet.qualification();
        this.together = sheet.together();
        this.outside = sheet.outside();
        this.irreversible = sheet.irreversible();
        this.joins = sheet.joins();
        this.sinceJoin = sinceJoin;
        this.repeatLimit = sheet.repeatLimit();
        this.caution = sheet.caution();
        this.state = OperationState.WAITING;
    }

    /** The same operation once more, as a later loop. */
    Operation again(int position, int loop) {
        return again(travellerId, position, loop);
    }

    /** The same operation once more, for a traveller. */
    Operation again(long travellerId, int position, int loop) {
        Operation copy = new Operation();
        copy.travellerId = travellerId;
        copy.position = position;
        copy.code = code;
        copy.name = name;
        copy.station = station;
        copy.point = point;
        copy.signers = signers;
        copy.qualification = qualification;
        copy.together = together;
        copy.outside = outside;
        copy.irreversible = irreversible;
        copy.joins = joins;
        copy.sinceJoin = sinceJoin;
        copy.repeatLimit = repeatLimit;
        copy.caution = caution;
        copy.loop = loop;
        copy.state = OperationState.WAITING;
        return copy;
    }

    /** Makes room for the operations of a loop put in before it. */
    void moveDown(int by) {
        position += by;
    }

    void begin(Instant at) {
        require(EnumSet.of(OperationState.WAITING), "begun");
        state = OperationState.IN_WORK;
        startedAt = at;
    }

    void stop(String reason) {
        require(EnumSet.of(OperationState.IN_WORK), "stopped");
        state = OperationState.STOPPED;
        stateReason = reason;
    }

    void resume() {
        require(EnumSet.of(OperationState.STOPPED), "taken up again");
        state = OperationState.IN_WORK;
        stateReason = null;
    }

    void sendOut() {
        if (!outside) {
            throw Refusal.state(
                    "Operation " + code + " cannot be sent out.",
                    "The route says it is done in the shop.",
                    "Ask the QA lead to release a route revision that allows it outside.");
        }
        require(EnumSet.of(OperationState.WAITING, OperationState.IN_WORK), "sent out");
        state = OperationState.AWAY;
    }

    void comeBack(Instant at) {
        require(EnumSet.of(OperationState.AWAY), "booked back");
        state = OperationState.IN_WORK;
        if (startedAt == null) {
            startedAt = at;
        }
    }

    /** The work is done; at a hold or witness point the signatures are outstanding. */
    void workDone(Instant at) {
        require(EnumSet.of(OperationState.IN_WORK), "finished");
        if (point == Point.NONE) {
            state = OperationState.DONE;
            finishedAt = at;
        } else {
            state = OperationState.AT_POINT;
            atPointSince = at;
        }
    }

    void signedOff(Instant at) {
        require(EnumSet.of(OperationState.AT_POINT), "signed off");
        state = OperationState.DONE;
        finishedAt = at;
    }

    /** A tick or a reading was taken back. */
    void reopen(@Nullable Long lastSignatureId) {
        require(EnumSet.of(OperationState.IN_WORK, OperationState.AT_POINT, OperationState.DONE), "opened again");
        state = OperationState.IN_WORK;
        finishedAt = null;
        atPointSince = null;
        carried = false;
        stateReason = null;
        voidSignatureId = lastSignatureId;
    }

    void doneOver(String reason) {
        require(EnumSet.complementOf(EnumSet.of(OperationState.REPEATED, OperationState.AWAY)), "done over");
        state = OperationState.REPEATED;
        stateReason = reason;
    }

    /** Taken over, with its evidence and its times, from the traveller of an older revision. */
    void carriedOver(Operation old, String reason) {
        require(EnumSet.of(OperationState.WAITING), "carried over");
        state = OperationState.DONE;
        startedAt = old.startedAt;
        finishedAt = old.finishedAt;
        carried = true;
        stateReason = reason;
    }

    void requireAt(String deed, OperationState... allowed) {
        require(EnumSet.copyOf(List.of(allowed)), deed);
    }

    private void require(Set<OperationState> allowed, String deed) {
        if (!allowed.contains(state)) {
            throw Refusal.state(
                    "Operation " + code + " cannot be " + deed + ".",
                    "Its state is " + state.word() + (stateReason == null ? "." : ": " + stateReason + "."),
                    "That is done in the state "
                            + allowed.stream().map(OperationState::word).collect(Collectors.joining(" or "))
                            + ". Open the frame again to see where it stands.");
        }
    }

    List<Signer> signers() {
        return signers.isEmpty()
                ? List.of()
                : Arrays.stream(signers.split(",")).map(Signer::valueOf).toList();
    }

    boolean counts(Signature signature) {
        return voidSignatureId == null || signature.id() > voidSignatureId;
    }

    long id() {
        return id;
    }

    long travellerId() {
        return travellerId;
    }

    int position() {
        return position;
    }

    String code() {
        return code;
    }

    /** Code with the loop, as people say it: 100, or 100 loop 2. */
    String called() {
        return loop == 0 ? code : code + " loop " + loop;
    }

    String name() {
        return name;
    }

    String station() {
        return station;
    }

    Point point() {
        return point;
    }

    @Nullable
    String qualification() {
        return qualification;
    }

    boolean together() {
        return together;
    }

    boolean outside() {
        return outside;
    }

    boolean irreversible() {
        return irreversible;
    }

    boolean joins() {
        return joins;
    }

    boolean sinceJoin() {
        return sinceJoin;
    }

    @Nullable
    Integer repeatLimit() {
        return repeatLimit;
    }

    String caution() {
        return caution;
    }

    int loop() {
        return loop;
    }

    OperationState state() {
        return state;
    }

    boolean carried() {
        return carried;
    }

    @Nullable
    String stateReason() {
        return stateReason;
    }

    @Nullable
    Instant startedAt() {
        return startedAt;
    }

    @Nullable
    Instant finishedAt() {
        return finishedAt;
    }

    @Nullable
    Instant atPointSince() {
        return atPointSince;
    }
}
