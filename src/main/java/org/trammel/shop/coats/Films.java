package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.coating.FilmArea;
import org.trammel.calc.coating.FilmGauge;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.ovens.Curing;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Travellers;

/** Takes maps of a film, and what is read of how a coat holds and looks, and judges each by its finish. */
@Service
public class Films {

    private static final String NOT_TAKEN = "The film was not taken.";
    private static final String NOT_JUDGED = "The look was not taken.";
    private static final int LONGEST = 20_000;

    private final FilmRepository rows;
    private final LookRepository looks;
    private final CoatTurn turn;
    private final CoatGauges gauges;
    private final CoatFaults faults;
    private final CoatGives gives;
    private final Curing curing;
    private final Travellers travellers;
    private final Settings settings;
    private final ActLog log;

    Films(
            FilmRepository rows,
            LookRepository looks,
            CoatTurn turn,
            CoatGauges gauges,
            CoatFaults faults,
            CoatGives gives,
            Curing curing,
            Travellers travellers,
            Settings settings,
            ActLog log) {
        this.rows = rows;
        this.looks = looks;
        this.turn = turn;
        this.gauges = gauges;
        this.faults = faults;
        this.gives = gives;
        this.curing = curing;
        this.travellers = travellers;
        this.settings = settings;
        this.log = log;
    }

    /** Every map of an operation, the newest last. */
    @Transactional(readOnly = true)
    public List<Film> of(long operationId) {
        return rows.findByOperationIdOrderById(operationId).stream()
                .map(FilmRow::film)
                .toList();
    }

    @Transactional(readOnly = true)
    public List<Look> looksOf(long operationId) {
        return looks.findByOperationIdOrderById(operationId).stream()
                .map(LookRow::look)
                .toList();
    }

    /** A film is measured when it is a film: powder that is not melted yet lies thicker, and comes off under the probe. */
    private void requireCured(long operationId) {
        travellers.operation(operationId).steps().stream()
                .filter(step -> step.irreversible() && !step.ticked())
                .findFirst()
                .ifPresent(step -> {
                    throw Refusal.state(
                            NOT_TAKEN,
                            "“" + step.text() + "” is not ticked: the film is not there yet.",
                            "Read it when the coat is sprayed, cured and cold.");
                });
        curing.outstanding(operationId, NOT_TAKEN).ifPresent(why -> {
            throw why;
        });
    }

    /**
     * Takes a map.
     *
     * @param byArea the readings of each area as they were typed, spots parted by a stroke; all areas of the finish
     * @param gauge number on its label; its principle must feel the metal of the frame
     */
    @Transactional
    public Film take(Act act, long operationId, Map<String, String> byArea, String gauge) {
        if (!turn.opens(act, "take-film", operationId)) {
            return last(of(operationId));
        }
        CoatTurn.At at = turn.atHand(act, operationId, NOT_TAKEN);
        CoatAsked asked = asked(at, NOT_TAKEN);
        requireCured(operationId);
        List<FilmArea> areas = new ArrayList<>();
        for (int i = 0; i < asked.areas().size(); i++) {
            String name = asked.areas().get(i);
            String typed = byArea.getOrDefault(name, "");
            if (typed.isBlank()) {
                throw Refusal.input(
                        "area" + i, NOT_TAKEN, name + " was not read.", "Read every area of the map, then send it.");
            }
            areas.add(FilmMap.area(name, "area" + i, NOT_TAKEN, typed));
        }
        if (byArea.keySet().stream().anyMatch(name -> !asked.areas().contains(name))) {
            throw Refusal.input(
                    "areas",
                    NOT_TAKEN,
                    "It names an area that the map of finish " + at.finish().called() + " does not have.",
                    "Read the areas of the map.");
        }
        List<BigDecimal> all = FilmMap.all(areas, NOT_TAKEN);
        FilmGauge.Metal metal = CoatGauges.filmMetal(at.head().metal());
        FilmGauge principle = gauges.principle(gauge, metal, NOT_TAKEN);
        Means means = gauges.film(gauge, principle, all);
        BigDecimal factor = asked.guarded() ? settings.number("guard.factor") : null;
        if (factor != null && (means.u() == null || means.u().signum() == 0)) {
            throw Refusal.state(
                    NOT_TAKEN,
                    means.code() + " is unfit for this: its uncertainty is not known, and the finish counts it.",
                    "Read the film with a gauge whose uncertainty is known.");
        }
        FilmJudge.Judged judged = factor == null
                ? FilmJudge.plain(areas, asked.filmRule(), NOT_TAKEN)
                : FilmJudge.guarded(areas, asked.filmRule(), Objects.requireNonNull(means.u()), factor, NOT_TAKEN);
        gives.film(act, at, all, means);
        String written = FilmMap.written(areas);
        if (written.length() > LONGEST) {
            throw Refusal.input("areas", NOT_TAKEN, "The map is too long.", "Key fewer digits to a reading.");
        }
        Film film = new Film(
                written.lines().toList(),
                means.code(),
                principle,
                means.u(),
                judged.guard_um(),
                judged.verdict(),
                judged.words(),
                CoatFaults.numberOf(
                        judged.verdict(),
                        () -> faults.open(
                                act, at, "Film not conforming.", judged.words().get(0))),
                act.by(),
                act.at());
        rows.saveAndFlush(new FilmRow(operationId, at.finish().id(), film, factor, act));
        told(act, at, "film-judged", film.verdict(), means.code());
        return film;
    }

