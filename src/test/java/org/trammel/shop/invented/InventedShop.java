package org.trammel.shop.invented;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;

/** The invented shop at work: one odd frame from its order to the box. */
public final class InventedShop extends InventedSetUp {

    public InventedShop(MockMvc mvc, JdbcClient jdbc) {
        super(mvc, jdbc);
    }

    /** The owner is there already, made elsewhere under the same initials and password. */
    public void ownerSignsOn() throws Exception {
        owner.form("/sign-on", "initials", "zb", "password", PASSWORD);
        facts.put("person", person("ZB"));
        facts.put("act", owner.lastAct());
    }

    /** A gauge that a calibration finds wrong, which opens a re-judgement. */
    private void wrongGauge() throws Exception {
        gauge("HG-9", "HEIGHT", "mm", "0", "600", "0,01", "0,012");
        qa.form(
                "/shop/gauges/HG-9/calibration",
                "calibratedOn",
                "2026-02-15",
                "certificate",
                "C-<i>wrong</i>",
                "points",
                "100 0,01 0,03\n300 0,18 0,03",
                "asFound",
                "reads high " + SCRIPT);
        facts.put("rejudgement", "" + id("select max(id) from rejudgement"));
        qa.form(
                "/shop/gauges/TW-9/studies",
                "what",
                "twist of two bars " + SCRIPT,
                "unit",
                "°",
                "pasted",
                "1;ZB;0,10\n1;ZB;0,11\n1;QA;0,12\n1;QA;0,10\n2;ZB;0,50\n2;ZB;0,52\n2;QA;0,51\n2;QA;0,53");
        facts.put("study", "" + id("select max(id) from gauge_study"));
        InventedOvens.enter(qa, facts);
        facts.put("revision", "" + id("select max(id) from oven_programme_revision"));
    }

    /** The order, its drawing, its gate, and the frame in the shop. */
    public void frame() throws Exception {
        wrongGauge();
        String sheet = owner.form(
                "/orders",
                "description",
                "Reiserad " + SCRIPT + " " + LONG,
                "metal",
                "TI",
                "kind",
                "TITANIUM",
                "category",
                "OTHER",
                "country",
                "JP",
                "countryRules",
                "Klingel & Licht",
                "rider.height",
                "178,5",
                "rider.mass",
                "78,5",
                "rider.flexibility",
                "=1+1",
                "components",
                "fork: 395 mm, O'Neill\ncolour: Kupferrot ёж 銅 " + SCRIPT,
                "customer.name",
                "Ødegård <b>odd</b> 김",
                "customer.contact",
                "1 Rue de l'Été\n=1+1",
                "customer.country",
                "NO",
                "promised",
                "2026-05-22",
                "price",
                "2850,50",
                "ownPart.what",
                "saddle",
                "ownPart.description",
                "its own " + SCRIPT);
        facts.put("order", sheet.substring("/orders/".length()));
        facts.put("number", text("select number from shop_order where id = " + facts.get("order")));
        facts.put("customer", "" + id("select max(id) from customer"));
        String drawing = owner.form(sheet + "/design");
        facts.put("design", drawing.substring("/designs/".length()));
        owner.form(
                drawing + "/edit",
                "description",
                "Reiserad " + SCRIPT,
                "metal",
                "TI",
                "kind",
                "TITANIUM",
                "route",
                ""
                        + id(
                                "select max(r.id) from route_revision r join route t on t.id = r.route_id where t.code = 'ODD-1'"),
                "testFamily",
                "T-1 <b>odd",
                "components",
                "fork: 395 mm",
                "geometry.HEAD_ANGLE",
                "71,5",
                "geometry.SEAT_ANGLE",
                "73,5",
                "geometry.REACH",
                "398,5");
        owner.form(drawing + "/characteristics", "paste", "100-2; 398,5");
        owner.file(drawing + "/drawing", new MockMultipartFile("file", "Zeichnung <ü>.pdf", "application/pdf", PDF));
        owner.form(drawing + "/note", "note", "=1+1 " + SCRIPT);
        owner.form(drawing + "/sending");
        owner.form(
                drawing + "/approval",
                "letter",
                "A",
                "file",
                text("select drawing_sha256 from design_revision where id = " + facts.get("design")),
                "approver",
                "Åse " + SCRIPT,
                "on",
                "2026-03-18");
        for (String check : checks()) {
            qa.form(drawing + "/check", "check", check, "answer", "DECIDED", "check." + check, "looked at " + SCRIPT);
        }
        owner.form(drawing + "/signature", "signer", person("ZB") + ":OWNER", "pin", PIN);
        owner.form(drawing + "/signature", "signer", person("QM") + ":QA_LEAD", "pin", PIN);
        String frame = owner.form(sheet + "/release", "designRevisionId", facts.get("design"));
        facts.put("serial", frame.substring("/frames/".length()));
        facts.put("traveller", "" + id("select max(id) from traveller where serial = '" + facts.get("serial") + "'"));
    }

    private static List<String> checks() {
        return List.of(
                "RIDER_DATA",
                "COMPONENTS",
                "CLOSURE",
                "TRAIL",
                "TYRE_CLEARANCE",
                "TYRE_STAYS",
                "TOE_CLEARANCE",
                "STANDOVER",
                "HEAD_NODES",
                "MITRES",
                "SEATPOST",
                "TEST_FAMILY",
                "COUNTRY",
                "OVERALL_LENGTH",
                "NOMINALS",
                "DEPOSIT");
    }

