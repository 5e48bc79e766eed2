package org.trammel.shop.yields;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.settings.Settings;

@RestController
@RequestMapping("/api/v1/yield")
@Tag(name = "Yields", description = "What the gates let through at the first attempt, and the rework of the rest")
class YieldApi {

    private final Yields yields;
    private final Settings settings;

    YieldApi(Yields yields, Settings settings) {
        this.yields = yields;
        this.settings = settings;
    }

    @GetMapping
    @Operation(summary = "Of every gate since a day, the last year if none is said; shares from 0 to 1, hours in h")
    YieldSheet since(@RequestParam(required = false) @Nullable LocalDate since) {
        return yields.since(
                Objects.requireNonNullElseGet(since, () -> settings.today().minusYears(1)));
    }
}
