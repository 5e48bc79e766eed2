package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.assembly.BuildRecord;
import org.trammel.shop.assembly.BuildRulesBook;
import org.trammel.shop.assembly.Builds;
import org.trammel.shop.assembly.NewBuildRules;
import org.trammel.shop.assembly.OffsetShares;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** What joining, final check and packing ask for, and what was recorded of the frames that were ridden and packed. */
@Component
@Profile("demo")
class DemoBuilds {

    private static final String FITTER = "DO";

    private final BuildRulesBook rules;
    private final Builds builds;
    private final Travellers travellers;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoBuilds(BuildRulesBook rules, Builds builds, Travellers travellers, DemoActs acts, DemoClock clock) {
        this.rules = rules;
        this.builds = builds;
        this.travellers = travellers;
        this.acts = acts;
        this.clock = clock;
    }

    void putInForce() {
        rules.putInForce(
                acts.by("TR"),
                new NewBuildRules(
                        List.of("170"),
                        List.of("170", "180"),
                        List.of("190"),
                        List.of("200"),
                        new OffsetShares(
                                new BigDecimal("0.3"),
                                new BigDecimal("0.3"),
                                new BigDecimal("0.1"),
                                new BigDecimal("0.2")),
                        20,
                        new BigDecimal("25"),
                        NewBuildRules.items(
                                "* | manual, weight limit, tightness label\nSE | bell\nSE | reflectors front, rear, pedals\nDE | lights front and rear"),
                        "invented procedure of the shop; the law of each country as its QA lead reads it"));
    }

    /** What a step that rests on a record of the build rests on. */
    void prove(long operation, Proof proof) {
        FrameSheet.Head head = travellers.headOf(operation);
        clock.pass(Duration.ofMinutes(1));
        switch (proof) {
            case BEDDED -> {
                bed(operation, BuildRecord.Brake.FRONT);
                bed(operation, BuildRecord.Brake.REAR);
            }
            case RIDDEN ->
                builds.ride(acts.by(FITTER), operation, acts.id(FITTER), true, "tracks straight hands off, no noise");
            case COUNTRY ->
                builds.of(operation)
                        .items()
                        .forEach(item -> builds.item(acts.by(FITTER), operation, item.item(), true));
            case PACKED -> builds.pack(acts.by(FITTER), operation, head.serial(), head.serial(), head.serial());
            default -> throw new IllegalStateException(head.mark() + " is not joined in this story");
        }
    }

    private void bed(long operation, BuildRecord.Brake brake) {
        clock.pass(Duration.ofMinutes(10));
        builds.bed(
                acts.by(FITTER),
                operation,
                new Builds.Bedding(brake, 22, new BigDecimal("25"), null, null, null, true));
    }
}