    /** As far as a twist that does not conform, with a hold, a note, a photograph and a nonconformance on record. */
    public void workToATwist() throws Exception {
        String at = station();
        tablet.file(
                at + "/photo",
                new MockMultipartFile("file", "..\\photo \"1\".png", "image/png", picture()),
                "step",
                step("020"));
        facts.put("photo", text("select max(sha256) from traveller_photo"));
        facts.put("step", step("020"));
        tablet.form(at + "/tick", "step", step("020"), "lot", "ti-9.a");
        tablet.form(at + "/tick", "step", step("060"));
        sign("060", "SECOND", "SP");
        facts.put("operation", operation("100"));
        facts.put("coat", operation("150"));
        InventedWelds.putInForce(qa);
        facts.put("weld", operation("060"));
        facts.put(
                "characteristic",
                ""
                        + id("select id from characteristic where operation_id = " + operation("100")
                                + " and code = '100-1'"));
        tablet.form("/sign-on", "person", person("SP"), "pin", PIN);
        facts.put("ticked", step("100"));
        tablet.form(at + "/tick", "step", facts.get("ticked"));
        tablet.form(
                at + "/note",
                "traveller",
                facts.get("traveller"),
                "words",
                "Different: " + SCRIPT + " =1+1 שלום " + LONG);
        read("100-1", "0,55", "TW-9");
        tablet.form(at + "/cold-set", "characteristic", facts.get("characteristic"), "amount", "0,1", "push", "5,5");
        read("100-1", "0,45", "TW-9");
        tablet.form(
                at + "/hold",
                "traveller",
                facts.get("traveller"),
                "operation",
                operation("100"),
                "reason",
                "CUSTOMER_PART",
                "words",
                "saddle " + SCRIPT);
        qa.form(
                "/nonconformances",
                "travellerId",
                facts.get("traveller"),
                "operationId",
                operation("100"),
                "words",
                "scratch " + SCRIPT);
        facts.put("nonconformance", "" + id("select max(id) from nonconformance"));
        tablet.form(at + "/call", "traveller", facts.get("traveller"), "words", "come & look " + SCRIPT);
    }

    /** The twist set right, the nonconformance decided, every hold lifted, everything read: the point waits. */
    public void workToAPoint() throws Exception {
        String at = station();
        String sheet = "/nonconformances/" + facts.get("nonconformance");
        qa.form(
                sheet + "/decision",
                "decision",
                "REWORK",
                "words",
                "polish " + SCRIPT,
                "from",
                "100",
                "hours",
                "0,5",
                "materialCost",
                "1,25");
        for (String hold : holds()) {
            tablet.form(at + "/lift", "hold", hold, "words", "came " + SCRIPT);
        }
        facts.put("ticked", step("100"));
        tablet.form(at + "/tick", "step", facts.get("ticked"));
        read("100-1", "0,05", "TW-9");
        read("100-2", "398,6", "CA-9");
        facts.put("operation", operation("100"));
        facts.put("characteristic", characteristic("100-1"));
    }

    /** Signed, coated elsewhere, packed, shipped. */
    public void workToTheBox() throws Exception {
        String at = station();
        sign("100", "SECOND", "ZB");
        sign("100", "QA", "QM");
        tablet.form(at + "/send-out", "operation", operation("150"), "recipient", "Lack & Söhne " + SCRIPT);
        tablet.form(at + "/book-back", "operation", operation("150"), "certificate", "C-<b>odd</b>");
        tablet.form(at + "/tick", "step", step("150"));
        tablet.form(at + "/tick", "step", step("200"));
        tablet.form(at + "/ship", "traveller", facts.get("traveller"), "scanned", facts.get("serial"));
    }

    private void sign(String operation, String as, String initials) throws Exception {
        tablet.form(
                station() + "/sign",
                "operation",
                operation(operation),
                "as",
                as,
                "signer",
                person(initials),
                "pin",
                PIN);
    }

    private void read(String code, String value, String gauge) throws Exception {
        tablet.form(
                station() + "/read",
                "characteristic",
                ""
                        + id(
                                "select c.id from characteristic c join operation o on o.id = c.operation_id where c.code = '"
                                        + code + "' and o.id = " + operation("100")),
                "gauge",
                gauge,
                "value0",
                value);
    }

    private String characteristic(String code) {
        return ""
                + id("select id from characteristic where code = '" + code + "' and operation_id = "
                        + operation("100"));
    }

    private String station() {
        return "/station/" + facts.get("serial");
    }

    private String operation(String code) {
        return ""
                + id("select max(id) from operation where traveller_id = " + facts.get("traveller") + " and code = '"
                        + code + "'");
    }

    private String step(String operation) {
        return "" + id("select min(id) from step where not ticked and operation_id = " + operation(operation));
    }

    private List<String> holds() {
        return jdbc.sql("select id from hold where lifted_at is null order by id")
                .query(String.class)
                .list();
    }

    private static byte[] picture() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", bytes);
        return bytes.toByteArray();
    }
}
