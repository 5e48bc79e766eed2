package org.trammel.shop.coats;

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
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.coating.FilmRule;
import org.trammel.shop.inspection.GivenCodes;
import org.trammel.shop.records.Act;

@Entity
@Table(name = "coat_finish")
class FinishRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String letter;

    @Column(nullable = false)
    private String what;

    @Column(nullable = false)
    private String metals;

    @Column(name = "blast_operations", nullable = false)
    private String blastOperations;

    @Column(name = "coat_operations", nullable = false)
    private String coatOperations;

    @Column(nullable = false)
    private String masks;

    @Column(name = "most_bar", nullable = false)
    private BigDecimal most_bar;

    @Column(name = "most_earth_mohm")
    private @Nullable BigDecimal mostEarth_MOhm;

    @Column(name = "film_operations")
    private @Nullable String filmOperations;

    @Column(name = "film_areas")
    private @Nullable String filmAreas;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "film_rule")
    private CoatAsked.@Nullable Rule filmRule;

    @Column(name = "film_least_um")
    private @Nullable BigDecimal filmLeast_um;

    @Column(name = "film_most_um")
    private @Nullable BigDecimal filmMost_um;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "film_level")
    private FilmRule.@Nullable Level filmLevel;

    @Column(name = "film_strict", nullable = false)
    private boolean filmStrict;

    @Column(name = "film_guarded", nullable = false)
    private boolean filmGuarded;

    @Column(name = "most_cross_cut")
    private @Nullable Integer mostCrossCut;

    @Column(name = "gloss_wanted")
    private @Nullable BigDecimal gloss;

    @Column(name = "gloss_within")
    private @Nullable BigDecimal glossWithin;

    @Column(name = "most_colour_difference")
    private @Nullable BigDecimal mostColourDifference;

    @Column(name = "lay_operations")
    private @Nullable String layOperations;

    @Column(name = "draw_operations")
    private @Nullable String drawOperations;

    @Column(name = "film_lines")
    private @Nullable String filmLines;

    @Column(name = "most_film_min")
    private @Nullable Integer mostFilm_min;

    @Column(nullable = false)
    private String source;

    /** A line to a figure: its name, then the codes of the characteristics it gives. */
    @Column(nullable = false)
    private String gives;

    @Column(name = "set_by", nullable = false)
    private long setBy;

    @Column(name = "set_at", nullable = false)
    private Instant setAt;

    @Column(name = "superseded_at")
    private @Nullable Instant supersededAt;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Version
    private long version;

    protected FinishRow() {}

    FinishRow(String code, String letter, NewFinish content, @Nullable CoatAsked coat, Act act) {
        this.code = code;
        this.letter = letter;
        this.what = content.what();
        this.metals = String.join(" ", content.metals());
        this.blastOperations = String.join(" ", content.blastOperations());
        this.coatOperations = String.join(" ", content.coatOperations());
        this.masks = String.join("\n", content.masks());
        this.most_bar = content.most_bar();
        this.mostEarth_MOhm = content.mostEarth_MOhm();
        this.source = content.source();
        this.gives = GivenCodes.written(content.gives());
        this.setBy = act.by();
        this.setAt = act.at();
        this.actId = act.id();
        if (coat != null) {
            ask(coat);
        }
        SecondColour second = content.secondColour();
        if (second != null) {
            layOperations = String.join(" ", second.layOperations());
            drawOperations = String.join(" ", second.drawOperations());
            filmLines = String.join("\n", second.lines());
            mostFilm_min = second.most_min();
        }
    }

    private @Nullable SecondColour secondColour() {
        return layOperations == null || drawOperations == null || filmLines == null
                ? null
                : new SecondColour(
                        list(layOperations, " "), list(drawOperations, " "), list(filmLines, "\n"), mostFilm_min);
    }

    private void ask(CoatAsked coat) {
        filmOperations = String.join(" ", coat.operations());
        filmAreas = String.join("\n", coat.areas());
        filmRule = coat.rule();
        filmLeast_um = coat.least_um();
        filmMost_um = coat.most_um();
        filmLevel = coat.level();
        filmStrict = coat.strict();
        filmGuarded = coat.guarded();
        mostCrossCut = coat.mostCrossCut();
        gloss = coat.gloss();
        glossWithin = coat.glossWithin();
        mostColourDifference = coat.mostColourDifference();
    }

    private @Nullable CoatAsked coat() {
        return filmOperations == null || filmAreas == null
                ? null
                : new CoatAsked(
                        list(filmOperations, " "),
                        list(filmAreas, "\n"),
                        filmRule,
                        filmLeast_um,
                        filmMost_um,
                        filmLevel,
                        filmStrict,
                        filmGuarded,
                        mostCrossCut,
                        gloss,
                        glossWithin,
                        mostColourDifference);
    }

    void supersede(Act act) {
        supersededAt = act.at();
    }

    Finish finish() {
        return new Finish(
                id,
                code,
                letter,
                new NewFinish(
                        what,
                        list(metals, " "),
                        list(blastOperations, " "),
                        list(coatOperations, " "),
                        list(masks, "\n"),
                        most_bar,
                        mostEarth_MOhm,
                        source,
                        secondColour(),
                        GivenCodes.read(CoatFigure.class, gives)),
                coat(),
                setBy,
                setAt,
                supersededAt);
    }

    private static List<String> list(String words, String sign) {
        return words.isEmpty() ? List.of() : List.of(words.split(sign));
    }
}
