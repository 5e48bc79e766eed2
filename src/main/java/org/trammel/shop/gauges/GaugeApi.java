package org.trammel.shop.gauges;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

@RestController
@RequestMapping("/api/v1/gauges")
@Tag(
        name = "Gauges",
        description = "Gauges and measuring set-ups; u is a standard uncertainty in the unit of its range")
class GaugeApi {

    private final Gauges gauges;
    private final GaugeRegister register;
    private final Settings settings;

    GaugeApi(Gauges gauges, GaugeRegister register, Settings settings) {
        this.gauges = gauges;
        this.register = register;
        this.settings = settings;
    }

    @GetMapping
    @Operation(summary = "The register by what falls due first, a page at a time")
    List<Gauge> page(
            @RequestParam @Nullable String after,
            @RequestParam(defaultValue = "false") boolean retired,
            @RequestParam(defaultValue = "100") int limit) {
        return gauges.page(after == null ? null : one(after), retired, limit);
    }

    @GetMapping("/kinds")
    @Operation(summary = "Kinds of gauge a characteristic can ask for")
    List<GaugeKind> kinds() {
        return gauges.kinds();
    }

    @GetMapping("/usable")
    @Operation(summary = "What may be used for a kind and unit, the least uncertain first")
    List<Means> usable(@RequestParam String kind, @RequestParam String unit, @RequestParam @Nullable LocalDate on) {
        return gauges.usableFor(kind, unit, on == null ? settings.today() : on);
    }

    @GetMapping("/{code}")
    Gauge one(@PathVariable String code) {
        return gauges.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The gauge was not found.",
                        "No gauge carries the number " + code + ".",
                        "Ask the register for the numbers there are."));
    }

    @GetMapping("/{code}/calibrations")
    List<Calibration> calibrations(@PathVariable String code) {
        return register.calibrationsOf(one(code).id());
    }

    @GetMapping("/{code}/failures")
    List<Failure> failures(@PathVariable String code) {
        return register.failuresOf(one(code).id());
    }

    /** @param parts codes of the gauges a set-up is made of; none for a gauge */
    record Registration(
            String code,
            String what,
            @Nullable String makerNumber,
            @Nullable String location,
            boolean aid,
            List<GaugeRange> ranges,
            @Nullable List<String> parts) {

        NewGauge gauge() {
            return new NewGauge(what, makerNumber, location == null ? "" : location, aid, ranges);
        }
    }

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    Gauge register(Act act, @RequestBody Registration body) {
        return body.parts() == null || body.parts().isEmpty()
                ? register.register(act, body.code(), body.gauge())
                : register.setUp(act, body.code(), body.gauge(), body.parts());
    }

    record Edit(
            long version,
            String what,
            @Nullable String makerNumber,
            @Nullable String location,
            boolean aid,
            List<GaugeRange> ranges) {}

    @PutMapping("/{code}")
    Gauge edit(Act act, @PathVariable String code, @RequestBody Edit body) {
        return register.edit(
                act,
                code,
                body.version(),
                new NewGauge(
                        body.what(),
                        body.makerNumber(),
                        body.location() == null ? "" : body.location(),
                        body.aid(),
                        body.ranges()));
    }

    /**
     * @param unit of the points; left out, that of the gauge's first range
     * @param points errors as found; where one is over, the gauge failed
     * @param putRight left out, nothing was adjusted
     */
    record CalibrationBody(
            LocalDate calibratedOn,
            @Nullable LocalDate dueOn,
            String certificate,
            @Nullable String makerNumber,
            @Nullable String asFound,
            @Nullable String unit,
            @Nullable List<CalibrationPoint> points,
            @Nullable Boolean putRight,
            @Nullable String asLeft) {

        NewCalibration calibration() {
            return new NewCalibration(
                    calibratedOn,
                    dueOn,
                    certificate,
                    makerNumber,
                    orEmpty(asFound),
                    orEmpty(unit),
                    points == null ? List.of() : points,
                    Boolean.TRUE.equals(putRight),
                    orEmpty(asLeft));
        }

        private static String orEmpty(@Nullable String text) {
            return text == null ? "" : text;
        }
    }

    @PostMapping("/{code}/calibrations")
    @Operation(summary = "A calibration with its errors as found; one that is over is a failure in the same act")
    Gauge calibrated(Act act, @PathVariable String code, @RequestBody CalibrationBody body) {
        return register.calibrated(act, code, body.calibration());
    }

    record Because(String reason) {}

    @PostMapping("/{code}/block")
    Gauge block(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.block(act, code, body.reason());
    }

    @PostMapping("/{code}/unblock")
    Gauge unblock(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.unblock(act, code, body.reason());
    }

    @PostMapping("/{code}/retire")
    Gauge retire(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.retire(act, code, body.reason());
    }

    record NewFailure(
            LocalDate foundOn,
            @Nullable BigDecimal error,
            @Nullable String unit,
            @Nullable BigDecimal errorAt,
            String note) {}

    @PostMapping("/{code}/failures")
    @Operation(summary = "The gauge was found wrong; nothing is read with it any more")
    Gauge fail(Act act, @PathVariable String code, @RequestBody NewFailure body) {
        return register.fail(
                act,
                code,
                new Failure(
                        body.foundOn(),
                        body.error(),
                        body.unit() == null ? "" : body.unit(),
                        body.errorAt(),
                        body.note()));
    }
}
