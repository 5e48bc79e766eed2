package org.trammel.shop.invented;

/** Drift of the jig in a shop whose words are as odd as words get. */
record InventedDrift(InventedSetUp shop) {

    /** An axis watched on the jig, with what was read before this program and a base. */
    long watched() throws Exception {
        shop.qa.form(
                "/qa/drift",
                "jig",
                "J-1",
                "code",
                "100-1",
                "name",
                "Twist " + InventedSetUp.SCRIPT,
                "unit",
                "°",
                "scaled",
                "true");
        long series = shop.id("select max(id) from drift_series");
        shop.qa.form(
                "/qa/drift/" + series + "/earlier",
                "lines",
                "2026-01-05; =1+1 " + InventedSetUp.SCRIPT
                        + "; 0,05; 0; -0,3; 0,3\n2026-01-06; O'Brien; -0,1; 0; -0,3; 0,3; W9; A",
                "source",
                "notebook " + InventedSetUp.SCRIPT);
        shop.qa.form(
                "/qa/drift/" + series + "/base",
                "kind",
                "FIRST",
                "first",
                "2",
                "weight",
                "0,2",
                "width",
                "2,7",
                "slack",
                "0,5",
                "decision",
                "4,77",
                "source",
                "notebook",
                "reason",
                "begin " + InventedSetUp.SCRIPT);
        return series;
    }
}
