package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.coating.FilmFinding;
import org.trammel.calc.coating.FilmVerdict;

@RestController
@RequestMapping("/api/v1/calculations/film")
@Tag(name = "Calculations")
class FilmApi {

    private static final String EIGHTY_TWENTY = """
            {"rule": "EIGHTY_TWENTY", "leastUm": 60, "mostUm": 120,
             "areas": [{"name": "frame", "spotsUm": [[72, 68, 81, 77, 64, 59, 88, 73, 70, 66]]}]}""";

    private static final String SPOTS = """
            {"rule": "SPOTS_AND_AREAS", "leastUm": 60, "mostUm": 90, "level": "THREE",
             "areas": [{"name": "down tube", "spotsUm": [[58, 62, 60], [50, 47, 47], [75, 80, 73], [104, 108, 109], [66, 70, 71]]}]}""";

    record FilmAnswer(
            boolean conforming,
            int readings,
            BigDecimal meanUm,

            @Schema(description = "n − 1; null for a single reading") @Nullable
            BigDecimal standardDeviationUm,

            BigDecimal leastUm,
            BigDecimal mostUm,

            @Schema(description = "readings below the thickness asked for")
            int below,

            List<MeanOfArea> areas,
            List<FilmFinding> findings) {}

    record MeanOfArea(String name, BigDecimal meanUm, List<BigDecimal> spotMeansUm) {}

    @PostMapping
    @Operation(
            summary = "Film thickness judged by the 80/20 rule, by spots and areas, or by the mean of areas",
            description = "All three judge exact means; limits belong to what they allow.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content =
                    @Content(
                            examples = {
                                @ExampleObject(name = "ten readings", value = EIGHTY_TWENTY),
                                @ExampleObject(name = "five spots", value = SPOTS)
                            }))
    FilmAnswer judged(@RequestBody FilmRequest request) {
        FilmVerdict verdict =
                NotComputed.unless(FilmVerdict.of(request.filmAreas(), request.filmRule()), FilmApi::field);
        return new FilmAnswer(
                verdict.conforming(),
                verdict.readings(),
                verdict.mean_um(),
                verdict.deviation_um(),
                verdict.least_um(),
                verdict.most_um(),
                verdict.below(),
                verdict.areas().stream()
                        .map(area -> new MeanOfArea(area.name(), area.mean_um(), area.spots_um()))
                        .toList(),
                verdict.findings());
    }

    private static String field(String input) {
        return switch (input) {
            case "nominal", "least" -> "leastUm";
            case "most" -> "mostUm";
            default -> input;
        };
    }
}
