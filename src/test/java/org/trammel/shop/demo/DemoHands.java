package org.trammel.shop.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.designs.Approval;
import org.trammel.shop.designs.DesignGate;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.DrawingOffice;
import org.trammel.shop.designs.GateAnswer;
import org.trammel.shop.designs.GateCheck;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Role;
import org.trammel.shop.stations.Devices;

/** The tablets and desks of the invented workshop, with somebody at them, and a look into its records. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class DemoHands {

    @LocalServerPort
    private int port;

    @Autowired
    private Devices devices;

    @Autowired
    Orders orders;

    @Autowired
    private Designs designs;

    @Autowired
    private DrawingOffice office;

    @Autowired
    private DesignGate gate;

    @Autowired
    private DemoActs acts;

    @Autowired
    DemoClock clock;

    @Autowired
    JdbcClient jdbc;

    private final Map<String, Page> tablets = new ConcurrentHashMap<>();
    private final Map<String, String> signedOn = new ConcurrentHashMap<>();
    Hands hands;
    Page qa;

    @BeforeAll
    void opens() {
        hands = new Hands(port);
        qa = hands.desk("TR", DemoCast.QA_PASSWORD);
    }

    @AfterAll
    void closes() {
        tablets.values().forEach(page -> page.context().close());
        qa.context().close();
    }

    Page at(String tablet, String initials) {
        DemoCast.Member member = DemoCast.ALL.stream()
                .filter(one -> one.initials().equals(initials))
                .findFirst()
                .orElseThrow();
        Page page = tablets.computeIfAbsent(
                tablet,
                name -> hands.tablet(devices.enrol(
                                acts.by("ME"),
                                devices.admit(acts.by("ME"), name, DemoCast.TABLETS.getOrDefault(name, List.of("1")))
                                        .code())
                        .orElseThrow()
                        .token()));
        String badge = jdbc.sql("select badge from person where initials = ?")
                .param(initials)
                .query(String.class)
                .single();
        if (!initials.equals(signedOn.put(tablet, initials))) {
            hands.signOn(page, badge, member.pin());
        }
        hands.open(page, "/station");
        return page;
    }

    static String text(Locator there) {
        return there.innerText().replaceAll("\\h+", " ").replace('\u2011', '-');
    }

    String state(String serial, String operation) {
        return jdbc.sql("select o.state from operation o join traveller t on t.id = o.traveller_id"
                        + " where t.serial = ? and o.code = ? order by o.id desc limit 1")
                .params(serial, operation)
                .query(String.class)
                .single();
    }

    String verdict(String serial, String characteristic) {
        return jdbc.sql("select c.state from characteristic c join operation o on o.id = c.operation_id"
                        + " join traveller t on t.id = o.traveller_id where t.serial = ? and c.code = ?"
                        + " order by c.id desc limit 1")
                .params(serial, characteristic)
                .query(String.class)
                .single();
    }

    /** Only the place of the tube that was cut out of phase is empty, and the heavy tube beside it is another tube. */
    void scansTheTubeThatIsCutAgain(Page one) {
        hands.open(one, "/station/AV26119Y");
        one.locator(".plate a.btn.main").click();
        assertThat(one.locator(".now").innerText()).contains("Down tube").contains("42 × 1,4 mm");
        one.locator("#f-lot").fill("TL-6061-191");
        one.getByText("Issue it").click();
        one.locator(".refusal").waitFor();
        assertThat(one.locator(".refusal").innerText())
                .contains("TL-6061-191 holds 42 × 1,6 mm")
                .contains("asks for 42 × 1,4 mm");
        one.locator("#f-lot").fill("TL-6061-188");
        one.getByText("Issue it").click();
        Hands.says(one, "Every place has its tube");
        hands.look(one, "tube-cut-again-issued");
    }

    /** Ticks of the step in the newest loop of its operation. */
    int ticks(String serial, String step) {
        return jdbc.sql("select count(*) from tick where step_id = (select max(s.id) from step s"
                        + " join operation o on o.id = s.operation_id join traveller t on t.id = o.traveller_id"
                        + " where t.serial = ? and s.text = ?)")
                .params(serial, step)
                .query(Integer.class)
                .single();
    }

    long lotsUsed(String serial) {
        return jdbc.sql("select count(*) from lot_use where serial = ?")
                .param(serial)
                .query(Long.class)
                .single();
    }

    long onRecord() {
        return jdbc.sql("select count(*) from log_entry where chain = 'frame:AV26119Y'")
                .query(Long.class)
                .single();
    }

    /** The id of the nonconformance opened on a frame last. */
    String number(String serial) {
        return jdbc.sql("select max(id) from nonconformance where serial = ?")
                .param(serial)
                .query(String.class)
                .single();
    }

    long revisionB(long order) {
        long old = Objects.requireNonNull(orders.byId(order).designRevisionId());
        long newer = office.revise(acts.by("ME"), old, "The customer asks for a lower front.")
                .revisionId();
        office.draw(acts.by("ME"), newer, DemoPicture.png("O-119 B"), "image/png", "O-119-B.png");
        office.send(acts.by("ME"), newer);
        String file = Objects.requireNonNull(designs.revision(newer).drawing());
        gate.approve(
                acts.by("ME"),
                newer,
                new Approval(
                        "B",
                        file,
                        "the customer",
                        clock.instant().atZone(DemoOrder.ZONE).toLocalDate()));
        for (GateCheck check : gate.asked(newer)) {
            gate.answer(acts.by("ME"), newer, check, GateAnswer.DECIDED, "Decided for this frame, invented.");
        }
        gate.sign(
                acts.by("ME"),
                newer,
                acts.id("ME"),
                Role.OWNER,
                DemoCast.ALL.get(0).pin());
        gate.sign(
                acts.by("TR"),
                newer,
                acts.id("TR"),
                Role.QA_LEAD,
                DemoCast.ALL.get(1).pin());
        return newer;
    }

    /** LM struck it: whoever did does not read it back, and no slip of the second person is taken for the serial. */
    void serialReadBack(Page page) {
        page.locator(".ins a:has-text('Handwork')").click();
        page.locator("#f-serial-serial").waitFor();
        String sheet = page.url();
        assertThat(page.locator("body").innerText().replace('\u2011', '-'))
                .as("the serial is read from the metal, not from the screen")
                .doesNotContain("112-B");
        keep(page, "AV26-112-B", "You struck it");
        Page second = at("T6", "PW");
        second.navigate(sheet);
        keep(second, "AV26-121-B", "check character does not belong");
        hands.look(second, "serial-transposed");
        keep(second, "AV26-113-9", "is the serial of another frame");
        keep(second, "112-B", "the last characters only");
        keep(second, "AV26-112-B", "it is the serial of this frame");
        hands.look(second, "serial-read-back");
        Hands.scan(at("T6", "LM"), "112-B", "Second person keys the serial");
    }

    private static void keep(Page page, String keyed, String says) {
        page.locator("#f-serial-serial").fill(keyed);
        page.getByText("Keep what was read").click();
        Hands.says(page, says);
    }
}
