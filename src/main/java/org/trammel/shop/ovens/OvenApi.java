package org.trammel.shop.ovens;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@RestController
@RequestMapping("/api/v1/ovens")
@Tag(name = "Ovens", description = "Ovens, their thermocouples, surveys and accuracy tests; differences are in K")
class OvenApi {

    private final Ovens ovens;
    private final OvenRegister register;

    OvenApi(Ovens ovens, OvenRegister register) {
        this.ovens = ovens;
        this.register = register;
    }

    @GetMapping
    @Operation(summary = "All ovens with what locks each today")
    List<Oven> all() {
        return ovens.all();
    }

    @GetMapping("/{code}")
    Oven one(@PathVariable String code) {
        return ovens.byCode(code);
    }

    @GetMapping("/{code}/tests")
    @Operation(summary = "Surveys and accuracy tests, newest first")
    List<OvenTest> tests(@PathVariable String code) {
        return ovens.testsOf(ovens.byCode(code).id());
    }

    @GetMapping("/{code}/thermocouples")
    @Operation(summary = "Thermocouples that are or were in the oven")
    List<Fitted> thermocouples(@PathVariable String code) {
        return ovens.everFitted(ovens.byCode(code).id());
    }

    /** @param uniformityK half the width that its places may differ by */
    record Registration(
            @Nullable String code,
            @Nullable String what,
            @Nullable Set<Purpose> purposes,
            @Nullable BigDecimal uniformityK,
            @Nullable BigDecimal lengthMm,
            @Nullable BigDecimal widthMm,
            @Nullable BigDecimal heightMm,
            @Nullable BigDecimal mostKg) {

        NewOven oven() {
            return new NewOven(
                    what == null ? "" : what,
                    purposes == null ? Set.of() : purposes,
                    uniformityK,
                    lengthMm,
                    widthMm,
                    heightMm,
                    mostKg);
        }
    }

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    Oven register(Act act, @RequestBody Registration body) {
        return register.register(act, body.code() == null ? "" : body.code(), body.oven());
    }

    record Edit(
            long version,
            @Nullable String what,
            @Nullable Set<Purpose> purposes,
            @Nullable BigDecimal uniformityK,
            @Nullable BigDecimal lengthMm,
            @Nullable BigDecimal widthMm,
            @Nullable BigDecimal heightMm,
            @Nullable BigDecimal mostKg) {}

    @PutMapping("/{code}")
    Oven edit(Act act, @PathVariable String code, @RequestBody Edit body) {
        return register.edit(
                act,
                code,
                body.version(),
                new NewOven(
                        body.what() == null ? "" : body.what(),
                        body.purposes() == null ? Set.of() : body.purposes(),
                        body.uniformityK(),
                        body.lengthMm(),
                        body.widthMm(),
                        body.heightMm(),
                        body.mostKg()));
    }

    record Because(@Nullable String reason) {}

    @PostMapping("/{code}/block")
    Oven block(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.block(act, code, body.reason());
    }

    @PostMapping("/{code}/unblock")
    Oven unblock(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.unblock(act, code, body.reason());
    }

    @PostMapping("/{code}/retire")
    Oven retire(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.retire(act, code, body.reason());
    }

    record Fitting(@Nullable String thermocouple, @Nullable ThermocoupleRole role) {}

    @PostMapping("/{code}/thermocouples")
    @Operation(summary = "A thermocouple is fitted; it is in one oven at a time")
    Oven fit(Act act, @PathVariable String code, @RequestBody Fitting body) {
        return register.fit(act, code, body.thermocouple(), body.role());
    }

    @PostMapping("/{code}/thermocouples/{thermocouple}/remove")
    Oven remove(Act act, @PathVariable String code, @PathVariable String thermocouple, @RequestBody Because body) {
        return register.remove(act, code, thermocouple, body.reason());
    }

    /**
     * @param thermocouple of an accuracy test
     * @param lowestK of a survey, 0 or below
     * @param highestK of a survey, 0 or above
     * @param errorK of an accuracy test; above 0 where it read too high
     * @param limitK of an accuracy test, the greatest error that is good
     */
    record TestBody(
            @Nullable TestKind kind,
            @Nullable String thermocouple,
            @Nullable Instant testedAt,
            @Nullable LocalDate dueOn,
            @Nullable BigDecimal lowestK,
            @Nullable BigDecimal highestK,
            @Nullable BigDecimal errorK,
            @Nullable BigDecimal limitK,
            @Nullable BigDecimal atDegC,
            @Nullable String report) {}

    @PostMapping("/{code}/tests")
    @Operation(summary = "A survey or an accuracy test; one that is not good locks the oven at once")
    Oven tested(Act act, @PathVariable String code, @RequestBody TestBody body) {
        Instant testedAt = body.testedAt();
        if (body.kind() == null || testedAt == null) {
            throw Refusal.input(
                    body.kind() == null ? "kind" : "testedAt",
                    "The test was not recorded.",
                    body.kind() == null ? "Its kind is missing." : "The time at which it was done is missing.",
                    "Send SURVEY or ACCURACY, and the instant with its zone.");
        }
        return register.tested(
                act,
                code,
                new NewTest(
                        body.kind(),
                        body.thermocouple(),
                        testedAt,
                        body.dueOn(),
                        body.lowestK(),
                        body.highestK(),
                        body.errorK(),
                        body.limitK(),
                        body.atDegC(),
                        body.report()));
    }
}
