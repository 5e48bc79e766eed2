package org.trammel.shop.auditor;

import org.springframework.beans.factory.BeanFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.cuts.Sawn;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.WaitingForTheSaw;

/** Tubes of a frame that somebody measured under their name. */
final class LeftAtTheSaw {

    private LeftAtTheSaw() {}

    /** The saws are retired again: other frames of the database have none. */
    static void cut(BeanFactory beans, WholeShop shop, JdbcClient jdbc, long worker) {
        WholeShop.Frame frame = WaitingForTheSaw.frame(
                shop, jdbc, SmallRoute.of(SmallRoute.op("030").step("cut").sheet()));
        long at = shop.at(frame).line().operationId();
        Sawn sawn = new Sawn(beans, shop);
        sawn.saw("54");
        sawn.all(worker, at);
        sawn.retireAll();
    }
}
