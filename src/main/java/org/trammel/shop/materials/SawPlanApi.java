package org.trammel.shop.materials;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The saw plan for programs, and the rack it is laid into; bars are laid and cut by hand, on the sheet. */
@RestController
@RequestMapping("/api/v1/saw-plan")
@Tag(
        name = "Saw plan",
        description =
                "How the blanks of the frames that wait for the saw are laid into bars and remnants; lengths in mm")
class SawPlanApi {

    /** One bar of 3000 with the down tubes of two frames alike; what is left of it goes back to the rack. */
    private static final String EXAMPLE = """
            {"kinds": [{
               "section": "42 × 1.4", "metal": "AL6061", "wanted": 2,
               "bars": [{"lot": "AL-42-014", "remnant": false, "length_mm": 3000,
                         "pieces": [{"mark": "26-0101-H", "tube": "down tube", "length_mm": 741.2},
                                    {"mark": "26-0103-K", "tube": "down tube", "length_mm": 741.2}],
                         "left_mm": 1513.6, "kept": true}],
               "newStock_mm": 3000, "least_mm": 3000, "proven": true, "waste_percent": 0.3,
               "split": [], "gaps": []}],
             "butted": [], "undrawn": []}
            """;

    private final SawPlans plans;
    private final TubeRack rack;

    SawPlanApi(SawPlans plans, TubeRack rack) {
        this.plans = plans;
        this.rack = rack;
    }

    @GetMapping
    @Operation(
            summary = "The plan as it stands now",
            description = "Each section and metal by itself. A kind without a plan says why in gaps; butted tubes are"
                    + " told and not laid; proven says that no plan opens less new stock.")
    @ApiResponse(
            responseCode = "200",
            content =
                    @Content(
                            mediaType = "application/json",
                            schema = @Schema(implementation = SawPlan.class),
                            examples = @ExampleObject(EXAMPLE)))
    SawPlan plan() {
        return plans.now();
    }

    @GetMapping("/rack")
    @Operation(summary = "Bars and remnants on the rack")
    List<Bars> rack() {
        return rack.bars();
    }
}
