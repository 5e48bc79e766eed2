package org.trammel.shop.auditor;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.beans.factory.BeanFactory;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.assembly.BuildRecord;
import org.trammel.shop.assembly.BuildRulesBook;
import org.trammel.shop.assembly.Builds;
import org.trammel.shop.assembly.ComponentKind;
import org.trammel.shop.assembly.Components;
import org.trammel.shop.assembly.FrameComponents;
import org.trammel.shop.assembly.FramePart;
import org.trammel.shop.assembly.NewBuildRules;
import org.trammel.shop.assembly.NewComponent;
import org.trammel.shop.assembly.NewFastener;
import org.trammel.shop.assembly.OffsetShares;
import org.trammel.shop.assembly.Torques;
import org.trammel.shop.coats.Finishes;
import org.trammel.shop.coats.NewFinish;
import org.trammel.shop.coats.Surfaces;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.GaugeStudies;
import org.trammel.shop.gauges.NewStudy;
import org.trammel.shop.gauges.StudyReading;
import org.trammel.shop.handwork.Handwork;
import org.trammel.shop.handwork.ToolKind;
import org.trammel.shop.handwork.Tools;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.ovens.Loads;
import org.trammel.shop.ovens.LogImport;
import org.trammel.shop.ovens.NewOven;
import org.trammel.shop.ovens.NewProgramme;
import org.trammel.shop.ovens.NewTest;
import org.trammel.shop.ovens.OvenRegister;
import org.trammel.shop.ovens.OvenRuns;
import org.trammel.shop.ovens.Programme;
import org.trammel.shop.ovens.ProgrammeStep;
import org.trammel.shop.ovens.Programmes;
import org.trammel.shop.ovens.Purpose;
import org.trammel.shop.ovens.RunRelease;
import org.trammel.shop.ovens.RunSigner;
import org.trammel.shop.ovens.Runs;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Travellers;

/** Records of gauges, ovens and coats that people left their names at. */
final class LeftInTheShop {

    private LeftInTheShop() {}

    /** Two people, who stand by their initials, measured two parts twice; gives what must not be told. */
    static List<String> study(BeanFactory beans, Act act, String gauge) {
        List<StudyReading> readings = new ArrayList<>();
        for (String who : List.of("BQ", "BQ", "WO", "WO")) {
            readings.add(new StudyReading("1", who, BigDecimal.ONE));
            readings.add(new StudyReading("2", who, BigDecimal.valueOf(readings.size())));
        }
        beans.getBean(GaugeStudies.class).enter(act, gauge, new NewStudy("two parts", "mm", null, readings));
        return List.of("\"BQ\"", ">BQ<");
    }

