package org.trammel.shop.alignment;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Keyed;

/** The alignment table for programs. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Alignment table", description = "Raw figures of a frame, in mm, and what is reduced from them and judged.")
class TableApi {

    private final RawFigures figures;
    private final Reductions reductions;
    private final TurnOfSheet turns;
    private final TableCharacteristics characteristics;
    private final Travellers travellers;

    TableApi(
            RawFigures figures,
            Reductions reductions,
            TurnOfSheet turns,
            TableCharacteristics characteristics,
            Travellers travellers) {
        this.figures = figures;
        this.reductions = reductions;
        this.turns = turns;
        this.characteristics = characteristics;
        this.travellers = travellers;
    }

    record Figure(
            @Schema(description = "place on the plate, such as SEAT_LOW") @Nullable
            String spot,

            @Schema(
                    description = "mm as the gauge shows it, as JSON number or text",
                    oneOf = {BigDecimal.class, String.class})
            @Nullable
            String mm,

            @Schema(description = "number of the gauge") @Nullable
            String gauge,

            @Schema(description = "figure that stands there now and is corrected; left out if none does") @Nullable
            Long seen,

            @Schema(description = "what was wrong with that one") @Nullable
            String reason,

            @Schema(description = "true to say an unlikely figure again") @Nullable
            Boolean confirm) {}

    record SetUp(
            TableSetUp.@Nullable Datum datum,
            TableSetUp.@Nullable Base base,
            @Nullable Boolean driveUp,
            @Nullable BigDecimal seatLowMm,
            @Nullable BigDecimal seatHighMm,
            @Nullable BigDecimal tubeBaseMm,
            @Nullable BigDecimal mandrelBaseMm,

            @Schema(description = "where heights are of the tube's upper side; left out where they are of its middle")
            @Nullable
            BigDecimal seatDiameterMm,

            @Nullable BigDecimal headDiameterMm,
            @Nullable BigDecimal mandrelDiameterMm,

            @Schema(description = "true where tubes are read from above and from below") @Nullable
            Boolean bothSides,

            @Schema(description = "true where the side view is read by heights, a quarter turn apart") @Nullable
            Boolean sideView,

            @Schema(description = "setUpId of the sheet as it was read; left out if it has none") @Nullable
            Long seen) {}

    record Points(
            @Schema(description = "one line for each: feature; name; x; y; z in mm") @Nullable
            String lines,

            @Nullable String gauge) {}

    record Said(@Nullable String reason) {}

    record OnTable(
            @Nullable String name,

            @Schema(description = "one for each sample point; empty if it is measured elsewhere") @Nullable
            List<Deviation> deviations,

            @Nullable String source) {}

    @GetMapping("/operations/{id}/table")
    @Operation(summary = "The sheet of an operation as it stands: set-up, raw figures, reductions with their budgets")
    SheetLine sheet(@PathVariable long id) {
        return turns.sheet(id, travellers.headOf(id).travellerId());
    }

    @PutMapping("/operations/{id}/table/set-up")
    @Operation(
            summary = "Says how the frame lies and is read; what is left out stays as it is",
            description = "409 if somebody else said it meanwhile.")
    SheetLine setUp(Act act, @PathVariable long id, @RequestBody SetUp sent) {
        TableSetUp now = turns.setUp(id);
        figures.setUp(
                act,
                id,
                new TableSetUp(
                        sent.datum() == null ? now.datum() : sent.datum(),
                        sent.base() == null ? now.base() : sent.base(),
                        sent.driveUp() == null ? now.driveUp() : sent.driveUp(),
                        or(sent.seatLowMm(), now.seatLow_mm()),
                        or(sent.seatHighMm(), now.seatHigh_mm()),
                        or(sent.tubeBaseMm(), now.tubeBase_mm()),
                        or(sent.mandrelBaseMm(), now.mandrelBase_mm()),
                        sent.seatDiameterMm(),
                        sent.headDiameterMm(),
                        sent.mandrelDiameterMm(),
                        sent.bothSides() == null ? now.bothSides() : sent.bothSides(),
                        sent.sideView() == null ? now.sideView() : sent.sideView()),
                sent.seen());
        return sheet(id);
    }

    private static BigDecimal or(@Nullable BigDecimal sent, BigDecimal now) {
        return sent == null ? now : sent;
    }

    @PostMapping("/operations/{id}/table/figures")
    @Operation(
            summary = "Keeps a raw figure",
            description = "428 asks about an unlikely figure: send it again with confirm. 409 names the figure that"
                    + " somebody else read there meanwhile.")
    SheetLine read(Act act, @PathVariable long id, @RequestBody Figure sent) {
        String what = "The figure is not kept.";
        figures.read(
                act,
                id,
                new RawFigures.Typed(
                        Keyed.one(Spot.class, "spot", what, sent.spot()),
                        Keyed.figure("mm", what, sent.mm()),
                        sent.gauge() == null ? "" : sent.gauge(),
                        sent.seen(),
                        sent.reason(),
                        Boolean.TRUE.equals(sent.confirm())));
        return sheet(id);
    }

    @PostMapping("/operations/{id}/table/figures/{figure}/strike-out")
    @Operation(summary = "Takes a figure out of what counts; it stays on record")
    SheetLine strikeOut(Act act, @PathVariable long id, @PathVariable long figure, @RequestBody Said said) {
        figures.strikeOut(act, id, figure, said.reason() == null ? "" : said.reason());
        return sheet(id);
    }

    @PostMapping("/operations/{id}/table/points")
    @Operation(summary = "Keeps points of an arm or probe, all or none")
    SheetLine points(Act act, @PathVariable long id, @RequestBody Points sent) {
        figures.points(
                act,
                id,
                PointLines.read(sent.lines() == null ? "" : sent.lines()),
                sent.gauge() == null ? "" : sent.gauge());
        return sheet(id);
    }

    @PostMapping("/operations/{id}/table/anew")
    @Operation(summary = "Begins an empty turn of the sheet; the figures of the one before stay on record")
    SheetLine anew(Act act, @PathVariable long id) {
        figures.anew(act, id);
        return sheet(id);
    }

    @PostMapping("/operations/{id}/table/reduction")
    @Operation(summary = "Reduces what stands on the sheet and gives it to be judged, in one act; the readings it gave")
    List<ReadingLine> reduce(Act act, @PathVariable long id) {
        return reductions.reduce(act, id);
    }

    @GetMapping("/table-characteristics")
    @Operation(summary = "Which characteristics are deviations of the table, by the name they have on the routes")
    List<TableCharacteristic> characteristics() {
        return characteristics.inForce();
    }

    @PostMapping("/table-characteristics")
    @Operation(summary = "Says what a characteristic of a name is on the table; for the QA lead")
    List<TableCharacteristic> put(Act act, @RequestBody OnTable sent) {
        characteristics.put(
                act,
                sent.name() == null ? "" : sent.name(),
                sent.deviations() == null ? List.of() : sent.deviations(),
                sent.source() == null ? "" : sent.source());
        return characteristics.inForce();
    }
}
