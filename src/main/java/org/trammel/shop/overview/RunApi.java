package org.trammel.shop.overview;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The run of the shop for programs. */
@RestController
@RequestMapping("/api/v1/shop/run")
@Tag(name = "Run of the shop", description = "Every open order, where it stands and why.")
class RunApi {

    private final RunOfTheShop run;

    RunApi(RunOfTheShop run) {
        this.run = run;
    }

    /** One open order. */
    public record Line(
            String order,
            @Nullable String serial,
            String mark,
            String description,
            String metal,
            String station,
            String state,
            @Nullable LocalDate promised,
            @Nullable Integer daysLeft,
            boolean late,
            boolean held,
            List<String> reasons) {}

    /** What stands at a station. */
    public record StationLoad(String code, String name, int standing, int limit) {}

    /** The whole answer. */
    public record Answer(List<Line> orders, List<StationLoad> stations, int atWork, int limit) {}

    @GetMapping
    @Operation(summary = "Open orders, late ones first, then by promise; and what stands at each station.")
    Answer run() {
        Run now = run.now();
        return new Answer(
                now.lines().stream()
                        .map(l -> new Line(
                                l.number(),
                                l.serial(),
                                l.mark(),
                                l.description(),
                                l.metal(),
                                l.station(),
                                l.state(),
                                l.promised(),
                                l.daysLeft(),
                                l.late(),
                                l.held(),
                                l.reasons()))
                        .toList(),
                now.loads().stream()
                        .map(l -> new StationLoad(l.code(), l.name(), l.standing(), l.limit()))
                        .toList(),
                now.atWork(),
                now.limit());
    }
}
