package org.trammel.shop.designs;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** Tolerance classes for programs: the same verbs and checks as their sheets. */
@RestController
@RequestMapping("/api/v1/tolerances")
@Tag(
        name = "Tolerances",
        description =
                "How far each kind of characteristic may lie from the drawing; mm or degrees, each with its source")
class ToleranceApi {

    private final Tolerances tolerances;

    ToleranceApi(Tolerances tolerances) {
        this.tolerances = tolerances;
    }

    @GetMapping
    @Operation(summary = "All deviations in force")
    List<Tolerance> all() {
        return List.copyOf(tolerances.inForce().values());
    }

    @GetMapping("/{code}")
    @Operation(summary = "All deviations a class ever had, newest first")
    List<Tolerance> history(@PathVariable String code) {
        return tolerances.history(code);
    }

    /** @param seen id of the deviations in force when they were read; left out to skip the comparison */
    record Change(
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper,
            String source,
            String reason,
            @Nullable Long seen) {}

    @PutMapping("/{code}")
    @Operation(summary = "Puts other deviations in force; by the QA lead or the owner")
    Tolerance change(Act act, @PathVariable String code, @RequestBody Change body) {
        return tolerances.change(act, code, body.lower(), body.upper(), body.source(), body.reason(), body.seen());
    }
}
