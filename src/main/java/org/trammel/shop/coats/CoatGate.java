package org.trammel.shop.coats;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Awaited;

/** What a finished coat still wants before its operation may pass: the film by its map, and its look where that is asked. */
@Component
class CoatGate {

    private final FilmRepository films;
    private final LookRepository looks;
    private final CoatFaults faults;

    CoatGate(FilmRepository films, LookRepository looks, CoatFaults faults) {
        this.films = films;
        this.looks = looks;
        this.faults = faults;
    }

    Optional<Refusal> outstanding(Awaited.AtItsGate operation, Finish finish) {
        CoatAsked asked = finish.coat();
        if (asked == null || !finish.readsFilm(operation.code())) {
            return Optional.empty();
        }
        Film film = last(films.findByOperationIdOrderById(operation.operationId()).stream()
                .map(FilmRow::film)
                .toList());
        if (film == null && faults.conceded(operation, null)) {
            return Optional.empty();
        }
        if (film == null) {
            return Optional.of(Refusal.state(
                    operation.cannot(),
                    "Its film was not read by the map of finish " + finish.called() + ".",
                    "Read it on the sheet of the coat."));
        }
        if (film.verdict() != CoatVerdict.CONFORMING && !faults.conceded(operation, film.nonconformance())) {
            return Optional.of(refused(operation, "film", film.verdict(), film.words(), film.nonconformance()));
        }
        if (!asked.asksLook()) {
            return Optional.empty();
        }
        Look look = last(looks.findByOperationIdOrderById(operation.operationId()).stream()
                .map(LookRow::look)
                .toList());
        if (look == null) {
            return Optional.of(Refusal.state(
                    operation.cannot(),
                    "What finish " + finish.called() + " asks of cross-cut, gloss or colour is not entered.",
                    "Enter it on the sheet of the coat."));
        }
        return look.verdict() == CoatVerdict.CONFORMING || faults.conceded(operation, look.nonconformance())
                ? Optional.empty()
                : Optional.of(refused(operation, "look", look.verdict(), look.words(), look.nonconformance()));
    }

    private static Refusal refused(
            Awaited.AtItsGate operation,
            String what,
            CoatVerdict verdict,
            List<String> words,
            @Nullable String nonconformance) {
        return Refusal.state(
                operation.cannot(),
                "Its " + what + " is " + verdict.word() + ". "
                        + (verdict == CoatVerdict.UNDECIDED ? words.get(words.size() - 1) : words.get(0)),
                nonconformance == null
                        ? "Read it again with a gauge of less doubt; the QA lead may open a nonconformance."
                        : nonconformance + " decides what becomes of it.");
    }

    private static <T> @Nullable T last(List<T> all) {
        return all.isEmpty() ? null : all.get(all.size() - 1);
    }
}