    /** What is asked of how a coat holds and looks; null for what the finish does not ask. */
    public record Seen(
            @Nullable Integer crossCut,
            @Nullable BigDecimal gloss,
            @Nullable BigDecimal colourDifference,
            @Nullable String gauge) {}

    @Transactional
    public Look look(Act act, long operationId, Seen seen) {
        if (!turn.opens(act, "take-look", operationId)) {
            return last(looksOf(operationId));
        }
        CoatTurn.At at = turn.atHand(act, operationId, NOT_JUDGED);
        CoatAsked asked = asked(at, NOT_JUDGED);
        if (!asked.asksLook()) {
            throw Refusal.state(
                    NOT_JUDGED,
                    "Finish " + at.finish().called() + " asks for no cross-cut, gloss or colour.",
                    "Leave a note on the frame instead.");
        }
        LookJudge judge = new LookJudge(asked, NOT_JUDGED);
        Map<String, Boolean> found = new LinkedHashMap<>(judge.of(seen));
        String gauge = asked.gloss() == null && asked.mostColourDifference() == null
                ? null
                : gauges.look(seen.gauge() == null ? "" : seen.gauge());
        CoatVerdict verdict = found.containsValue(false) ? CoatVerdict.NOT_CONFORMING : CoatVerdict.CONFORMING;
        Look look = new Look(
                asked.mostCrossCut() == null ? null : seen.crossCut(),
                asked.gloss() == null ? null : seen.gloss(),
                asked.mostColourDifference() == null ? null : seen.colourDifference(),
                verdict,
                List.copyOf(found.keySet()),
                CoatFaults.numberOf(
                        verdict, () -> faults.open(act, at, "Coat not conforming.", String.join(" ", found.keySet()))),
                act.by(),
                act.at());
        looks.saveAndFlush(new LookRow(operationId, at.finish().id(), look, gauge, act));
        told(act, at, "look-judged", verdict, gauge == null ? "" : gauge);
        return look;
    }

    private void told(Act act, CoatTurn.At at, String what, CoatVerdict verdict, String gauge) {
        log.event(
                Chains.bearing(at.head().serial()),
                what,
                Map.of(
                        "operation",
                        at.line().operationId(),
                        "finish",
                        at.finish().id(),
                        "verdict",
                        verdict.name(),
                        "gauge",
                        gauge));
        turn.come(act, at.line().operationId());
    }

    private static CoatAsked asked(CoatTurn.At at, String deed) {
        CoatAsked asked = at.finish().coat();
        if (asked == null || !asked.operations().contains(at.line().code())) {
            throw Refusal.state(
                    deed,
                    "Finish " + at.finish().called() + " asks for no film at operation "
                            + at.line().code() + ".",
                    "Read it at the operation that the finish names for it.");
        }
        return asked;
    }

    private static <T> T last(List<T> all) {
        return all.get(all.size() - 1);
    }
}
