package org.trammel.shop.invented;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;

/**
 * A shop that never saw the demo; set up by hand from its first start.
 * What is typed is as odd as a shop may type it: markup, apostrophes, formulas, one very long word, letters of four
 * alphabets, decimal commas. Everything is sent through the forms; what an address needs to know is read back.
 */
public abstract class InventedSetUp {

    public static final String SCRIPT = "<script>alert(1)</script>";
    public static final String LONG = "Rindfleischetikettierungsüberwachungsaufgabenübertragungsgesetz";
    public static final String PASSWORD = "quiet lathe under rain";
    public static final String PIN = "402817";
    static final String OWNER = "Zoë O'Brien & 李小龍 " + SCRIPT;
    static final String QA = "=1+1 Μαρία";
    static final String WORKER = LONG + " Ёлкина";

    static final byte[] PDF = "%PDF-1.4\ninvented drawing\n%%EOF\n".getBytes(StandardCharsets.US_ASCII);
    private static final Pattern GIVEN = Pattern.compile("class=\"given\">([^<]+)<");

    final JdbcClient jdbc;
    final Map<String, String> facts = new LinkedHashMap<>();

    public final Hand owner;
    public final Hand qa;
    public final Hand tablet;
    public final Hand nobody;

    InventedSetUp(MockMvc mvc, JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.owner = new Hand(mvc);
        this.qa = new Hand(mvc);
        this.tablet = new Hand(mvc);
        this.nobody = new Hand(mvc);
    }

    /** What addresses need, by the name it has in them. */
    public Map<String, String> facts() {
        return facts;
    }

    public void firstOwner(String code) throws Exception {
        owner.form(
                "/first-owner",
                "code",
                code,
                "initials",
                "zb",
                "name",
                OWNER,
                "password",
                PASSWORD,
                "passwordAgain",
                PASSWORD,
                "pin",
                PIN,
                "pinAgain",
                PIN);
        facts.put("person", "" + id("select id from person where initials = 'ZB'"));
        facts.put("act", owner.lastAct());
    }

    /** People, stations, a tablet, gauges, settings, a route of this shop, a lot: what the list of set-up asks for. */
    public void setUp() throws Exception {
        people();
        stations();
        gauges();
        settings();
        lot();
        route();
        facts.put("drift", "" + new InventedDrift(this).watched());
    }

    private void people() throws Exception {
        takeOn("QM", QA, "QA_LEAD");
        takeOn("WW", WORKER, "WELDER");
        takeOn("SP", "Søren 'Piet' " + SCRIPT, "ALIGNER");
        String words = given(owner.shown("/shop/people/" + person("QM") + "/password", "secret", PASSWORD));
        qa.form("/sign-on", "initials", "qm", "password", words, "newPassword", PASSWORD, "newPasswordAgain", PASSWORD);
    }

    private void takeOn(String initials, String name, String role) throws Exception {
        owner.form("/shop/people", "initials", initials, "name", name, "role", role, "secret", PASSWORD);
    }

    private void stations() throws Exception {
        station("S1", "Säge & Gehrung " + SCRIPT);
        station("S2", "=2+2");
        station("S3", LONG.substring(0, 60));
        station("S4", "Стапель «4»");
        owner.form("/shop/stations/S3/jigs", "jig", "j-1", "checkedOn", "2026-01-02", "dueOn", "2026-12-31");
        String code = given(owner.shown(
                "/shop/tablets",
                "name",
                "t9",
                "station",
                "S1",
                "station",
                "S2",
                "station",
                "S3",
                "station",
                "S4",
                "secret",
                PASSWORD));
        assertThat(tablet.form("/enrol", "code", code)).isEqualTo("/sign-on");
        for (String initials : List.of("QM", "SP", "WW")) {
            String pin = given(owner.shown("/shop/people/" + person(initials) + "/pin", "secret", PASSWORD));
            tablet.form("/sign-on", "person", person(initials), "pin", pin, "newPin", PIN, "newPinAgain", PIN);
        }
        owner.form(
                "/shop/people/" + person("WW") + "/qualifications",
                "kind",
                "WELD:TI:141",
                "standard",
                "ISO 9606-5 " + SCRIPT,
                "metal",
                "Ti <b>odd",
                "process",
                "141",
                "thicknessFromMm",
                "0,5",
                "thicknessToMm",
                "2,5",
                "joint",
                "BW, FW",
                "issuedOn",
                "2026-01-10",
                "expiresOn",
                "2027-01-10",
                "sixMonthConfirmation",
                "true");
    }

    private void station(String code, String name) throws Exception {
        owner.form("/shop/stations", "code", code, "name", name, "wipLimit", "3", "hours", "37,5");
    }

    private void gauges() throws Exception {
        gauge("TW-9", "TWIST", "°", "-5,5", "5,5", "0,001", "0,02");
        gauge("CA-9", "CALLIPER", "mm", "0", "1000,5", "0,01", "0,005");
        facts.put("gauge", "TW-9");
    }

    final void gauge(String code, String kind, String unit, String low, String high, String least, String u)
            throws Exception {
        qa.form(
                "/shop/gauges",
                "code",
                code,
                "what",
                "=HYPERLINK(\"x\") O'Neill " + SCRIPT,
                "location",
                "@SUM(1+1)",
                "kind1",
                kind,
                "unit1",
                unit,
                "lowest1",
                low,
                "highest1",
                high,
                "resolution1",
                least,
                "u1",
                u,
                "uSource1",
                "certificate " + SCRIPT);
        qa.form(
                "/shop/gauges/" + code + "/calibration",
                "calibratedOn",
                "2026-01-15",
                "dueOn",
                "2026-12-31",
                "certificate",
                "C-<i>odd</i>",
                "asFound",
                "inside, 0,003 off");
    }

