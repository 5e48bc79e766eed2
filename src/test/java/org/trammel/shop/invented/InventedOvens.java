package org.trammel.shop.invented;

import java.util.Map;

/** An oven that may be loaded, a programme and a finish for titanium, and a load that waits for its frames. */
final class InventedOvens {

    private static final String SCRIPT = "<script>alert(1)</script>";

    private InventedOvens() {}

    static void enter(Hand qa, Map<String, String> facts) throws Exception {
        qa.form(
                "/shop/ovens",
                "code",
                "OX-9",
                "what",
                "Trockenofen " + SCRIPT,
                "forCURE",
                "true",
                "uniformity",
                "6,5",
                "length",
                "1500",
                "width",
                "800",
                "height",
                "1200",
                "mass",
                "45,5");
        fitted(qa, "TX-8", "CONTROL");
        fitted(qa, "TX-9", "LOAD");
        qa.form(
                "/shop/ovens/OX-9/survey",
                "testedOn",
                "2026-02-01",
                "testedTime",
                "10:00",
                "lowest",
                "-2,1",
                "highest",
                "2,8",
                "atDegC",
                "160",
                "dueOn",
                "2026-12-31",
                "report",
                "=1+1 " + SCRIPT);
        wrong(qa);
        qa.form(
                "/shop/programmes",
                "code",
                "PX-9",
                "purpose",
                "CURE",
                "what",
                "Einbrennen 銅 " + SCRIPT,
                "metalTI",
                "true",
                "metalAL7005",
                "true",
                "guards",
                "159",
                "set1",
                "160",
                "below1",
                "5",
                "above1",
                "5",
                "soak1",
                "0,3333",
                "source",
                "data sheet & " + SCRIPT);
        qa.form("/shop/programmes/PX-9/approve", "version", "0", "secret", InventedSetUp.PASSWORD);
        qa.form("/loads", "code", "LX-9", "oven", "OX-9", "programme", "PX-9", "hung", "head up " + SCRIPT);
        qa.form(
                "/shop/finishes",
                "code",
                "FX-9",
                "what",
                "Kupferrot <b>銅</b> " + SCRIPT,
                "metalTI",
                "true",
                "blastOperations",
                "140T",
                "coatOperations",
                "150",
                "masks",
                "BB-Gewinde & " + SCRIPT + "\nMassepunkt",
                "mostBar",
                "2,5",
                "mostEarth",
                "1",
                "source",
                "=1+1 " + SCRIPT,
                "secret",
                InventedSetUp.PASSWORD);
        qa.form(
                "/shop/components",
                "code",
                "KX-9",
                "kind",
                "STEM",
                "what",
                "Vorbau <b>銅</b> " + SCRIPT,
                "operation",
                "150",
                "name0",
                "Klemmung & " + SCRIPT,
                "bolts0",
                "4",
                "least0",
                "4,5",
                "target0",
                "5",
                "most0",
                "5,5",
                "thread0",
                "5",
                "crosswise0",
                "true",
                "passes0",
                "60 100",
                "source",
                "=1+1 " + SCRIPT,
                "edition",
                "2");
        qa.form("/shop/components/KX-9/in-force", "letter", "A", "secret", InventedSetUp.PASSWORD);
        facts.put("component", "KX-9");
        facts.put("finish", "FX-9");
        facts.put("oven", "OX-9");
        facts.put("programme", "PX-9");
        facts.put("load", "LX-9");
        facts.put("trace", "1");
    }

    /** A thermocouple that fails its test, which opens a trace, and comes out again. */
    private static void wrong(Hand qa) throws Exception {
        qa.form("/shop/ovens/OX-9/thermocouples", "thermocouple", "TX-7", "role", "OVER_TEMPERATURE");
        qa.form(
                "/shop/ovens/OX-9/accuracy",
                "thermocouple",
                "TX-7",
                "testedOn",
                "2026-02-20",
                "testedTime",
                "09:40",
                "error",
                "7",
                "limit",
                "2",
                "atDegC",
                "160",
                "dueOn",
                "",
                "report",
                "R & 2");
        qa.form("/shop/ovens/OX-9/thermocouples/TX-7/remove", "reason", "reads high " + SCRIPT);
    }

    private static void fitted(Hand qa, String code, String role) throws Exception {
        qa.form("/shop/ovens/OX-9/thermocouples", "thermocouple", code, "role", role);
        qa.form(
                "/shop/ovens/OX-9/accuracy",
                "thermocouple",
                code,
                "testedOn",
                "2026-02-20",
                "testedTime",
                "09:30",
                "error",
                "-0,4",
                "limit",
                "2",
                "atDegC",
                "160",
                "dueOn",
                "2026-12-31",
                "report",
                "R & 1");
    }
}
