package org.trammel.shop.coats;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.web.Formats;

/**
 * Guards the film of a second colour: laid and measured before anything is sprayed over it, off in time after, and off before
 * the next coat.
 */
@Component
class LineGate {

    private final LineRecords records;
    private final Formats formats;
    private final Clock clock;

    LineGate(LineRecords records, Formats formats, Clock clock) {
        this.records = records;
        this.formats = formats;
        this.clock = clock;
    }

    /** What an operation in which film is laid or drawn off waits for. */
    Optional<Refusal> outstanding(Awaited.AtItsGate operation, Finish finish) {
        SecondColour asked = finish.content().secondColour();
        boolean lays = finish.lays(operation.code());
        if (asked == null || !lays && !finish.draws(operation.code())) {
            return Optional.empty();
        }
        FilmLines film = records.of(operation.travellerId(), operation.operationId(), asked, finish);
        if (lays) {
            return bare(film, operation.cannot());
        }
        return film.on().isEmpty()
                ? Optional.empty()
                : film.late(clock.instant())
                        ? Optional.of(late(film, finish, operation.cannot()))
                        : Optional.of(Refusal.state(
                                operation.cannot(),
                                "Film is still on: " + String.join(", ", film.on()) + ".",
                                "Draw it off, look under its edge, and keep both on the sheet of the coat."));
    }

    /** What the first step of a coat, or of drawing film off, waits for. */
    Optional<Refusal> before(Awaited.AtItsGate operation, Finish finish, String cannot) {
        SecondColour asked = finish.content().secondColour();
        if (asked == null) {
            return Optional.empty();
        }
        FilmLines film = records.of(operation.travellerId(), operation.operationId(), asked, finish);
        if (finish.draws(operation.code())) {
            return film.on().isEmpty() || !film.late(clock.instant())
                    ? Optional.empty()
                    : Optional.of(late(film, finish, cannot));
        }
        if (!finish.coats(operation.code())) {
            return Optional.empty();
        }
        return switch (records.before(operation.travellerId(), operation.operationId(), finish)) {
            case LAID -> bare(film, cannot);
            case DRAWN -> covered(film.on(), cannot);
            case NOTHING -> Optional.empty();
        };
    }

    private static Optional<Refusal> bare(FilmLines film, String cannot) {
        return film.off().isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.state(
                        cannot,
                        "No film is recorded for the second colour: " + String.join(", ", film.off()) + ".",
                        "Lay it, measure its line from the landmark, and keep it on the sheet of the coat."));
    }

    private static Optional<Refusal> covered(List<String> on, String cannot) {
        return on.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.state(
                        cannot,
                        "Film of the second colour is still on: " + String.join(", ", on) + ".",
                        "Call the QA lead: it would be buried under this coat."));
    }

    /** Film that stayed on too long: it is not pulled, and nobody has to do it to find that out. */
    Refusal late(FilmLines film, Finish finish, String cannot) {
        Instant until = java.util.Objects.requireNonNull(film.until());
        return Refusal.state(
                cannot,
                "The second colour was sprayed at " + formats.moment(film.sprayedAt()) + ", and its film comes off by "
                        + formats.moment(until) + ", "
                        + java.util.Objects.requireNonNull(finish.content().secondColour())
                                .most_min()
                        + " min after (finish " + finish.called() + ").",
                "Leave the film on and call the QA lead: a nonconformance decides whether the coat is stripped.");
    }
}
