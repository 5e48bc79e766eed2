package org.trammel.shop.designs;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** Test families for programs: the same verb and checks as their sheets. */
@RestController
@RequestMapping("/api/v1/test-families")
@Tag(name = "Test families", description = "What a test of frames covers; lengths in mm, masses in kg")
class TestFamilyApi {

    private final TestFamilies families;

    TestFamilyApi(TestFamilies families) {
        this.families = families;
    }

    @GetMapping
    @Operation(summary = "Every family as it is in force")
    List<TestFamily> all() {
        return families.inForce();
    }

    @PostMapping
    @Operation(summary = "Enters a family, or what it covers from now on; by the QA lead or the owner")
    TestFamily enter(Act act, @RequestBody TestFamilies.Covered body) {
        return families.enter(act, body, null);
    }
}
