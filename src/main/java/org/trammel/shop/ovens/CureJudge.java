package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.CureWindow;
import org.trammel.calc.thermal.Finding;
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.LoadTrace;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;

/**
 * Compares what a run did to the metal with what the sheet of each powder in it asks: too little leaves it soft, too much
 * changes its colour. A programme says what the oven does; only the powder says what cures it.
 *
 * <p>Each run is judged by itself; cures of several runs are never added up. A sheet prints minutes of one stay at a
 * temperature of the metal, and a coat that cooled half cured is stoved again in full, which is common practice and said from
 * memory; so nothing is taken for cured that no single run cured. Nor is the upper side added up: a base coat under a second
 * colour and a clear one is baked three times by its route, and would then be over-cured on every such frame. What bakes on top
 * of each other do to the coat is read as gloss and colour difference, and what they do to the metal the heat ledger sums.
 */
@Component
class CureJudge {

    private final LoadedRepository frames;
    private final ObjectProvider<CuredByHeat> sprayed;

    CureJudge(LoadedRepository frames, ObjectProvider<CuredByHeat> sprayed) {
        this.frames = frames;
        this.sprayed = sprayed;
    }

    /** What the record says of each powder in the run; nothing of one whose sheet was not entered. */
    List<Finding> of(RunRow run, Programme programme, LoadTrace metal) {
        return programme.purpose() == Purpose.CURE
                ? coats(run).stream()
                        .flatMap(coat -> findings(coat, metal).stream())
                        .toList()
                : List.of();
    }

    /** Lots in a run with which it is not compared, since no sheet of them says what cures them. */
    List<String> unknown(RunRow run, Programme programme) {
        return programme.purpose() == Purpose.CURE
                ? coats(run).stream()
                        .filter(coat -> coat.window() == null)
                        .map(CuredByHeat.Coat::lot)
                        .toList()
                : List.of();
    }

    private List<CuredByHeat.Coat> coats(RunRow run) {
        Instant until = run.startedAt();
        if (until == null) {
            return List.of();
        }
        Map<String, CuredByHeat.Coat> coats = new LinkedHashMap<>();
        frames.findByRunIdOrderById(run.id()).stream()
                .filter(frame -> frame.state() != FrameState.TAKEN_OUT)
                .flatMap(frame -> on(frame.travellerId(), until).stream())
                .forEach(coat -> coats.putIfAbsent(coat.lot(), coat));
        return List.copyOf(coats.values());
    }

    /** What is on a frame since the run before that cured it. */
    private List<CuredByHeat.Coat> on(long travellerId, Instant until) {
        Instant after = frames.curedUntil(travellerId, until).orElse(null);
        return sprayed.stream()
                .flatMap(one -> one.on(travellerId, after, until).stream())
                .toList();
    }

    private static List<Finding> findings(CuredByHeat.Coat coat, LoadTrace metal) {
        Answer<CureWindow> window = coat.window();
        if (window == null) {
            return List.of();
        }
        String lot = coat.lot() + ", " + coat.cure() + " by its sheet: ";
        Answer<CureWindow.Cure> cure = window.then(asked -> asked.of(metal));
        if (cure instanceof Answer.NotDeterminable<CureWindow.Cure> gap) {
            return List.of(new Finding(
                    Judged.UNDECIDED,
                    lot + gap.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" "))));
        }
        CureWindow.Cure there = ((Answer.Determined<CureWindow.Cure>) cure).value();
        List<Finding> findings = new ArrayList<>();
        there.findings().forEach(one -> findings.add(new Finding(one.judged(), lot + small(one.words()))));
        return findings;
    }

    private static String small(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    /** Refuses a frame whose powder the programme cannot cure, wherever in its bands the metal lies. */
    Optional<Refusal> cannot(Programme programme, long travellerId, Instant now, String deed) {
        if (programme.purpose() != Purpose.CURE) {
            return Optional.empty();
        }
        for (CuredByHeat.Coat coat : on(travellerId, now)) {
            if (!(coat.window() instanceof Answer.Determined<CureWindow> there)) {
                continue;
            }
            double most = share(programme, there.value(), true);
            double least = share(programme, there.value(), false);
            if (most < there.value().least_share() || least > there.value().most_share()) {
                return Optional.of(Refusal.state(
                        deed,
                        coat.lot() + " on it asks for " + coat.cure() + " of the metal; programme " + programme.called()
                                + " cures it to " + percent(least) + " to " + percent(most) + ", and "
                                + percent(there.value().least_share()) + " to "
                                + percent(there.value().most_share()) + " are asked for.",
                        "Choose the programme of its powder. Powders of other sheets are cured in another load."));
            }
        }
        return Optional.empty();
    }

    private static double share(Programme programme, CureWindow window, boolean hot) {
        return programme.content().steps().stream()
                .mapToDouble(step -> step.soak_h().doubleValue()
                        * 60
                        / window.minutesAt(step.set_degC().doubleValue()
                                + (hot
                                        ? step.above_K().doubleValue()
                                        : -step.below_K().doubleValue())))
                .sum();
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
