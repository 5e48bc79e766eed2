package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** Records the film of a second colour: each line as it is laid, and as it is drawn off within its time. */
@Service
public class MaskLines {

    private static final String NOT_LAID = "The film was not noted.";
    private static final String NOT_DRAWN = "The film was not noted as off.";
    private static final BigDecimal FARTHEST_MM = BigDecimal.valueOf(3000);
    private static final BigDecimal WIDEST_MM = BigDecimal.valueOf(50);

    private final LineRepository rows;
    private final LineRecords records;
    private final LineGate gate;
    private final CoatTurn turn;
    private final CoatGauges gauges;
    private final CoatGives gives;
    private final ActLog log;

    MaskLines(
            LineRepository rows,
            LineRecords records,
            LineGate gate,
            CoatTurn turn,
            CoatGauges gauges,
            CoatGives gives,
            ActLog log) {
        this.rows = rows;
        this.records = records;
        this.gate = gate;
        this.turn = turn;
        this.gauges = gauges;
        this.gives = gives;
        this.log = log;
    }

    /** How the film stands at an operation of a finish; no lines where the finish asks for no second colour. */
    @Transactional(readOnly = true)
    public FilmLines of(long operationId) {
        CoatTurn.At at = turn.of(operationId);
        SecondColour asked = at.finish().content().secondColour();
        return asked == null
                ? new FilmLines(List.of(), null, null)
                : records.of(at.head().travellerId(), operationId, asked, at.finish());
    }

    /** Whether film is laid at an operation: where the finish says, or right before the coat that goes over it. */
    boolean laidAt(CoatTurn.At at) {
        return at.finish().lays(at.line().code())
                || at.finish().coats(at.line().code())
                        && records.before(at.head().travellerId(), at.line().operationId(), at.finish())
                                == LineRecords.Before.LAID;
    }

    /** A line as it was laid, measured on both sides from its landmark. */
    public record Laid(
            @Nullable String line,
            @Nullable BigDecimal drive_mm,
            @Nullable BigDecimal nonDrive_mm,
            @Nullable String gauge) {}

    /** Notes a line of film. Laid again, the newest counts. */
    @Transactional
    public FilmLines lay(Act act, long operationId, Laid entry) {
        if (!turn.opens(act, "lay-film", operationId)) {
            return of(operationId);
        }
        CoatTurn.At at = turn.atHand(act, operationId, NOT_LAID);
        SecondColour asked = at.finish().content().secondColour();
        if (asked == null || !laidAt(at)) {
            throw elsewhere(at, NOT_LAID, "laid");
        }
        int place = place(asked, entry.line(), NOT_LAID);
        BigDecimal drive = figure("drive", "The drive side", NOT_LAID, entry.drive_mm(), FARTHEST_MM);
        BigDecimal other = figure("nonDrive", "The non-drive side", NOT_LAID, entry.nonDrive_mm(), FARTHEST_MM);
        List<BigDecimal> both = List.of(drive, other);
        Means gauge = gauges.line(entry.gauge(), both);
        String name = asked.lines().get(place);
        rows.saveAndFlush(new LineRow(
                operationId, new MaskLine(name, true, drive, other, null, gauge.code(), act.by(), act.at()), act));
        gives.line(act, at, CoatFigure.LINE, place, both, gauge);
        return told(act, at, "film-laid", name);
    }

    /** A line as it was drawn off, and how far the second colour ran under it. */
    public record Drawn(
            @Nullable String line,
            @Nullable BigDecimal bleed_mm,
            @Nullable String gauge) {}

    @Transactional
    public FilmLines draw(Act act, long operationId, Drawn entry) {
        if (!turn.opens(act, "draw-film", operationId)) {
            return of(operationId);
        }
        CoatTurn.At at = turn.atHand(act, operationId, NOT_DRAWN);
        SecondColour asked = at.finish().content().secondColour();
        if (asked == null || !at.finish().draws(at.line().code())) {
            throw elsewhere(at, NOT_DRAWN, "drawn off");
        }
        int place = place(asked, entry.line(), NOT_DRAWN);
        String name = asked.lines().get(place);
        FilmLines film = records.of(at.head().travellerId(), operationId, asked, at.finish());
        if (film.sprayedAt() == null) {
            throw Refusal.state(
                    NOT_DRAWN,
                    "No tick tells when the second colour was sprayed.",
                    "Call the QA lead: whether the film comes off in time cannot be told.");
        }
        if (film.lines().get(place).last() == null) {
            throw Refusal.state(
                    NOT_DRAWN, "No film was laid at " + name + ".", "Look at the frame, and call the QA lead.");
        }
        if (film.lines().get(place).on() && film.late(act.at())) {
            throw gate.late(film, at.finish(), NOT_DRAWN);
        }
        BigDecimal bleed = entry.bleed_mm();
        if (bleed == null || bleed.signum() < 0 || bleed.compareTo(WIDEST_MM) > 0) {
            throw Refusal.input(
                    "bleed",
                    NOT_DRAWN,
                    bleed == null
                            ? "How far the colour ran under the edge is missing."
                            : bleed.toPlainString() + " mm is not 0 to " + WIDEST_MM + " mm.",
                    "Look along the whole edge with the loupe; 0 where nothing ran.");
        }
        Means gauge = gauges.edge(entry.gauge(), bleed);
        rows.saveAndFlush(new LineRow(
                operationId, new MaskLine(name, false, null, null, bleed, gauge.code(), act.by(), act.at()), act));
        gives.line(act, at, CoatFigure.BLEED, place, List.of(bleed), gauge);
        return told(act, at, "film-drawn-off", name);
    }

    private FilmLines told(Act act, CoatTurn.At at, String what, String name) {
        long operation = at.line().operationId();
        log.event(
                Chains.bearing(at.head().serial()),
                what,
                Map.of("operation", operation, "finish", at.finish().id(), "line", name));
        turn.come(act, operation);
        return of(operation);
    }

    private static Refusal elsewhere(CoatTurn.At at, String deed, String what) {
        return Refusal.state(
                deed,
                "By finish " + at.finish().called() + " no film is " + what + " at operation "
                        + at.line().code() + ".",
                "Record it at the operation in which it is done.");
    }

    private static int place(SecondColour asked, @Nullable String line, String deed) {
        int place = asked.lines().indexOf(line);
        if (place < 0) {
            throw Refusal.input("line", deed, "The finish has no such line.", "Choose one from its list.");
        }
        return place;
    }

    private static BigDecimal figure(
            String field, String what, String deed, @Nullable BigDecimal value, BigDecimal most) {
        if (value == null || value.signum() <= 0 || value.compareTo(most) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    value == null
                            ? what + " is missing."
                            : what + ", " + value.toPlainString() + " mm, does not lie above 0 and up to " + most
                                    + " mm.",
                    "Measure from the landmark to the edge of the film, in mm.");
        }
        return value;
    }
}
