package org.trammel.shop.bench;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.web.Keyed;

/** Readings and cold-sets for programs. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Readings", description = "Raw values as read, the verdict by the stated rule, and cold-sets.")
class ReadingsApi {

    private static final String NOT_TAKEN = "The reading is not taken.";

    private final Readings readings;
    private final ColdSets coldSets;
    private final Gauges gauges;
    private final Evidence evidence;
    private final Settings settings;
    private final Clock clock;

    ReadingsApi(
            Readings readings, ColdSets coldSets, Gauges gauges, Evidence evidence, Settings settings, Clock clock) {
        this.readings = readings;
        this.coldSets = coldSets;
        this.gauges = gauges;
        this.evidence = evidence;
        this.settings = settings;
        this.clock = clock;
    }

    record Taken(
            @ArraySchema(
                    arraySchema =
                            @Schema(
                                    description =
                                            "one value for each sample point, in the unit of the characteristic (mm, °, °C,"
                                                    + " …), as JSON number or as text that keeps its decimals, such as"
                                                    + " \"0.30\"; plus is the drive side"),
                    schema = @Schema(oneOf = {BigDecimal.class, String.class}))
            @Nullable
            List<String> raw,

            @Schema(description = "number of the gauge or measuring set-up") @Nullable
            String gauge,

            @Schema(description = "temperature of the part, °C, as JSON number or text") @Nullable
            String temperatureDegC,

            @Schema(description = "true to say an unlikely value again") @Nullable
            Boolean confirm) {}

    record Correction(
            @Nullable Taken reading,

            @Schema(description = "what was wrong with the one it replaces") @Nullable
            String reason) {}

    record Push(
            @Schema(description = "permanent set aimed at, towards the nominal, in the unit of the characteristic")
            @Nullable
            String amount,

            @Schema(description = "how far it was pushed, mm; left out if not measured") @Nullable
            String pushMm) {}

    @GetMapping("/characteristics/{id}/gauges")
    @Operation(summary = "Gauges and set-ups that may read a characteristic today; u in its unit")
    List<Means> usable(@PathVariable long id) {
        Evidence.Wanted wanted = evidence.wanted(id);
        return gauges.usableFor(wanted.gaugeKind(), wanted.unit(), settings.dayOf(clock.instant()));
    }

    @PostMapping("/characteristics/{id}/readings")
    @Operation(
            summary = "Takes a reading and judges it",
            description = "428 asks about an unlikely value: send it again with confirm.")
    ReadingLine read(Act act, @PathVariable long id, @RequestBody Taken taken) {
        return readings.read(act, id, input(taken));
    }

    @PostMapping("/readings/{id}/correction")
    @Operation(summary = "Corrects a mistyped reading; the old one stays and is marked")
    ReadingLine correct(Act act, @PathVariable long id, @RequestBody Correction correction) {
        return readings.correct(
                act,
                id,
                input(Needed.in("reading", NOT_TAKEN, correction.reading())),
                correction.reason() == null ? "" : correction.reason());
    }

    @GetMapping("/characteristics/{id}/cold-sets")
    @Operation(summary = "What a cold-set may still do: attempts, amount in the unit of the characteristic, window")
    ColdSets.Room room(@PathVariable long id) {
        return coldSets.room(id, clock.instant());
    }

    @PostMapping("/characteristics/{id}/cold-sets")
    @Operation(summary = "Records a push; every characteristic of the operation is read again after it")
    ColdSets.Room push(Act act, @PathVariable long id, @RequestBody Push push) {
        coldSets.push(
                act,
                id,
                Keyed.figure("amount", "The cold-set is not recorded.", push.amount()),
                Keyed.figureOrNone("pushMm", "The cold-set is not recorded.", push.pushMm()));
        return coldSets.room(id, clock.instant());
    }

    private static Readings.Input input(Taken taken) {
        List<BigDecimal> raw = new ArrayList<>();
        List<String> sent = taken.raw() == null ? List.of() : taken.raw();
        for (int i = 0; i < sent.size(); i++) {
            raw.add(Keyed.figure("raw[" + i + "]", NOT_TAKEN, sent.get(i)));
        }
        return new Readings.Input(
                raw,
                taken.gauge() == null ? "" : taken.gauge(),
                Keyed.figureOrNone("temperatureDegC", NOT_TAKEN, taken.temperatureDegC()),
                Boolean.TRUE.equals(taken.confirm()));
    }
}
