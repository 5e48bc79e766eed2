package org.trammel.shop.auditor;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.springframework.beans.factory.BeanFactory;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.welding.ArcSettings;
import org.trammel.shop.welding.GuardedOperations;
import org.trammel.shop.welding.HeatRules;
import org.trammel.shop.welding.LookRules;
import org.trammel.shop.welding.NewProcedure;
import org.trammel.shop.welding.NodeRules;
import org.trammel.shop.welding.Papers;
import org.trammel.shop.welding.Procedures;
import org.trammel.shop.welding.Welds;

/** A node of a frame that somebody welded under their name. */
final class LeftAtTheTorch {

    private LeftAtTheTorch() {}

    /** The operation at which it was welded. */
    static long weld(BeanFactory beans, WholeShop shop, long qa, long worker) {
        String code = "AW-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        String operation = "8" + code.substring(3);
        Procedures procedures = beans.getBean(Procedures.class);
        long version = procedures.draft(shop.act(qa), code, asked(operation)).version();
        procedures.putInForce(shop.act(qa), code, version);
        beans.getBean(Qualifications.class)
                .enter(
                        shop.act(qa),
                        worker,
                        Qualification.of(
                                        "WELD:AL:141",
                                        "ISO 9606-2",
                                        LocalDate.of(2025, 1, 1),
                                        LocalDate.of(2027, 1, 1),
                                        false)
                                .covering("aluminium", "141", new BigDecimal("0.5"), BigDecimal.TEN, "FW"));
        WholeShop.Frame frame = shop.frame(SmallRoute.of(SmallRoute.op(operation)
                        .qualified("WELD:AL:141")
                        .step(new StepSheet("node", "", false, true, null, null, null))
                        .step(new StepSheet("other node", "", false, true, null, null, null))
                        .sheet())
                .sheet());
        long at = shop.at(frame).line().operationId();
        long node = shop.at(frame).steps().get(0).stepId();
        scanned(beans, shop, qa, frame.serial(), operation, LotKind.FILLER, "ER4643");
        scanned(beans, shop, qa, frame.serial(), operation, LotKind.GAS, "ARGON");
        Welds welds = beans.getBean(Welds.class);
        welds.open(shop.act(worker), at, node, new Welds.Begin(null, null, null));
        welds.close(shop.act(worker), at, node, new Welds.End(null, null, null, null, null, null, null, null, null));
        welds.repair(shop.act(worker), at, node, "pore");
        return at;
    }

    private static void scanned(
            BeanFactory beans,
            WholeShop shop,
            long qa,
            String serial,
            String operation,
            LotKind kind,
            String materialClass) {
        LotRegister lots = beans.getBean(LotRegister.class);
        String code = "AW-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        lots.receive(
                shop.act(qa),
                new NewLot(
                        code,
                        kind,
                        "plain",
                        null,
                        materialClass,
                        "",
                        "",
                        null,
                        "a supplier",
                        LocalDate.of(2025, 12, 2),
                        null,
                        null,
                        ""));
        lots.certify(shop.act(qa), code, "batch", "C-1", null);
        lots.release(shop.act(qa), code);
        beans.getBean(Lots.class).issue(shop.act(qa), code, serial, "node", operation, null, null);
    }

    private static NewProcedure asked(String operation) {
        return new NewProcedure(
                "plain",
                "AL6061",
                "141",
                List.of("FW"),
                new BigDecimal("0.5"),
                BigDecimal.TEN,
                new GuardedOperations(List.of(), List.of(operation), List.of()),
                new ArcSettings(
                        List.of("ER4643"),
                        null,
                        List.of("ARGON"),
                        BigDecimal.TEN,
                        "2.4",
                        "AC",
                        BigDecimal.ONE,
                        BigDecimal.TEN),
                new HeatRules(null, null, null, null, 0),
                new NodeRules(null, null, null, false, false, 2),
                new LookRules("", "", ""),
                new Papers("ISO 9606-2", "shop rule", "1", "sheet"));
    }
}