    /** A bake from its oven to its decision; oven, programme and load have the number that is given. */
    static String ovens(BeanFactory beans, WholeShop shop, long qa, long worker, long second) {
        String code = "AU-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        oven(beans.getBean(OvenRegister.class), shop, qa, code);
        Programmes programmes = beans.getBean(Programmes.class);
        BigDecimal five = new BigDecimal("5");
        Programme drawn = programmes.draw(
                shop.act(qa),
                code,
                Purpose.CURE,
                new NewProgramme(
                        "bake",
                        List.of("AL6061"),
                        List.of("159"),
                        List.of(ProgrammeStep.of(new BigDecimal("160"), five, new BigDecimal("0.3"))),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        false,
                        "data sheet"));
        programmes.approve(shop.act(qa), drawn.revisionId(), drawn.version());
        String serial = shop.frame(shop.route(
                        SmallRoute.of(SmallRoute.op("159").step("cured").sheet())
                                .sheet()))
                .serial();
        Loads loads = beans.getBean(Loads.class);
        OvenRuns runs = beans.getBean(OvenRuns.class);
        loads.open(shop.act(worker), code, code, code, "upright");
        loads.load(shop.act(worker), code, List.of(serial), new Loads.Ready("left", true, true, null));
        runs.sign(shop.act(qa), code, qa, RunSigner.HEAT_TREATER);
        runs.sign(shop.act(second), code, second, RunSigner.SECOND);
        runs.start(shop.act(worker), code);
        Instant began = shop.clock().instant();
        runs.door(shop.act(worker), code, true, "looked in");
        shop.clock().pass(Duration.ofMinutes(40));
        runs.stop(shop.act(worker), code);
        StringBuilder text = new StringBuilder("time,T" + code + "\n");
        for (int minute = 0; minute <= 40; minute++) {
            text.append(began.plus(Duration.ofMinutes(minute)))
                    .append(minute < 5 || minute > 35 ? ",90.0\n" : ",160.0\n");
        }
        LogImport records = beans.getBean(LogImport.class);
        records.read(
                shop.act(worker),
                code,
                new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)),
                "log.csv",
                new LogImport.Choices(null, null, false));
        records.take(
                shop.act(worker), code, beans.getBean(Runs.class).draftId(code).orElseThrow());
        long third = shop.hire(Role.STATION_WORKER);
        beans.getBean(RunRelease.class).decide(shop.act(third), code, third, Set.of(), null);
        beans.getBean(OvenRegister.class)
                .tested(
                        shop.act(qa),
                        code,
                        NewTest.accuracy(
                                "T" + code,
                                shop.clock().instant(),
                                null,
                                BigDecimal.TEN,
                                BigDecimal.ONE,
                                new BigDecimal("160"),
                                "R"));
        return code;
    }

    private static void oven(OvenRegister register, WholeShop shop, long qa, String code) {
        BigDecimal size = new BigDecimal("1000");
        register.register(
                shop.act(qa),
                code,
                new NewOven(
                        "dries",
                        java.util.EnumSet.of(Purpose.CURE),
                        BigDecimal.TEN,
                        size,
                        size,
                        size,
                        new BigDecimal("45")));
        Instant before = shop.clock().instant().minus(Duration.ofDays(1));
        LocalDate later = LocalDate.of(2027, 1, 1);
        BigDecimal at = new BigDecimal("160");
        register.tested(
                shop.act(qa), code, NewTest.survey(before, later, BigDecimal.ONE.negate(), BigDecimal.ONE, at, "R"));
        for (ThermocoupleRole role : List.of(ThermocoupleRole.LOAD, ThermocoupleRole.CONTROL)) {
            String own = (role == ThermocoupleRole.LOAD ? "T" : "C") + code;
            register.fit(shop.act(qa), code, own, role);
            register.tested(
                    shop.act(qa), code, NewTest.accuracy(own, before, later, BigDecimal.ZERO, BigDecimal.ONE, at, "R"));
        }
    }

    /** A finish, and the operation of a frame at which somebody ticked one of its masks and took a brush. */
    record Coat(String finish, long operationId) {}

    static Coat coat(BeanFactory beans, WholeShop shop, long qa, long worker) {
        String code = "AF-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        String operation = "9" + code.substring(3);
        beans.getBean(Finishes.class)
                .putInForce(
                        shop.act(qa),
                        code,
                        new NewFinish(
                                "plain",
                                List.of("AL6061"),
                                List.of(operation),
                                List.of(),
                                List.of("threads"),
                                BigDecimal.ONE,
                                null,
                                "sheet"));
        WholeShop.Frame frame = shop.frame(SmallRoute.of(SmallRoute.op(operation)
                        .step(new StepSheet("blast", "", false, false, null, null, null, Proof.BRUSHED))
                        .sheet())
                .sheet());
        long at = shop.at(frame).line().operationId();
        beans.getBean(Surfaces.class).mask(shop.act(worker), at, "threads", true);
        beans.getBean(Tools.class)
                .register(shop.act(qa), code, ToolKind.BRUSH, "of the booth", MetalFamily.ALUMINIUM, false);
        beans.getBean(Handwork.class).touched(shop.act(worker), at, code);
        return new Coat(code, at);
    }

    /** A component of a frame, and the operation at which somebody tightened its bolt and somebody else looked at it. */
    record Torqued(String component, long travellerId, long operationId) {

        /** The pages that tell of it, after others. */
        List<String> pagesAnd(String... others) {
            return Stream.concat(
                            Stream.of(others),
                            Stream.of(
                                    "/shop/components",
                                    "/shop/components/" + component,
                                    "/components/" + travellerId,
                                    "/shop/build-rules",
                                    "/own-parts/" + travellerId,
                                    "/builds/" + operationId,
                                    "/torques/" + operationId,
                                    "/torques/" + operationId + "/paper"))
                    .toList();
        }
    }

    static Torqued torqued(BeanFactory beans, WholeShop shop, long qa, long worker, long second) {
        String tool = shop.gauge("TORQUE", "N·m", "0.1", LocalDate.of(2027, 1, 1));
        String code = "AK-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        String operation = "9" + code.substring(3);
        Components components = beans.getBean(Components.class);
        components.draft(
                shop.act(worker),
                code,
                new NewComponent(
                        ComponentKind.STEM,
                        "stem",
                        operation,
                        null,
                        false,
                        null,
                        "its sheet",
                        "1",
                        List.of(new NewFastener(
                                "clamp",
                                1,
                                new BigDecimal("4"),
                                new BigDecimal("5"),
                                new BigDecimal("6"),
                                false,
                                null,
                                null,
                                false,
                                List.of(),
                                false,
                                true,
                                false,
                                null,
                                null))));
        components.putInForce(shop.act(qa), code, "A");
        WholeShop.Frame frame = shop.frame(
                SmallRoute.of(SmallRoute.op(operation).step("fit").sheet()).sheet());
        long at = shop.at(frame).line().operationId();
        long traveller = beans.getBean(Travellers.class).headOf(at).travellerId();
        FramePart part = beans.getBean(FrameComponents.class).give(shop.act(qa), traveller, code, "");
        long fastener = part.component().fasteners().get(0).id();
        Torques torques = beans.getBean(Torques.class);
        torques.tighten(shop.act(worker), at, new Torques.Tightened(part.id(), fastener, 1, 1, 1, tool, null, null));
        torques.witness(shop.act(worker), at, second, List.of(new Torques.Seen(part.id(), fastener, 1)));
        BigDecimal none = BigDecimal.ZERO;
        beans.getBean(BuildRulesBook.class)
                .putInForce(
                        shop.act(qa),
                        new NewBuildRules(
                                List.of(),
                                List.of(),
                                List.of(operation),
                                List.of(),
                                new OffsetShares(none, none, none, none),
                                20,
                                new BigDecimal("25"),
                                NewBuildRules.items("* | manual"),
                                "procedure"));
        Builds builds = beans.getBean(Builds.class);
        for (BuildRecord.Brake brake : BuildRecord.Brake.values()) {
            builds.bed(
                    shop.act(worker), at, new Builds.Bedding(brake, 20, new BigDecimal("25"), null, null, null, true));
        }
        builds.ride(shop.act(worker), at, second, true, "straight");
        builds.item(shop.act(worker), at, "manual", true);
        return new Torqued(code, traveller, at);
    }
}
