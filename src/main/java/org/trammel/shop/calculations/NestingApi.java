package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.ArrayList;
import java.util.List;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.scheduling.Blank;
import org.trammel.calc.scheduling.Nesting;
import org.trammel.calc.scheduling.TubeStock;

@RestController
@RequestMapping("/api/v1/calculations/nesting")
@Tag(name = "Calculations")
class NestingApi {

    private static final String EXAMPLE = """
            {"kerfMm": 2, "keepFromMm": 300,
             "blanks": [
               {"name": "seat tube", "frame": "1", "section": "34.9 x 1.35", "alloy": "6061", "lengthMm": 571.3},
               {"name": "seat tube", "frame": "2", "section": "34.9 x 1.35", "alloy": "6061", "lengthMm": 531.3},
               {"name": "seat tube", "frame": "3", "section": "34.9 x 1.35", "alloy": "6061", "lengthMm": 449.1},
               {"name": "seat tube", "frame": "4", "section": "34.9 x 1.35", "alloy": "6061", "lengthMm": 421.3},
               {"name": "seat tube", "frame": "5", "section": "34.9 x 1.35", "alloy": "6061", "lengthMm": 421.3},
               {"name": "seat tube", "frame": "6", "section": "34.9 x 1.35", "alloy": "6061", "lengthMm": 401.3}],
             "stock": [{"section": "34.9 x 1.35", "alloy": "6061", "lot": "T-1", "lengthMm": 1500, "count": 9}]}""";

    @PostMapping
    @Operation(
            summary = "Lays blanks of plain-gauge tube into bars and remnants",
            description = "Opens the least length of new bars, then of remnants, then scraps least. Up to 16 blanks of"
                    + " a section and alloy every plan is looked at; beyond, the least possible is told beside the"
                    + " plan. Butted tubes are bought in one length and are no blanks.")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            content = @Content(examples = @ExampleObject(name = "six seat tubes", value = EXAMPLE)))
    NestingAnswer laid(@RequestBody NestingRequest request) {
        NotComputed.boundedBy(NestingRequest.MOST_BLANKS, "blanks", request.blanks());
        NotComputed.boundedBy(NestingRequest.MOST_STOCK, "stock", request.stock());
        List<Blank> blanks = new ArrayList<>();
        for (NestingRequest.Piece piece : request.blanks()) {
            blanks.add(piece.blank("blanks[" + blanks.size() + "]."));
        }
        List<TubeStock> stock = new ArrayList<>();
        for (NestingRequest.Length length : request.stock()) {
            stock.add(length.bars("stock[" + stock.size() + "]."));
        }
        return NestingAnswer.of(NotComputed.unless(Nesting.of(blanks, stock, request.saw()), NestingApi::field));
    }

    private static String field(String input) {
        boolean hasUnit = input.equals("kerf") || input.equals("keepFrom") || input.endsWith(".length");
        return hasUnit ? input + "Mm" : input;
    }
}
