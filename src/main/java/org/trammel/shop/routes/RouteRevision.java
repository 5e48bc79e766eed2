package org.trammel.shop.routes;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.annotations.BatchSize;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** One revision of a route with everything in it; changed while it is a draft, never after. */
@Entity
@Table(name = "route_revision")
class RouteRevision {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "route_id", nullable = false)
    private RouteRow route;

    @Column(nullable = false)
    private int ordinal;

    @Column(nullable = false)
    private String letter;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private RevisionState state;

    @Column(name = "draft_of")
    private @Nullable Long draftOf;

    @Column(name = "released_of")
    private @Nullable Long releasedOf;

    @Column(nullable = false)
    private String origin;

    @Column(name = "drawn_by", nullable = false)
    private long drawnBy;

    @Column(name = "drawn_at", nullable = false)
    private Instant drawnAt;

    @Column(name = "released_by")
    private @Nullable Long releasedBy;

    @Column(name = "released_at")
    private @Nullable Instant releasedAt;

    @Column(name = "reason_words")
    private @Nullable Long reasonWords;

    @Column(name = "content_sha256")
    private @Nullable String contentSha256;

    @Column(name = "superseded_at")
    private @Nullable Instant supersededAt;

    @Column(nullable = false)
    private int edits;

    @Version
    private long version;

    @OneToMany(mappedBy = "revision", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("sequence")
    @BatchSize(size = 50)
    private List<OperationRow> operations = new ArrayList<>();

    @OneToMany(mappedBy = "revision", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("sequence")
    @BatchSize(size = 50)
    private List<ClockRow> clocks = new ArrayList<>();

    @OneToMany(mappedBy = "revision", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("sequence")
    @BatchSize(size = 50)
    private List<ChildRow> children = new ArrayList<>();

    protected RouteRevision() {}

    /** A new draft. */
    RouteRevision(RouteRow route, int ordinal, String origin, long by, Instant at) {
        this.route = route;
        this.ordinal = ordinal;
        this.letter = Letters.of(ordinal);
        this.state = RevisionState.DRAFT;
        this.draftOf = route.id();
        this.origin = origin;
        this.drawnBy = by;
        this.drawnAt = at;
    }

    /** Puts new content in the place of the old; rows that stay the same are left as they are. */
    void redraw(RouteSheet sheet, List<Part> parts) {
        requireDraft("was not changed");
        edits++;
        Rows.match(operations, sheet.operations(), OperationRow::code, OperationSheet::code, OperationRow::new)
                .forEach((row, wanted) -> row.becomes(this, sheet.operations().indexOf(wanted), wanted));
        Rows.match(clocks, sheet.clocks(), ClockRow::code, ClockSheet::code, ClockRow::new)
                .forEach((row, wanted) -> row.becomes(this, sheet.clocks().indexOf(wanted), wanted));
        Rows.match(children, parts, ChildRow::part, Part::part, ChildRow::new)
                .forEach((row, wanted) -> row.becomes(this, parts.indexOf(wanted), wanted));
    }

    /** Settles which revision of each child goes with this one. */
    void pin(ChildRow child, long childRevisionId) {
        requireDraft("was not released");
        child.pin(childRevisionId);
    }

    /** Puts the draft in force. The one it replaces is superseded by the caller, before this. */
    void release(long by, Instant at, long why, String sha256) {
        requireDraft("was not released");
        state = RevisionState.RELEASED;
        draftOf = null;
        releasedOf = route.id();
        releasedBy = by;
        releasedAt = at;
        reasonWords = why;
        contentSha256 = sha256;
    }

    void supersede(Instant at) {
        require(RevisionState.RELEASED, "was not superseded");
        state = RevisionState.SUPERSEDED;
        releasedOf = null;
        supersededAt = at;
    }

    /** Gives the draft up. Its letter is not given again. */
    void withdraw(long why) {
        requireDraft("was not withdrawn");
        state = RevisionState.WITHDRAWN;
        draftOf = null;
        reasonWords = why;
    }

    /** The last guard, should a way around the verbs be found: rows of a revision that is not a draft stay as they are. */
    void guardContent() {
        if (state != RevisionState.DRAFT) {
            throw new IllegalStateException("Revision " + letter + " of route " + route.id() + " is " + state.word()
                    + "; its content is never changed");
        }
    }

    void requireDraft(String deed) {
        require(RevisionState.DRAFT, deed);
    }

    private void require(RevisionState wanted, String deed) {
        if (state != wanted) {
            throw Refusal.state(
                    "Revision " + letter + " of " + route.code() + " " + deed + ".",
                    "It is " + state.word() + ", and only a revision that is " + wanted.word() + " allows it.",
                    state == RevisionState.RELEASED
                            ? "Draw up the next revision and change that."
                            : "Open the route and look at its revisions.");
        }
    }

    boolean draft() {
        return state == RevisionState.DRAFT;
    }

    long id() {
        return id;
    }

    RouteRow route() {
        return route;
    }

    int ordinal() {
        return ordinal;
    }

    String letter() {
        return letter;
    }

    RevisionState state() {
        return state;
    }

    long version() {
        return version;
    }

    List<OperationRow> operations() {
        return operations;
    }

    List<ClockRow> clocks() {
        return clocks;
    }

    List<ChildRow> children() {
        return children;
    }

    @Nullable
    String contentSha256() {
        return contentSha256;
    }

    @Nullable
    Long reasonWords() {
        return reasonWords;
    }

    /**
     * The revision in the list of its route.
     *
     * @param reason the words kept for it, null if there are none
     */
    RevisionSummary summary(@Nullable String reason) {
        return new RevisionSummary(
                id,
                letter,
                state,
                origin,
                drawnBy,
                drawnAt,
                releasedBy,
                releasedAt,
                reason,
                contentSha256,
                supersededAt,
                version);
    }
}
