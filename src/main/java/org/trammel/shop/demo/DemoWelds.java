package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.util.List;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.welding.ArcSettings;
import org.trammel.shop.welding.GuardedOperations;
import org.trammel.shop.welding.HeatRules;
import org.trammel.shop.welding.LookRules;
import org.trammel.shop.welding.NewProcedure;
import org.trammel.shop.welding.NodeRules;
import org.trammel.shop.welding.Papers;
import org.trammel.shop.welding.Procedures;

/**
 * Puts the first procedure of the shop in force, on the evening before the demo morning: the frames welded until then go by
 * paper, and O-117 is the first that is welded by it.
 */
@Component
@Profile("demo")
class DemoWelds {

    private static final String CODE = "W-STEEL";

    private final Procedures procedures;
    private final DemoActs acts;

    DemoWelds(Procedures procedures, DemoActs acts) {
        this.procedures = procedures;
        this.acts = acts;
    }

    void putInForce() {
        long version = procedures.draft(acts.by("PW"), CODE, steel()).version();
        procedures.putInForce(acts.by("TR"), CODE, version);
    }

    private static NewProcedure steel() {
        return new NewProcedure(
                "steel frames, TIG, invented",
                "STEEL",
                "141",
                List.of("BW", "FW"),
                new BigDecimal("0.7"),
                new BigDecimal("3"),
                new GuardedOperations(List.of(), List.of("070"), List.of("080")),
                new ArcSettings(
                        List.of("ER70S", "ER80S"),
                        new BigDecimal("1.2"),
                        List.of("ARGON"),
                        BigDecimal.valueOf(8),
                        "1.6 mm, ground to a long point",
                        "DC−",
                        BigDecimal.valueOf(25),
                        BigDecimal.valueOf(75)),
                new HeatRules(null, null, null, null, 0),
                new NodeRules(null, null, null, false, false, 2),
                new LookRules("C", "", "ISO-5817-2014"),
                new Papers("ISO 9606-1", "ISO 15609-1", "edition to be filled in", "coupons of our own, invented"));
    }
}
