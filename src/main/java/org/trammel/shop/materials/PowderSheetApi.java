package org.trammel.shop.materials;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

@RestController
@RequestMapping("/api/v1/lots/{code}/sheets")
@Tag(name = "Lots")
class PowderSheetApi {

    private final PowderSheets sheets;

    PowderSheetApi(PowderSheets sheets) {
        this.sheets = sheets;
    }

    /** As a program sends it; the limits may be left out, then they are 100 and 150. */
    record Sent(
            String colour,
            @Nullable List<PairSent> pairs,
            @Nullable BigDecimal energyKJPerMol,
            @Nullable BigDecimal leastPercent,
            @Nullable BigDecimal mostPercent,
            String source) {}

    record PairSent(BigDecimal minutes, BigDecimal metalDegC) {}

    @GetMapping
    @Operation(
            summary =
                    "What the maker's sheet of a powder or paint says: its colour, and what cures it; the last stands")
    List<PowderSheet> all(@PathVariable String code) {
        return sheets.history(code);
    }

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    @Operation(summary = "Enters what the maker's sheet says; pairs are minutes at a temperature of the metal")
    PowderSheet enter(Act act, @PathVariable String code, @RequestBody Sent sent) {
        return sheets.enter(
                act,
                code,
                new NewPowderSheet(
                        sent.colour(),
                        sent.pairs() == null
                                ? List.of()
                                : sent.pairs().stream()
                                        .map(pair -> new NewPowderSheet.Pair(pair.minutes(), pair.metalDegC()))
                                        .toList(),
                        sent.energyKJPerMol(),
                        sent.leastPercent(),
                        sent.mostPercent(),
                        sent.source()));
    }
}
