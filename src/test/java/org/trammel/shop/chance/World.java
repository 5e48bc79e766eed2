package org.trammel.shop.chance;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.NewLot;

/** The shop, its people, and one frame at a time with a lot of its own. */
final class World {

    private final ApplicationContext beans;
    private final WholeShop shop;
    private final JdbcClient jdbc;
    private final Cast cast;
    private final long route;
    private WholeShop.Frame frame;
    private String lot;
    private int revisions;

    World(ApplicationContext beans) {
        this.beans = beans;
        this.shop = new WholeShop(beans);
        this.jdbc = beans.getBean(JdbcClient.class);
        this.cast = new Cast(shop, jdbc);
        this.route = shop.route(ChanceRoute.sheet());
        begin();
    }

    /** A new frame, released on the first revision of its drawing, and a lot that fits it. */
    void begin() {
        frame = shop.frame(route);
        revisions = 1;
        lot = "CH-" + UUID.randomUUID().toString().substring(0, 13);
        LotRegister register = bean(LotRegister.class);
        register.receive(
                shop.act(cast.qa),
                new NewLot(
                        lot,
                        LotKind.TUBE,
                        "a tube",
                        "AL6061",
                        null,
                        "",
                        "5K2217",
                        null,
                        "a supplier",
                        LocalDate.of(2025, 12, 2),
                        null,
                        null,
                        ""));
        register.certify(shop.act(cast.qa), lot, "3.1", "C-1", null);
        register.release(shop.act(cast.qa), lot);
    }

    long nextDrawing() {
        return shop.drawing(frame.designId(), ++revisions, Map.of());
    }

    /** Lets time pass; the service looks at its clocks at once, or only later. */
    Attempt passing(Duration time, boolean look) {
        return new Attempt(null, "pass " + time, false, () -> {
            shop.clock().pass(time);
            if (look) {
                shop.lookAtClocks();
            }
        });
    }

    <T> T bean(Class<T> type) {
        return beans.getBean(type);
    }

    WholeShop shop() {
        return shop;
    }

    JdbcClient jdbc() {
        return jdbc;
    }

    Cast cast() {
        return cast;
    }

    long route() {
        return route;
    }

    WholeShop.Frame frame() {
        return frame;
    }

    String lot() {
        return lot;
    }
}
