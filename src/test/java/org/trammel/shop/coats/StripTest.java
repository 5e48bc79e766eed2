package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.StepSheet;

/** A coat that does not conform comes off and is sprayed anew: the whole loop, by what the metal bears. */
class StripTest extends AtTheBooth {

    @Autowired
    private Films films;

    @Autowired
    private CoatStrips strips;

    @Autowired
    private Deciding deciding;

    @Autowired
    private NonconformanceReads nonconformances;

    @Test
    void agedAluminiumIsStrippedInABathBeforeItIsBlastedAgain() {
        Floor.Frame frame = backAtItsBlast("AL6061", MetalFamily.ALUMINIUM);
        long operation = at(frame);
        assertThat(code(frame)).isEqualTo(blast);
        mask(operation, "BB threads", true);
        mask(operation, "ground spot", true);
        tick(frame, "white cloth");
        refused(() -> tick(frame, "blasted"), "sprayed before", "not recorded how that coat came off");
        refused(() -> strip(operation, StripMethod.BAKE), "Aged aluminium is not baked off", "takes its temper");
        refused(() -> strip(operation, StripMethod.BLAST), "Aged aluminium is not blasted off");
        assertThat(strips.of(operation)).isEmpty();
        strip(operation, StripMethod.CHEMICAL);
        tick(frame, "blasted");
        blasted(operation, media(MetalFamily.ALUMINIUM), "2");
        measure(operation, "21", "50", "20");
        assertThat(code(frame)).isEqualTo(coat);
        tick(frame, "booth clean");
        refused(() -> tick(frame, "sprayed"), "not measured at this operation");
    }

    @Test
    void steelMayBeBakedOff() {
        Floor.Frame frame = backAtItsBlast("STEEL", MetalFamily.STEEL);
        assertThat(strip(at(frame), StripMethod.BAKE).method()).isEqualTo(StripMethod.BAKE);
    }

    @Test
    void aBareFrameIsNotStripped() {
        inForce("AL6061");
        Floor.Frame frame = frame("AL6061");
        refused(() -> strip(at(frame), StripMethod.CHEMICAL), "Nothing was sprayed");
        Floor.Frame scanned = atTheCoat();
        powder(at(scanned), powderLot(null), "0.4");
        assertThat(strips.finds(scanned.travellerId(), finishes.of(finish).get(0)))
                .isFalse();
    }

    private Strip strip(long operation, StripMethod method) {
        return strips.strip(crew.act(worker), operation, method, "gel, twenty minutes, rinsed");
    }

    /** Blasted and sprayed, found thin, and decided to be done over from its blast. */
    private Floor.Frame backAtItsBlast(String metal, MetalFamily family) {
        String film = blast.replace('b', 'f');
        finishes.putInForce(
                crew.act(qa),
                finish,
                asked("AL6061", "STEEL"),
                new CoatAsked(
                        List.of(film),
                        List.of("head tube"),
                        CoatAsked.Rule.MEAN_OF_AREAS,
                        new BigDecimal("60"),
                        null,
                        null,
                        false,
                        false,
                        null,
                        null,
                        null,
                        null));
        RouteSheet drawn = SmallRoute.of(
                        op(blast)
                                .step("white cloth")
                                .step(new StepSheet("blasted", "", false, true, null, "COAT-BY", null))
                                .sheet(),
                        op(coat).step("booth clean")
                                .step(new StepSheet("sprayed", "", false, true, null, null, null))
                                .sheet(),
                        op(film).step("cured").sheet())
                .window("COAT-BY", 240, blast, coat)
                .sheet();
        Floor.Frame frame = floor.frame(new RouteSheet(
                0, "TEST", "test route", "A", metal, "HARDTAIL", drawn.operations(), drawn.clocks(), List.of()));
        long first = at(frame);
        mask(first, "BB threads", true);
        mask(first, "ground spot", true);
        floor.tickAll(frame, worker);
        blasted(first, media(family), "2");
        measure(first, "21", "50", "20");
        measure(at(frame), "21", "50", "20");
        powder(at(frame), powderLot(null), "0.4");
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        String gauge = floor.gauge(metal.equals("STEEL") ? "FILM-MAGNETIC" : "FILM-EDDY", "µm", "1.2");
        films.take(crew.act(worker), at(frame), Map.of("head tube", "40"), gauge);
        deciding.propose(
                crew.act(floor.hire(org.trammel.shop.people.Role.QA_LEAD)),
                nonconformances.of(frame.serial()).get(0).id(),
                new Proposal(
                        Decision.REWORK,
                        "strip and coat again",
                        blast,
                        null,
                        null,
                        false,
                        null,
                        false,
                        null,
                        null,
                        Set.of()));
        return frame;
    }
}
