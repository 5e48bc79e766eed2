package org.trammel.shop.chance;

import static org.trammel.shop.floor.SmallRoute.op;

import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.Signer;

/** A small route that has one of everything a frame can fail at on its way. */
final class ChanceRoute {

    /** What the weld asks for. */
    static final String WELD = "WELD:AL:141";

    private static final String PLACE = "CH1";

    private ChanceRoute() {}

    static RouteSheet sheet() {
        return SmallRoute.of(
                        op("170")
                                .at(PLACE)
                                .joins()
                                .step("join")
                                .hold(Signer.SECOND)
                                .sheet(),
                        op("190")
                                .at(PLACE)
                                .readBack("190-1", "0.3")
                                .plain("190-2", "0.3")
                                .step("brakes")
                                .hold(Signer.QA, Signer.OWNER)
                                .sheet(),
                        op("200").at(PLACE).step("pack").witness().sheet())
                .child("FT", front())
                .child("SA", arm())
                .sheet();
    }

    private static SmallRoute front() {
        return SmallRoute.of(
                        op("020")
                                .at(PLACE)
                                .lot("scan the tube", "TUBE")
                                .step("measure it")
                                .sheet(),
                        op("050").at(PLACE).together().step("clean").sheet(),
                        op("070")
                                .at(PLACE)
                                .qualified(WELD)
                                .atMost(2)
                                .step("weld out")
                                .sheet(),
                        op("080")
                                .at(PLACE)
                                .guarded("080-1", "0.3", "SET", 2)
                                .triage("080-2", "0.3")
                                .hold(Signer.SECOND)
                                .sheet(),
                        op("110").at(PLACE).irreversible().step("age").sheet(),
                        op("140").at(PLACE).outside().step("blast").sheet(),
                        op("150").at(PLACE).irreversible().step("spray").sheet())
                .window("CLEAN", 240, "050", "070")
                .window("SET", 24 * 60, "070")
                .wait("AGE", 72 * 60, "070", "110")
                .window("BLAST", 240, "140", "150");
    }

    private static SmallRoute arm() {
        return SmallRoute.of(op("100")
                .at(PLACE)
                .step("lay down")
                .plain("100-1", "0.3")
                .hold(Signer.QA)
                .sheet());
    }
}
