package org.trammel.shop.demo;

import java.math.BigDecimal;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.TestFamilies;

/** What the invented workshop had tested. */
@Component
@Profile("demo")
class DemoFamilies {

    private final TestFamilies families;
    private final DemoActs acts;

    DemoFamilies(TestFamilies families, DemoActs acts) {
        this.families = families;
        this.acts = acts;
    }

    void enter() {
        enter(
                "HT-AL-A",
                "Hardtails of aluminium, down tube 42 × 1,2 or 38 × 1,3 and more",
                110,
                551,
                560,
                680,
                "T-2024-11");
        enter("FS-AL-B", "Full suspension of aluminium up to 160 mm of travel", 110, 571, 560, 660, "T-2025-03");
        enter("RG-CS-C", "Road, gravel and touring frames of steel", 115, 400, 520, 620, "T-2023-19");
        enter("TI-D", "Hardtail and gravel frames of titanium", 110, 531, 560, 650, "T-2025-08");
        enter(
                "RC-AL-E",
                "Road and cross frames of aluminium, down tube 42 × 1,3 and more",
                110,
                400,
                520,
                620,
                "T-2024-07");
    }

    private void enter(
            String code, String covers, int rider_kg, int fork_mm, int leastStack_mm, int mostStack_mm, String report) {
        families.enter(
                acts.by("TR"),
                new TestFamilies.Covered(
                        code,
                        covers,
                        BigDecimal.valueOf(fork_mm),
                        BigDecimal.valueOf(rider_kg),
                        BigDecimal.valueOf(leastStack_mm),
                        BigDecimal.valueOf(mostStack_mm),
                        "Report " + report + ", invented"),
                null);
    }
}
