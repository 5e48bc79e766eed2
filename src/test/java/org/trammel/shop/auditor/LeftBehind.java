package org.trammel.shop.auditor;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.springframework.beans.factory.BeanFactory;
import org.trammel.shop.drift.DriftBook;
import org.trammel.shop.drift.EarlierReading;
import org.trammel.shop.drift.NewSeries;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.people.Role;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** What people leave behind besides a frame. */
final class LeftBehind {

    static final String AXIS = "AU-1";

    /** What some addresses ask besides. */
    static final Map<String, String> QUERIES = Map.of(
            "/api/v1/drift/causes",
            "?code=" + AXIS,
            "/api/v1/frames/at-stations",
            "?station=1",
            "/api/v1/gauges/usable",
            "?kind=CALLIPER&unit=mm");

    /** What every shop has from its first start, by what it is of and the hole it fills. */
    private static final Map<String, String> SHIPPED = Map.of(
            "settings key",
            "cost.hour",
            "tolerances code",
            "BUILT_ANGLE",
            "routes letter",
            "A",
            "weld-procedures code",
            "W-STEEL",
            "weld-limits code",
            "ISO-5817-2014");

    private LeftBehind() {}

    static String shipped(String hole) {
        String worth = SHIPPED.get(hole);
        if (worth == null) {
            throw new AssertionError("Nothing to put in for " + hole);
        }
        return worth;
    }

    /** A lot somebody received. */
    static String lot(WholeShop shop, BeanFactory beans, long qa) {
        String lot = "AU-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        beans.getBean(LotRegister.class)
                .receive(
                        shop.act(qa),
                        new NewLot(
                                lot,
                                LotKind.TUBE,
                                "a lot",
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
        return lot;
    }

    /** An axis of a jig, with what was read of a frame whose welder stood in the notebook by name. */
    static long axis(WholeShop shop, BeanFactory beans, long owner, long qa, String welder) {
        String jig = "AU" + shop.hire(Role.APPRENTICE);
        Stations stations = beans.getBean(Stations.class);
        stations.add(shop.act(owner), new Station(jig, "Jigs", 3, new BigDecimal("30"), false));
        stations.addJig(shop.act(owner), jig, jig, LocalDate.of(2026, 1, 1), LocalDate.of(2027, 1, 1));
        DriftBook book = beans.getBean(DriftBook.class);
        long series = book.watch(shop.act(qa), NewSeries.onJig(jig, AXIS, "twist", "°", false))
                .id();
        book.takeOver(
                shop.act(qa),
                series,
                List.of(new EarlierReading(
                        LocalDate.of(2026, 1, 5),
                        "earlier frame",
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        new BigDecimal("-1"),
                        BigDecimal.ONE,
                        welder,
                        "A")),
                "notebook");
        return series;
    }
}
