package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import org.springframework.beans.factory.BeanFactory;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.Travellers;

/** Frames that wait for the saw, and lots of tube. */
public final class WaitingForTheSaw {

    private WaitingForTheSaw() {}

    /** A frame that waits at its first operation, drawn with the inputs of the first frame of the table. */
    static WholeShop.Frame frame(WholeShop shop, JdbcClient jdbc, String operation) {
        return frame(
                shop, jdbc, SmallRoute.of(SmallRoute.op(operation).step("saw").sheet()));
    }

    /** The same on a route of its own. */
    public static WholeShop.Frame frame(WholeShop shop, JdbcClient jdbc, SmallRoute route) {
        WholeShop.Frame frame = shop.frame(shop.route(route.sheet()));
        Long revision = jdbc.sql("select design_revision_id from traveller where id = ?")
                .param(frame.travellerId())
                .query(Long.class)
                .single();
        DemoFrames.Row row = DemoFrames.all().findFirst().orElseThrow();
        row.columns().forEach((column, value) -> {
            String input = column.toUpperCase(Locale.ROOT)
                    .replaceAll("_(MM|DEG)$", "")
                    .replace("DT_WALL", "DOWN_TUBE_WALL")
                    .replace("TT_WALL", "TOP_TUBE_WALL")
                    .replace("ST_WALL", "SEAT_TUBE_WALL")
                    .replace("CS_WALL", "CHAINSTAY_WALL")
                    .replace("SS_WALL", "SEATSTAY_WALL");
            if (column.endsWith("_mm") || column.endsWith("_deg")) {
                given(jdbc, revision, input, new BigDecimal(value));
            }
        });
        given(jdbc, revision, "REAR_WHEEL_RADIUS", new BigDecimal(370));
        given(jdbc, revision, "CHAINSTAY_AT_SHELL", new BigDecimal(24));
        given(jdbc, revision, "CHAINSTAY_OUTSIDE", new BigDecimal(22));
        given(jdbc, revision, "SEATSTAY_OUTSIDE", new BigDecimal(18));
        return frame;
    }

    private static void given(JdbcClient jdbc, long revision, String input, BigDecimal amount) {
        jdbc.sql("insert into design_geometry (revision_id, input, amount) values (?, ?, ?)")
                .params(revision, input, amount)
                .update();
    }

    /** Issues a tube of the drawing to a place of the frame, out of a lot of its own; what stood there is scrapped. */
    public static void issued(BeanFactory beans, WholeShop shop, WholeShop.Frame frame, String place) {
        long lead = shop.hire(Role.QA_LEAD);
        long operation = shop.at(frame).line().operationId();
        Lots lots = beans.getBean(Lots.class);
        lots.madeOf(frame.serial()).stream()
                .filter(made -> place.equals(made.place()) && !made.scrapped())
                .forEach(made -> lots.scrap(shop.act(lead), made.useId(), "cut again"));
        TubeIssues tubes = beans.getBean(TubeIssues.class);
        LotRegister register = beans.getBean(LotRegister.class);
        String code = "T-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        register.receive(
                shop.act(lead),
                new NewLot(
                        code,
                        LotKind.TUBE,
                        "tube of the drawing",
                        "AL6061",
                        null,
                        "EN AW-6061 T6",
                        "5K2217",
                        null,
                        "",
                        LocalDate.of(2026, 1, 5),
                        null,
                        null,
                        ""));
        beans.getBean(LotSections.class).state(shop.act(lead), code, List.of(tubes.asked(operation, place)));
        register.certify(shop.act(lead), code, "3.1", "C-1", null);
        register.release(shop.act(lead), code);
        tubes.issue(shop.act(lead), operation, new TubeIssues.Scan(place, code, null, null, null));
    }

    /** A lot that is counted by the piece, of a section that only two frames ask for: one of them waits for its tubes. */
    public record Counted(BeanFactory beans, WholeShop shop, String place, String lot, String waiting) {

        public void issue(WholeShop.Frame frame) {
            beans.getBean(TubeIssues.class)
                    .issue(
                            shop.act(shop.hire(Role.QA_LEAD)),
                            shop.at(frame).line().operationId(),
                            new TubeIssues.Scan(place, lot, null, null, null));
        }

        public BigDecimal left() {
            return beans.getBean(Lots.class).byCode(lot).orElseThrow().quantityLeft();
        }

        public List<String> calls() {
            return beans.getBean(Travellers.class).openCalls().stream()
                    .map(Travellers.CallLine::words)
                    .filter(words -> words.contains(lot))
                    .toList();
        }
    }

    public static Counted counted(
            BeanFactory beans, WholeShop shop, JdbcClient jdbc, WholeShop.Frame frame, String place, int pieces) {
        WholeShop.Frame waiting = frame(
                shop,
                jdbc,
                SmallRoute.of(SmallRoute.op("020").step(AtTheRack.everyTube()).sheet()));
        BigDecimal wall = new BigDecimal("1.2").add(BigDecimal.valueOf(new Random().nextInt(1, 80), 2));
        List.of(frame, waiting)
                .forEach(one -> jdbc.sql("update design_geometry set amount = ? where input = ?"
                                + " and revision_id = (select design_revision_id from traveller where id = ?)")
                        .params(wall, place + "_WALL", one.travellerId())
                        .update());
        long lead = shop.hire(Role.QA_LEAD);
        Section asked =
                beans.getBean(TubeIssues.class).asked(shop.at(frame).line().operationId(), place);
        String section = asked.outside_mm().toPlainString() + " × " + wall.toPlainString();
        String lot = new AtTheRack((ApplicationContext) beans, shop, lead)
                .lot(LotKind.TUBE, "EN AW-6061 T6", pieces, section);
        return new Counted(beans, shop, place, lot, shop.sheet(waiting).head().mark());
    }

    /** A tube of a lot scanned at the operation at hand, as routes without places do. */
    public static void scanned(BeanFactory beans, WholeShop shop, WholeShop.Frame frame) {
        long lead = shop.hire(Role.QA_LEAD);
        beans.getBean(Lots.class)
                .issue(
                        shop.act(lead),
                        lot(beans.getBean(LotRegister.class), shop, lead, "AL6061", true),
                        frame.serial(),
                        "a tube",
                        shop.at(frame).line().code(),
                        null,
                        null);
    }

    /** The newest tube of a frame is scrapped. */
    public static void scrapped(BeanFactory beans, WholeShop shop, WholeShop.Frame frame) {
        Lots lots = beans.getBean(Lots.class);
        List<MadeOf> made = lots.madeOf(frame.serial());
        lots.scrap(shop.act(shop.hire(Role.QA_LEAD)), made.get(made.size() - 1).useId(), "cut wrong");
    }

    static String lot(LotRegister register, WholeShop shop, long lead, String metal, boolean released) {
        String code = "T-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        register.receive(
                shop.act(lead),
                new NewLot(
                        code,
                        LotKind.TUBE,
                        "tube in bars",
                        metal,
                        null,
                        "",
                        "5K2217",
                        null,
                        "",
                        LocalDate.of(2026, 1, 5),
                        null,
                        null,
                        ""));
        if (released) {
            register.certify(shop.act(lead), code, "3.1", "C-1", null);
            register.release(shop.act(lead), code);
        }
        return code;
    }
}
