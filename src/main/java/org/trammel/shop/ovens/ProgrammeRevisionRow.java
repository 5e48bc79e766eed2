package org.trammel.shop.ovens;

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
import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.inspection.GivenCodes;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@Entity
@Table(name = "oven_programme_revision")
class ProgrammeRevisionRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.EAGER)
    @JoinColumn(name = "programme_id", nullable = false)
    private ProgrammeRow programme;

    @Column(nullable = false)
    private String letter;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private ProgrammeState state;

    @Column(nullable = false)
    private String what;

    @Column(nullable = false)
    private String metals;

    @Column(nullable = false)
    private String guards;

    @Column(name = "never_degc")
    private @Nullable BigDecimal never_degC;

    @Column(name = "reference_degc")
    private @Nullable BigDecimal reference_degC;

    @Column(name = "least_h")
    private @Nullable BigDecimal least_h;

    @Column(name = "most_h")
    private @Nullable BigDecimal most_h;

    @Column(name = "natural_ageing_h")
    private @Nullable BigDecimal naturalAgeing_h;

    @Column(name = "quench_delay_s")
    private @Nullable BigDecimal quenchDelay_s;

    @Column(name = "quench_to_age_h")
    private @Nullable BigDecimal quenchToAge_h;

    @Column(name = "counts_survey", nullable = false)
    private boolean countsSurvey;

    @Column(nullable = false)
    private String source;

    /** A line to a figure of the record: its name, then the codes of the characteristics it gives. */
    @Column(nullable = false)
    private String gives;

    @Column(name = "drafted_by", nullable = false)
    private long draftedBy;

    @Column(name = "drafted_at", nullable = false)
    private Instant draftedAt;

    @Column(name = "approved_by")
    private @Nullable Long approvedBy;

    @Column(name = "approved_at")
    private @Nullable Instant approvedAt;

    @Column(name = "superseded_at")
    private @Nullable Instant supersededAt;

    /** Counts changes of a draft, so that one of its steps alone is a change of it too. */
    @Column(nullable = false)
    private int changes;

    @Version
    private long version;

    @OneToMany(mappedBy = "revision", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("position")
    private Set<ProgrammeStepRow> steps = new LinkedHashSet<>();

    protected ProgrammeRevisionRow() {}

    ProgrammeRevisionRow(ProgrammeRow programme, String letter, NewProgramme content, Act act) {
        this.programme = programme;
        this.letter = letter;
        this.state = ProgrammeState.DRAFT;
        describe(content, act);
        addSteps(content);
    }

    private void describe(NewProgramme content, Act act) {
        what = content.what();
        metals = String.join(" ", content.metals());
        guards = String.join(" ", content.guards());
        never_degC = content.never_degC();
        reference_degC = content.reference_degC();
        least_h = content.least_h();
        most_h = content.most_h();
        naturalAgeing_h = content.naturalAgeing_h();
        quenchDelay_s = content.quenchDelay_s();
        quenchToAge_h = content.quenchToAge_h();
        countsSurvey = content.countsSurvey();
        source = content.source();
        gives = GivenCodes.written(content.gives());
        draftedBy = act.by();
        draftedAt = act.at();
    }

    void addSteps(NewProgramme content) {
        content.steps().forEach(step -> steps.add(new ProgrammeStepRow(this, steps.size() + 1, step)));
    }

    /** Takes another content over, its steps apart: they are added once the old ones are gone. */
    void change(NewProgramme content, Act act) {
        requireDraft("changed");
        describe(content, act);
        changes++;
        steps.clear();
    }

    void approve(Act act) {
        requireDraft("approved");
        state = ProgrammeState.APPROVED;
        approvedBy = act.by();
        approvedAt = act.at();
    }

    void supersede(Act act) {
        state = ProgrammeState.SUPERSEDED;
        supersededAt = act.at();
    }

    private void requireDraft(String deed) {
        if (state != ProgrammeState.DRAFT) {
            throw Refusal.state(
                    "Programme " + programme.code() + " " + letter + " was not " + deed + ".",
                    "It is " + state.word() + "; what frames were treated by is never changed.",
                    "Draw up a new revision.");
        }
    }

    long id() {
        return id;
    }

    ProgrammeState state() {
        return state;
    }

    @Nullable
    Instant approvedAt() {
        return approvedAt;
    }

    String letter() {
        return letter;
    }

    long version() {
        return version;
    }

    boolean isFor(String metal) {
        return list(metals).contains(metal);
    }

    Map<RunFigure, List<String>> gives() {
        return GivenCodes.read(RunFigure.class, gives);
    }

    boolean guards(String operation) {
        return list(guards).contains(operation);
    }

    private static List<String> list(String words) {
        return words.isEmpty() ? List.of() : List.of(words.split(" "));
    }

    Programme programme() {
        return new Programme(
                id,
                programme.code(),
                programme.purpose(),
                letter,
                state,
                new NewProgramme(
                        what,
                        list(metals),
                        list(guards),
                        steps.stream().map(ProgrammeStepRow::step).toList(),
                        never_degC,
                        reference_degC,
                        least_h,
                        most_h,
                        naturalAgeing_h,
                        quenchDelay_s,
                        quenchToAge_h,
                        countsSurvey,
                        source,
                        gives()),
                draftedBy,
                draftedAt,
                approvedBy,
                approvedAt,
                version);
    }
}
