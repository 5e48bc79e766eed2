package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Remarks;

/** What a procedure may ask of each node besides its figures, and steps of the route that rest on a procedure. */
class NodeRulesTest extends AtTheTorch {

    @Autowired
    private Remarks remarks;

    @Autowired
    private WeldLooks looks;

    @Test
    void eachNodeIsPhotographedBeforeItIsClosedWhereTheProcedureAsksForIt() {
        NewProcedure c = plain();
        inForce(Written.with(
                c,
                new HeatRules(null, null, null, null, 0),
                new NodeRules(null, null, null, false, true, 2),
                c.looks()));
        Floor.Frame frame = atTheArc();
        for (String node : List.of("Node 1", "Node 2", "Node 3")) {
            begin(frame, node, null, null);
            refused(
                    () -> end(frame, node),
                    "asks for a photograph of each node, and there is none",
                    "Take the photograph");
            assertThat(record(frame, node).state()).isEqualTo(NodeRecord.State.OPEN);
            remarks.photo(crew.act(welder), step(frame, node), new Remarks.Sent(picture(), "image/png", "node.png"));
            assertThat(end(frame, node).nodes())
                    .filteredOn(one -> one.node().startsWith(node))
                    .singleElement()
                    .matches(NodeRecord::ticked);
        }
        assertThat(codeAt(frame)).isEqualTo(look);
    }

    /** The route says that a node rests on a procedure: without one in force it is not ticked, however it is sent. */
    @Test
    void aStepThatRestsOnAWeldIsNotTickedWithoutAProcedureInForce() {
        Floor.Frame frame = floor.frame(proven());
        supplied(frame);
        refused(
                () -> tick(frame, "Node 1"),
                "“Node 1” of",
                "rests on a procedure, and none in force names operation " + weld,
                "The QA lead puts one in force");
        NewProcedure c = plain();
        inForce(Written.with(
                c, new HeatRules(null, null, null, null, 0), c.nodes(), new LookRules("C", "", "ISO-10042-1992")));
        // The work had begun before the procedure, which lets no such step go by paper.
        refused(() -> tick(frame, "Node 1"), "Node 1 is not recorded");
        begin(frame, "Node 1", null, null);
        refused(() -> tick(frame, "Node 1"), "Node 1 is open");
        end(frame, "Node 1");
        assertThat(codeAt(frame)).isEqualTo(look);
        refused(() -> tick(frame, "looked at"), "“looked at” of", "Node 1 was not looked at");
        long inspector = floor.hire(Role.STATION_WORKER);
        looks.see(crew.act(inspector), at(frame), "Node 1", WeldLooks.Sighting.nothing());
        tick(frame, "looked at");
        assertThat(codeAt(frame)).isEqualTo("999");
    }

    private static byte[] picture() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(48, 32, BufferedImage.TYPE_INT_RGB), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private void supplied(Floor.Frame frame) {
        scan(frame, "filler", lot(LotKind.FILLER, "ER4643"));
        scan(frame, "gas", lot(LotKind.GAS, "ARGON"));
    }

    private RouteSheet proven() {
        return aluminium(SmallRoute.of(
                op(weld).qualified(kind)
                        .lot("filler", "FILLER")
                        .lot("gas", "GAS")
                        .step(new StepSheet("Node 1", "", false, true, null, null, null, Proof.WELDED))
                        .sheet(),
                op(look).step(new StepSheet("looked at", "", false, false, null, null, null, Proof.LOOKED))
                        .sheet(),
                op("999").step("on").sheet()));
    }

    private static RouteSheet aluminium(SmallRoute route) {
        RouteSheet drawn = route.sheet();
        return new RouteSheet(
                0, "TEST", "test route", "A", "AL6061", "HARDTAIL", drawn.operations(), drawn.clocks(), List.of());
    }
}
