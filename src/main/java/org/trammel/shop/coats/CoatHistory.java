package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.dew.DewMargins;
import org.trammel.shop.dew.DewPurpose;
import org.trammel.shop.web.Formats;

/** Tells the story of a frame what was recorded of its surface and its coat, each thing in a sentence. */
@Service
@Transactional(readOnly = true)
public class CoatHistory {

    private final MaskRepository masks;
    private final BlastRepository blasts;
    private final DewMargins margins;
    private final SprayRepository sprays;
    private final FilmRepository films;
    private final LookRepository looks;
    private final StripRepository strips;
    private final LineRepository lines;
    private final Formats formats;

    CoatHistory(
            MaskRepository masks,
            BlastRepository blasts,
            DewMargins margins,
            SprayRepository sprays,
            FilmRepository films,
            LookRepository looks,
            StripRepository strips,
            LineRepository lines,
            Formats formats) {
        this.masks = masks;
        this.blasts = blasts;
        this.margins = margins;
        this.sprays = sprays;
        this.films = films;
        this.looks = looks;
        this.strips = strips;
        this.lines = lines;
        this.formats = formats;
    }

    /**
     * Something that was recorded.
     *
     * @param kind of the mark beside it
     */
    public record Told(long operationId, Instant at, String kind, String what, long by) {}

    /** What was recorded at operations, by a fixed number of statements however many they are. */
    public List<Told> of(Collection<Long> all) {
        List<Told> told = new ArrayList<>();
        margins.all(all, DewPurpose.COAT).forEach(one -> told.add(air(one.operationId(), one.margin())));
        Set<Long> operations = all.isEmpty() ? Set.of() : masks.recorded(all);
        if (operations.isEmpty()) {
            return told;
        }
        masks.findByOperationIdInOrderById(operations)
                .forEach(row -> told.add(new Told(
                        row.operationId(),
                        row.at(),
                        row.fitted() ? "done" : "",
                        (row.fitted() ? "masked: " : "mask taken off: ") + row.landmark(),
                        row.by())));
        blasts.findByOperationIdInOrderById(operations).forEach(row -> told.add(blast(row.operationId(), row.blast())));
        sprays.findByOperationIdInOrderById(operations).forEach(row -> told.add(spray(row.operationId(), row.spray())));
        films.findByOperationIdInOrderById(operations).forEach(row -> told.add(film(row.operationId(), row.film())));
        looks.findByOperationIdInOrderById(operations).forEach(row -> told.add(look(row.operationId(), row.look())));
        strips.findByOperationIdInOrderById(operations).forEach(row -> told.add(strip(row.operationId(), row.strip())));
        lines.findByOperationIdInOrderById(operations).forEach(row -> told.add(line(row.operationId(), row.line())));
        return told;
    }

    private Told line(long operation, MaskLine line) {
        return new Told(
                operation,
                line.at(),
                "done",
                line.laid()
                        ? "film laid: " + line.name() + ", " + bare(line.drive_mm()) + " mm drive, "
                                + bare(line.nonDrive_mm()) + " mm non-drive, " + line.gauge()
                        : "film drawn off: " + line.name() + ", " + bare(line.bleed_mm()) + " mm under its edge, "
                                + line.gauge(),
                line.by());
    }

    private Told blast(long operation, SurfaceRecord.Blast blast) {
        return new Told(
                operation,
                blast.at(),
                blast.gentle() ? "done" : "not-conforming",
                "blasted with " + blast.lot() + " at " + bare(blast.pressure_bar()) + " bar, " + blast.gauge()
                        + ", at most " + bare(blast.most_bar()) + " bar; " + blast.cleanliness(),
                blast.by());
    }

    private Told air(long operation, DewMargin air) {
        return new Told(
                operation,
                air.at(),
                air.enough() ? "done" : "waiting",
                "metal " + bare(air.metal_degC()) + " °C" + air.coldest() + ", " + air.pointInFull() + " "
                        + formats.number(air.point_degC(), 1)
                        + " °C: " + formats.number(air.margin_K(), 2) + " K above it, "
                        + (air.enough() ? "enough" : "too little") + " by the " + bare(air.wanted_K())
                        + " K asked for",
                air.by());
    }

    private Told spray(long operation, SurfaceRecord.Spray spray) {
        return new Told(
                operation,
                spray.at(),
                "done",
                "powder or paint " + spray.lot()
                        + (spray.earth_MOhm() == null
                                ? ""
                                : ", earth " + bare(spray.earth_MOhm()) + " MΩ with " + spray.gauge()),
                spray.by());
    }

    private static Told film(long operation, Film film) {
        return new Told(
                operation,
                film.at(),
                film.verdict().mark(),
                "film read with " + film.gauge() + ", " + film.verdict().word() + ": "
                        + film.words().get(0) + number(film.nonconformance()),
                film.by());
    }

    private static Told look(long operation, Look look) {
        return new Told(
                operation,
                look.at(),
                look.verdict().mark(),
                "look " + look.verdict().word() + ": " + String.join(" ", look.words()) + number(look.nonconformance()),
                look.by());
    }

    private static Told strip(long operation, Strip strip) {
        return new Told(operation, strip.at(), "rework", strip.method().word() + ": " + strip.words(), strip.by());
    }

    private static String number(@org.jspecify.annotations.Nullable String nonconformance) {
        return nonconformance == null ? "" : " " + nonconformance;
    }

    private String bare(@Nullable BigDecimal figure) {
        return figure == null ? "" : formats.number(figure.stripTrailingZeros());
    }
}
