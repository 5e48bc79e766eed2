package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.springframework.beans.factory.BeanFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;

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
