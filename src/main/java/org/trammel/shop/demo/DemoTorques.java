package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.assembly.ComponentKind;
import org.trammel.shop.assembly.Components;
import org.trammel.shop.assembly.FrameComponents;
import org.trammel.shop.assembly.TorqueSheet;
import org.trammel.shop.assembly.TorqueSheets;
import org.trammel.shop.assembly.Torques;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Travellers;

/**
 * Components of frames and their torques: the first nine of twenty-two of the hardtail in titanium, next is the face plate of
 * its stem; of frames built before it what steers, stops and carries, while the rest was read by hand.
 */
@Component
@Profile("demo")
class DemoTorques {

    /** Fasteners that are whole when the day begins. */
    private static final int DONE = 9;

    private static final String FITTER = "DO";

    private static final Set<ComponentKind> TOLD =
            Set.of(ComponentKind.STEM, ComponentKind.AXLE, ComponentKind.BRAKE, ComponentKind.SEAT_CLAMP);

    private final DemoActs acts;
    private final DemoClock clock;
    private final Components components;
    private final FrameComponents frames;
    private final Torques torques;
    private final TorqueSheets sheets;
    private final Travellers travellers;

    DemoTorques(
            DemoActs acts,
            DemoClock clock,
            Components components,
            FrameComponents frames,
            Torques torques,
            TorqueSheets sheets,
            Travellers travellers) {
        this.acts = acts;
        this.clock = clock;
        this.components = components;
        this.frames = frames;
        this.torques = torques;
        this.sheets = sheets;
        this.travellers = travellers;
    }

    /** The sheets of every component, before any is fitted. */
    void putInForce() {
        for (DemoComponents.Sheet sheet : DemoComponents.all()) {
            String letter = components
                    .draft(acts.by(FITTER), sheet.code(), sheet.content())
                    .letter();
            components.putInForce(acts.by("TR"), sheet.code(), letter);
        }
    }

    /** Gives the frame its components and torques as far as it is. */
    void tell(long travellerId, long operationId) {
        give(travellerId, sheet -> true);
        TorqueSheet sheet = sheets.of(operationId);
        sheet.lines().subList(0, DONE).forEach(line -> tighten(operationId, line));
        witness(operationId);
    }

    /** What a step that rests on torques rests on, of a frame whose story is not told by them. */
    void prove(long travellerId, long operationId, Proof proof) {
        if (proof == Proof.TORQUED
                && frames.of(travellers.head(travellerId).serial(), "").isEmpty()) {
            give(travellerId, sheet -> TOLD.contains(sheet.content().kind()));
        }
        sheets.of(operationId).lines().forEach(line -> tighten(operationId, line));
        witness(operationId);
    }

    private void give(long travellerId, Predicate<DemoComponents.Sheet> which) {
        DemoComponents.all().stream().filter(which).forEach(sheet -> {
            clock.pass(Duration.ofSeconds(20));
            frames.give(acts.by("ME"), travellerId, sheet.code(), sheet.place());
        });
    }

    private void tighten(long operationId, TorqueSheet.Line line) {
        TorqueSheet.Line now = line;
        while (now.next() != null) {
            clock.pass(Duration.ofSeconds(15));
            TorqueSheet.Next next = Objects.requireNonNull(now.next());
            TorqueSheet sheet = torques.tighten(
                    acts.by(FITTER),
                    operationId,
                    new Torques.Tightened(
                            now.part().id(),
                            now.fastener().id(),
                            now.round(),
                            next.pass(),
                            next.bolt(),
                            next.set_Nm().compareTo(BigDecimal.valueOf(14)) > 0 ? "TW-2" : "TW-1",
                            null,
                            null));
            now = same(sheet, now);
        }
    }

    private void witness(long operationId) {
        List<TorqueSheet.Line> open = sheets.of(operationId).toWitness();
        if (open.isEmpty()) {
            return;
        }
        clock.pass(Duration.ofMinutes(2));
        torques.witness(
                acts.by(FITTER),
                operationId,
                acts.id("JA"),
                open.stream()
                        .map(line -> new Torques.Seen(
                                line.part().id(), line.fastener().id(), line.round()))
                        .toList());
    }

    private static TorqueSheet.Line same(TorqueSheet sheet, TorqueSheet.Line line) {
        return sheet.lines().stream()
                .filter(one -> one.part().id() == line.part().id()
                        && one.fastener().id() == line.fastener().id())
                .findFirst()
                .orElseThrow();
    }
}
