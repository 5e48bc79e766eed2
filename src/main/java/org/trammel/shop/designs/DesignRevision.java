package org.trammel.shop.designs;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.MapKeyColumn;
import jakarta.persistence.MapKeyEnumerated;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** One lettered revision of a design and the verbs that move it from draft to release. */
@Entity
@Table(name = "design_revision")
class DesignRevision {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "design_id")
    private Design design;

    @Column(name = "position")
    private int position;

    private String letter;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private DesignState state;

    private String metal;
    private String kind;
    private String description;
    private @Nullable Long routeRevisionId;
    private @Nullable String testFamily;

    @Column(name = "drawing_sha256")
    private @Nullable String drawing;

    private @Nullable String drawingName;
    private @Nullable String drawingInputs;
    private @Nullable Long reasonWords;
    private long begunBy;
    private Instant begunAt;
    private @Nullable Long sentBy;
    private @Nullable Instant sentAt;
    private @Nullable Long approvedBy;
    private @Nullable Instant approvedAt;
    private @Nullable LocalDate approvedOn;

    @Column(name = "approved_sha256")
    private @Nullable String approvedDrawing;

    private @Nullable Long approverWords;
    private @Nullable Instant checkedAt;
    private @Nullable Long releasedBy;
    private @Nullable Instant releasedAt;
    private @Nullable Instant supersededAt;
    private @Nullable Long withdrawnBy;
    private @Nullable Instant withdrawnAt;
    private @Nullable Long withdrawnWords;

    @ElementCollection
    @CollectionTable(name = "design_nominal", joinColumns = @JoinColumn(name = "revision_id"))
    @MapKeyColumn(name = "characteristic")
    private Map<String, Nominal> nominals = new HashMap<>();

    @ElementCollection
    @CollectionTable(name = "design_from_drawing", joinColumns = @JoinColumn(name = "revision_id"))
    @Column(name = "characteristic")
    private Set<String> fromDrawing = new HashSet<>();

    @ElementCollection
    @CollectionTable(name = "design_geometry", joinColumns = @JoinColumn(name = "revision_id"))
    @MapKeyColumn(name = "input")
    @MapKeyEnumerated(EnumType.STRING)
    @Column(name = "amount")
    private Map<GeometryInput, BigDecimal> geometry = new EnumMap<>(GeometryInput.class);

    @ElementCollection
    @CollectionTable(name = "design_component", joinColumns = @JoinColumn(name = "revision_id"))
    @OrderColumn(name = "line")
    private List<Component> components = new ArrayList<>();

    @Version
    private long version;

    protected DesignRevision() {}

    DesignRevision(Design design, NewDesign first, Act act) {
        this.design = design;
        this.position = 1;
        this.letter = Letters.of(1);
        this.state = DesignState.DRAFT;
        this.metal = first.metal();
        this.kind = first.kind();
        this.description = first.description();
        this.components.addAll(first.components());
        this.begunBy = act.by();
        this.begunAt = act.at();
    }

    /** The next revision: a copy as a draft. The drawing is not copied, since a change wants a drawing of its own. */
    DesignRevision next(int newPosition, long why, Act act) {
        DesignRevision next = new DesignRevision();
        next.design = design;
        next.position = newPosition;
        next.letter = Letters.of(newPosition);
        next.state = DesignState.DRAFT;
        next.metal = metal;
        next.kind = kind;
        next.description = description;
        next.routeRevisionId = routeRevisionId;
        next.testFamily = testFamily;
        next.nominals.putAll(nominals);
        next.fromDrawing.addAll(fromDrawing);
        next.geometry.putAll(geometry);
        next.components.addAll(components);
        next.reasonWords = why;
        next.begunBy = act.by();
        next.begunAt = act.at();
        return next;
    }

    void change(DesignDraft draft) {
        DesignVerb.CHANGE.refuseUnless(letter, state);
        description = draft.description();
        metal = draft.metal();
        kind = draft.kind();
        routeRevisionId = draft.routeRevisionId();
        testFamily = draft.testFamily();
        if (!components.equals(draft.components())) {
            components.clear();
            components.addAll(draft.components());
        }
        geometry.keySet().retainAll(draft.geometry().keySet());
        put(draft.geometry());
    }

    /** Takes a layout. A stack that was asked for and is not among its numbers is given up. */
    void layOut(Map<GeometryInput, BigDecimal> layout) {
        DesignVerb.CHANGE.refuseUnless(letter, state);
        if (!layout.containsKey(GeometryInput.STACK_ASKED)) {
            geometry.remove(GeometryInput.STACK_ASKED);
        }
        put(layout);
    }

    private void put(Map<GeometryInput, BigDecimal> amounts) {
        amounts.forEach((input, amount) -> {
            BigDecimal before = geometry.get(input);
            if (before == null || before.compareTo(amount) != 0) {
                geometry.put(input, amount);
            }
        });
    }

    void give(Map<String, Nominal> given) {
        DesignVerb.CHANGE.refuseUnless(letter, state);
        nominals.putAll(given);
        fromDrawing.removeAll(given.keySet());
    }

    /** Takes these from the drawing where nobody typed another, and leaves those that it gives no more. */
    void takeFromDrawing(Map<String, Nominal> drawn) {
        fromDrawing.removeIf(code -> {
            boolean gone = !drawn.containsKey(code);
            if (gone) {
                nominals.remove(code);
            }
            return gone;
        });
        drawn.forEach((code, nominal) -> {
            Nominal before = nominals.get(code);
            boolean own = before == null || fromDrawing.contains(code);
            if (own && (before == null || !before.plain().equals(nominal.plain()))) {
                nominals.put(code, nominal);
            }
            if (own) {
                fromDrawing.add(code);
            }
        });
    }

    void drop(String characteristic) {
        DesignVerb.CHANGE.refuseUnless(letter, state);
        nominals.remove(characteristic);
        fromDrawing.remove(characteristic);
    }

    void draw(String sha256, String name) {
        DesignVerb.CHANGE.refuseUnless(letter, state);
        drawing = sha256;
        drawingName = name;
        drawingInputs = drawnInputs();
    }

    void send(Act act) {
        DesignVerb.SEND.refuseUnless(letter, state);
        SentDrawing.refuseUnlessFits(DesignVerb.SEND.undone(letter), drawing, fitsItsDrawing());
        state = DesignState.SENT;
        sentBy = act.by();
        sentAt = act.at();
    }

    void approve(Act act, String file, LocalDate on, long who) {
        DesignVerb.APPROVE.refuseUnless(letter, state);
        SentDrawing.refuseOther(DesignVerb.APPROVE.undone(letter), file, drawing);
        state = DesignState.APPROVED;
        approvedBy = act.by();
        approvedAt = act.at();
        approvedOn = on;
        approvedDrawing = file;
        approverWords = who;
    }

    void checked(Act act) {
        DesignVerb.SIGN.refuseUnless(letter, state);
        state = DesignState.CHECKED;
        checkedAt = act.at();
    }

    /** An answer changed after both had signed: they sign again. */
    void unchecked() {
        DesignVerb.ANSWER.refuseUnless(letter, state);
        if (state == DesignState.CHECKED) {
            state = DesignState.APPROVED;
            checkedAt = null;
        }
    }

    void release(Act act, long route) {
        DesignVerb.RELEASE.refuseUnless(letter, state);
        state = DesignState.RELEASED;
        routeRevisionId = route;
        releasedBy = act.by();
        releasedAt = act.at();
    }

    void withdraw(Act act, long why) {
        DesignVerb.WITHDRAW.refuseUnless(letter, state);
        state = DesignState.WITHDRAWN;
        withdrawnBy = act.by();
        withdrawnAt = act.at();
        withdrawnWords = why;
    }

    /** A later revision was sent or released. */
    void supersede(Instant at) {
        state = DesignState.SUPERSEDED;
        supersededAt = at;
    }

    DesignSheet sheet() {
        Map<String, Nominal> plainNominals = new TreeMap<>();
        nominals.forEach((code, nominal) -> plainNominals.put(code, nominal.plain()));
        return new DesignSheet(
                id,
                design.id(),
                design.drawnFor(),
                letter,
                state,
                metal,
                kind,
                description,
                routeRevisionId,
                plainNominals,
                Nominal.plain(geometry),
                components,
                drawing,
                testFamily);
    }

    RevisionSummary summary() {
        return new RevisionSummary(
                id,
                design.id(),
                letter,
                position,
                state,
                description,
                version,
                drawing,
                drawingName,
                reasonWords,
                begunBy,
                begunAt,
                sentBy,
                sentAt,
                approvedBy,
                approvedAt,
                approvedOn,
                approverWords,
                checkedAt,
                releasedBy,
                releasedAt,
                supersededAt,
                withdrawnBy,
                withdrawnAt,
                withdrawnWords);
    }

    long id() {
        return id;
    }

    Design design() {
        return design;
    }

    int position() {
        return position;
    }

    String letter() {
        return letter;
    }

    DesignState state() {
        return state;
    }

    String metal() {
        return metal;
    }

    @Nullable
    Long routeRevisionId() {
        return routeRevisionId;
    }

    @Nullable
    String testFamily() {
        return testFamily;
    }

    @Nullable
    Long approverWords() {
        return approverWords;
    }

    /** Hash of the inputs as they are now. */
    String drawnInputs() {
        return GateBasis.drawing(metal, kind, Nominal.plain(geometry), components);
    }

    /** Whether its drawing was added for the inputs as they are now. */
    boolean fitsItsDrawing() {
        return drawnInputs().equals(drawingInputs);
    }

    /** Whether the customer approved it by the very file that another revision has. */
    boolean approvedByFileOf(DesignRevision other) {
        return approvedDrawing != null && approvedDrawing.equals(other.drawing);
    }

    /** Characteristics whose nominal was taken from the drawing. */
    Set<String> fromDrawing() {
        return fromDrawing;
    }

    Map<String, Nominal> nominals() {
        return nominals;
    }

    long version() {
        return version;
    }
}
