package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.StepSheet;

/** A drawn frame that waits for its tubes, and lots with their sections. */
final class AtTheRack {

    /** As on the drawing: the top tube butted, the rest plain. */
    private static final Map<String, String> DRAWN = Map.ofEntries(
            Map.entry("DOWN_TUBE_OUTSIDE", "35"),
            Map.entry("DOWN_TUBE_WALL", "1.4"),
            Map.entry("TOP_TUBE_OUTSIDE", "31.8"),
            Map.entry("TOP_TUBE_WALL", "0.9"),
            Map.entry("TOP_TUBE_MIDDLE_WALL", "0.6"),
            Map.entry("SEAT_TUBE_OUTSIDE", "34.9"),
            Map.entry("SEAT_TUBE_WALL", "1.35"),
            Map.entry("CHAINSTAY_OUTSIDE", "22"),
            Map.entry("CHAINSTAY_WALL", "1.6"),
            Map.entry("SEATSTAY_OUTSIDE", "18"),
            Map.entry("SEATSTAY_WALL", "1.4"),
            Map.entry("HEAD_TUBE_OUTSIDE", "54"),
            Map.entry("SHELL_OUTSIDE", "42"));

    private final WholeShop shop;
    private final JdbcClient jdbc;
    private final LotRegister register;
    private final LotSections sections;
    private final long lead;

    AtTheRack(ApplicationContext beans, WholeShop shop, long lead) {
        this.shop = shop;
        this.jdbc = beans.getBean(JdbcClient.class);
        this.register = beans.getBean(LotRegister.class);
        this.sections = beans.getBean(LotSections.class);
        this.lead = lead;
    }

    static StepSheet everyTube() {
        return new StepSheet("every tube", "", false, false, null, null, null, Proof.TUBES);
    }

    /** Tubes issued, cut, formed. */
    static RouteSheet route() {
        return SmallRoute.of(
                        SmallRoute.op("020").step(everyTube()).step("no dent").sheet(),
                        SmallRoute.op("030")
                                .lot("right tube", "TUBE")
                                .step("cut")
                                .sheet(),
                        SmallRoute.op("040").step("form").sheet())
                .sheet();
    }

    WholeShop.Frame frame() {
        return drawn(shop.frame(shop.route(route())));
    }

    WholeShop.Frame drawn(WholeShop.Frame frame) {
        long revision = jdbc.sql("select design_revision_id from traveller where id = ?")
                .param(frame.travellerId())
                .query(Long.class)
                .single();
        DRAWN.forEach(
                (input, amount) -> jdbc.sql("insert into design_geometry (revision_id, input, amount) values (?, ?, ?)")
                        .params(revision, input, new BigDecimal(amount))
                        .update());
        return frame;
    }

    /** A released lot of 6061 in T6. */
    String lot(String... holds) {
        return lot(LotKind.TUBE, "EN AW-6061 T6", null, holds);
    }

    String lot(LotKind kind, String grade, @Nullable Integer pieces, String... holds) {
        String code = "R-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        register.receive(
                shop.act(lead),
                new NewLot(
                        code,
                        kind,
                        "tubes of a test",
                        "AL6061",
                        null,
                        grade,
                        "5K2217",
                        null,
                        "",
                        LocalDate.of(2026, 1, 5),
                        null,
                        pieces == null ? null : BigDecimal.valueOf(pieces),
                        pieces == null ? "" : "pc"));
        if (holds.length > 0) {
            sections.state(shop.act(lead), code, Section.read(String.join("\n", holds), "Not read."));
        }
        register.certify(shop.act(lead), code, "3.1", "C-1", null);
        register.release(shop.act(lead), code);
        return code;
    }

    /** One lot with all that the drawing asks for. */
    String whole() {
        return lot("35 × 1,4", "31,8 × 0,9/0,6/0,9", "34,9 × 1,35", "22 × 1,6", "18 × 1,4", "54 × 5", "42 × 4");
    }

    static TubeIssues.Scan scan(String place, String lot) {
        return new TubeIssues.Scan(place, lot, null, null, null);
    }

    static List<String> places() {
        return List.of(
                "DOWN_TUBE",
                "TOP_TUBE",
                "SEAT_TUBE",
                "HEAD_TUBE",
                "SHELL",
                "CHAINSTAY-D",
                "CHAINSTAY-N",
                "SEATSTAY-D",
                "SEATSTAY-N");
    }
}
