package org.trammel.shop.coats;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.dew.MetalAirSent;
import org.trammel.shop.records.Act;

/** Surface and coat for programs. */
@RestController
@RequestMapping("/api/v1/coats")
@Tag(
        name = "Surface and coat",
        description = "What is recorded of a frame's surface at an operation that a finish names")
class CoatApi {

    private final Surfaces surfaces;
    private final Films films;
    private final CoatStrips strips;
    private final MaskLines lines;

    CoatApi(Surfaces surfaces, Films films, CoatStrips strips, MaskLines lines) {
        this.surfaces = surfaces;
        this.films = films;
        this.strips = strips;
        this.lines = lines;
    }

    @GetMapping("/{operationId}")
    @Operation(summary = "Masks, blast, air with metal, powder with earth, the newest of each")
    SurfaceRecord one(@PathVariable long operationId) {
        return surfaces.of(operationId);
    }

    record Mask(
            @Schema(description = "as the finish names it") @Nullable
            String landmark,

            boolean fitted) {}

    @PostMapping("/{operationId}/masks")
    SurfaceRecord mask(Act act, @PathVariable long operationId, @RequestBody Mask body) {
        return surfaces.mask(act, operationId, body.landmark(), body.fitted());
    }

    record Blast(
            @Schema(description = "code of the media's lot") @Nullable
            String lot,

            @Nullable BigDecimal pressureBar,
            @Nullable String gauge,

            @Schema(description = "what was looked at and how") @Nullable
            String cleanliness) {}

    @PostMapping("/{operationId}/blast")
    SurfaceRecord blast(Act act, @PathVariable long operationId, @RequestBody Blast body) {
        return surfaces.blasted(
                act,
                operationId,
                new Surfaces.Blasted(text(body.lot()), body.pressureBar(), text(body.gauge()), body.cleanliness()));
    }

    @PostMapping("/{operationId}/air")
    @Operation(summary = "Air and metal; the margin over the dew or frost point is computed and kept, enough or not")
    SurfaceRecord air(Act act, @PathVariable long operationId, @RequestBody MetalAirSent body) {
        return surfaces.measured(act, operationId, body.entry());
    }

    record Spray(
            @Schema(description = "code of the lot of powder or paint") @Nullable
            String lot,

            @Schema(description = "from hook to frame, where the finish asks for it") @Nullable
            BigDecimal earthMOhm,

            @Nullable String gauge) {}

    @PostMapping("/{operationId}/spray")
    SurfaceRecord spray(Act act, @PathVariable long operationId, @RequestBody Spray body) {
        return surfaces.spraying(
                act, operationId, new Surfaces.Spraying(text(body.lot()), body.earthMOhm(), body.gauge()));
    }

    /** @param areas readings of each area, spots parted by a stroke, such as "72 68 81 / 77 64 59" */
    record Readings(
            java.util.@Nullable Map<String, String> areas,
            @Nullable String gauge) {}

    @GetMapping("/{operationId}/films")
    @Operation(summary = "Every map of the film with its verdict, the newest last")
    java.util.List<Film> films(@PathVariable long operationId) {
        return films.of(operationId);
    }

    @PostMapping("/{operationId}/films")
    Film film(Act act, @PathVariable long operationId, @RequestBody Readings body) {
        return films.take(
                act, operationId, body.areas() == null ? java.util.Map.of() : body.areas(), text(body.gauge()));
    }

    record Seen(
            @Schema(description = "class of the panel, 0 to 5") @Nullable
            Integer crossCut,

            @Nullable BigDecimal gloss,

            @Schema(description = "from the ordered sample, ΔE00") @Nullable
            BigDecimal colourDifference,

            @Nullable String gauge) {}

    @GetMapping("/{operationId}/looks")
    @Operation(summary = "Cross-cut, gloss and colour with their verdict, the newest last")
    java.util.List<Look> looks(@PathVariable long operationId) {
        return films.looksOf(operationId);
    }

    @PostMapping("/{operationId}/looks")
    Look look(Act act, @PathVariable long operationId, @RequestBody Seen body) {
        return films.look(
                act, operationId, new Films.Seen(body.crossCut(), body.gloss(), body.colourDifference(), body.gauge()));
    }

    record FilmOn(
            @Schema(description = "as the finish names it") @Nullable
            String line,

            @Schema(description = "from its landmark, drive side") @Nullable
            BigDecimal driveMm,

            @Nullable BigDecimal nonDriveMm,
            @Nullable String gauge) {}

    @GetMapping("/{operationId}/film-lines")
    @Operation(summary = "The film of a second colour, line by line, and by when it must be off")
    FilmLines lines(@PathVariable long operationId) {
        return lines.of(operationId);
    }

    @PostMapping("/{operationId}/film-on")
    FilmLines lay(Act act, @PathVariable long operationId, @RequestBody FilmOn body) {
        return lines.lay(
                act, operationId, new MaskLines.Laid(body.line(), body.driveMm(), body.nonDriveMm(), body.gauge()));
    }

    record FilmOff(
            @Schema(description = "as the finish names it") @Nullable
            String line,

            @Schema(description = "of the second colour under the edge, at the worst place") @Nullable
            BigDecimal bleedMm,

            @Nullable String gauge) {}

    @PostMapping("/{operationId}/film-off")
    FilmLines draw(Act act, @PathVariable long operationId, @RequestBody FilmOff body) {
        return lines.draw(act, operationId, new MaskLines.Drawn(body.line(), body.bleedMm(), body.gauge()));
    }

    record Stripped(
            @Nullable StripMethod method,

            @Schema(description = "with what, and how long") @Nullable
            String words) {}

    @PostMapping("/{operationId}/strip")
    Strip strip(Act act, @PathVariable long operationId, @RequestBody Stripped body) {
        return strips.strip(act, operationId, body.method(), body.words());
    }

    private static String text(@Nullable String sent) {
        return sent == null ? "" : sent;
    }
}
