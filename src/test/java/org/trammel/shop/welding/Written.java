package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.List;

/** Procedures as tests write them. */
final class Written {

    private Written() {}

    /** A whole one: tack, weld and look, interpass 120 °C, one node sampled, two repairs, level C. */
    static NewProcedure whole(String metal, String tack, String weld, String look, String... fillers) {
        return new NewProcedure(
                "of a test",
                metal,
                "141",
                List.of("BW", "FW"),
                new BigDecimal("0.7"),
                new BigDecimal("3"),
                new GuardedOperations(List.of(tack), List.of(weld), List.of(look)),
                new ArcSettings(
                        List.of(fillers),
                        new BigDecimal("1.6"),
                        List.of("ARGON"),
                        BigDecimal.valueOf(8),
                        "WL15 2.4",
                        "AC",
                        BigDecimal.valueOf(55),
                        BigDecimal.valueOf(110)),
                new HeatRules(
                        BigDecimal.valueOf(120),
                        new BigDecimal("0.22"),
                        new BigDecimal("0.40"),
                        new BigDecimal("0.6"),
                        1),
                new NodeRules(null, null, null, false, false, 2),
                new LookRules("C", "B: head tube", "ISO-5817-2014"),
                new Papers(
                        metal.equals("TI") ? "ISO 9606-5" : "ISO 9606-2", "ISO 15609-1", "2019", "written for a test"));
    }

    static NewProcedure with(NewProcedure c, HeatRules heat, NodeRules nodes, LookRules looks) {
        return new NewProcedure(
                c.what(),
                c.metal(),
                c.process(),
                c.joints(),
                c.thicknessFrom_mm(),
                c.thicknessTo_mm(),
                c.operations(),
                c.arc(),
                heat,
                nodes,
                looks,
                c.papers());
    }
}