    private void settings() throws Exception {
        facts.put("key", "shop.name");
        owner.form(
                "/shop/settings/shop.name",
                "seen",
                "" + id("select max(id) from setting where code = 'shop.name'"),
                "value",
                "Räder & Söhne " + SCRIPT,
                "source",
                "our own sign, O'Brien",
                "reason",
                "=1+1");
    }

    private void lot() throws Exception {
        owner.form(
                "/shop/lots",
                "code",
                "ti-9.a",
                "kind",
                "TUBE",
                "what",
                "=1+1 " + SCRIPT,
                "metal",
                "TI",
                "grade",
                "Ti-3Al-2.5V",
                "heat",
                "H'7",
                "supplier",
                "+cmd|' /C calc'!A0",
                "receivedOn",
                "2026-03-01",
                "quantity",
                "1250,5",
                "unit",
                "mm");
        owner.file(
                "/shop/lots/TI-9.A/certificate",
                new MockMultipartFile("file", "../../etc/Zeugnis <b>odd</b>.pdf", "application/pdf", PDF),
                "certificateType",
                "3.1",
                "certificate",
                "Nr. 7 & " + SCRIPT);
        qa.form("/shop/lots/TI-9.A/release");
        facts.put("lot", "TI-9.A");
    }

    /** A route laid out in the editor, operation by operation. */
    private void route() throws Exception {
        facts.put("route", "ODD-1");
        qa.form("/routes", "code", "ODD-1", "name", "Route <b>odd</b> & co", "metal", "TI", "kind", "TITANIUM");
        operation("020", "Cut " + SCRIPT, "S1", "NONE");
        step("020", "Tube from the rack, O'Neill's way", "photo", "true", "lotKind", "TUBE");
        operation("060", LONG, "S3", "HOLD", "signers", "SECOND", "irreversible", "true");
        step("060", "=1+1", "instruction", "Naht «links» zuerst. " + SCRIPT);
        operation("100", "Richten", "S4", "HOLD", "signers", "SECOND", "signers", "QA");
        step("100", "Set on the table");
        edit(
                "/clock",
                "code",
                "SOFT",
                "name",
                "cold-set <b>odd</b>",
                "kind",
                "WINDOW",
                "minutes",
                "240",
                "startedBy",
                "060",
                "gates",
                "",
                "source",
                "own trial");
        characteristic(
                "100-1",
                "Twist " + SCRIPT,
                "°",
                "TWIST",
                "GUARDED",
                "0",
                "-0.30",
                "0.30",
                "coldSetClock",
                "SOFT",
                "coldSetAttempts",
                "2",
                "coldSetAmount",
                "1.0");
        characteristic("100-2", "Reach, O'Neill", "mm", "CALLIPER", "PLAIN", "", "-0.5", "0.5", "fromDesign", "true");
        operation("150", "Outside <i>odd</i>", "S2", "NONE", "outside", "true");
        step("150", "Colour looked at: Kupferrot ёж 銅");
        operation("200", "Pack", "S2", "NONE");
        step("200", "Packed");
        qa.form("/routes/ODD-1/draft/release", "version", version(), "reason", "fits " + SCRIPT);
    }

    private void operation(String code, String name, String station, String point, String... more) throws Exception {
        edit(
                "/operation",
                with(
                        more,
                        "after",
                        last(),
                        "code",
                        code,
                        "name",
                        name,
                        "station",
                        station,
                        "point",
                        point,
                        "caution",
                        "Gloves <b>odd</b>. Local rules apply."));
        facts.put("last operation", code);
    }

    private String last() {
        return facts.getOrDefault("last operation", "");
    }

    private void step(String op, String text, String... more) throws Exception {
        edit("/step", with(more, "op", op, "text", text));
    }

    private void characteristic(
            String code,
            String name,
            String unit,
            String gauge,
            String rule,
            String nominal,
            String lower,
            String upper,
            String... more)
            throws Exception {
        edit(
                "/characteristic",
                with(
                        more,
                        "op",
                        "100",
                        "code",
                        code,
                        "name",
                        name,
                        "unit",
                        unit,
                        "decimals",
                        "2",
                        "nominal",
                        nominal,
                        "lowerDeviation",
                        lower,
                        "upperDeviation",
                        upper,
                        "gaugeKind",
                        gauge,
                        "points",
                        "Punkt <b>odd",
                        "reduction",
                        "SINGLE",
                        "rule",
                        rule,
                        "signers",
                        "ALIGNER",
                        "deciding",
                        "true",
                        "source",
                        "own rule"));
    }

    private void edit(String path, String... pairs) throws Exception {
        qa.form("/routes/ODD-1/draft" + path, with(pairs, "version", version()));
    }

    private String version() {
        return ""
                + id("select r.version from route_revision r join route t on t.id = r.draft_of where t.code = 'ODD-1'");
    }

    public String person(String initials) {
        return "" + id("select id from person where initials = '" + initials + "'");
    }

    long id(String sql) {
        Long found = jdbc.sql(sql).query(Long.class).single();
        return found;
    }

    String text(String sql) {
        return jdbc.sql(sql).query(String.class).single();
    }

    static String given(String page) {
        Matcher given = GIVEN.matcher(page);
        assertThat(given.find()).isTrue();
        return given.group(1);
    }

    static String[] with(String[] more, String... pairs) {
        List<String> all = new ArrayList<>(List.of(pairs));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
