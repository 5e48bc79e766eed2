package org.trammel.shop.invented;

/** A procedure as somebody may write it, put in force when the frame was tacked already. */
final class InventedWelds {

    private static final String SCRIPT = "<script>alert(1)</script>";

    private InventedWelds() {}

    static void putInForce(Hand qa) throws Exception {
        qa.form(
                "/shop/weld-procedures",
                "code",
                "WX-9",
                "what",
                "Titan <b>銅</b> " + SCRIPT,
                "metal",
                "TI",
                "process",
                "141",
                "jointFW",
                "true",
                "thicknessFrom",
                "0,7",
                "thicknessTo",
                "3",
                "weldOperations",
                "060",
                "fillers",
                "TI-CP",
                "gases",
                "ARGON",
                "flow",
                "8",
                "tungsten",
                "& " + SCRIPT,
                "polarity",
                "=DC",
                "ampsFrom",
                "20",
                "ampsTo",
                "60,5",
                "purge",
                "50",
                "colours",
                "true",
                "repairs",
                "2",
                "welderStandard",
                "ISO 9606-5",
                "standard",
                "=1+1",
                "edition",
                "<i>1</i>",
                "source",
                "=1+1 " + SCRIPT);
        String read =
                qa.page("/shop/weld-procedures/WX-9").replaceAll("(?s).*name=\"version\" value=\"(\\d+)\".*", "$1");
        qa.form("/shop/weld-procedures/WX-9/in-force", "secret", InventedSetUp.PASSWORD, "version", read);
        qa.form(
                "/shop/weld-limits",
                "code",
                "LX-9",
                "what",
                SCRIPT,
                "standard",
                "=1",
                "edition",
                "<b>2</b>",
                "source",
                "shalom שלום",
                "lines",
                "C; undercut; ; 3; 0; 0,1; t; 0,5; short",
                "secret",
                InventedSetUp.PASSWORD);
    }
}
