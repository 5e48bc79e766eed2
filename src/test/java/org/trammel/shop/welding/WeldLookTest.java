package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.Mockito.when;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.welding.Imperfection;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

class WeldLookTest extends AtTheTorch {

    private static final String FIRST = "Node 1: down tube to shell";
    private static final String SECOND = "Node 2: seat tube to shell";
    private static final String THIRD = "Node 3: down tube to head tube";

    @Autowired
    private WeldLooks looks;

    @Autowired
    private Welders welders;

    @Autowired
    private Designs designs;

    @Autowired
    private Travellers travellers;

    private long looker;

    /** ISO 5817 level C at t 1.5 mm: short undercut up to 0.1 t = 0.15 mm, public excerpts of the table, by hand. */
    @Test
    void everyNodeIsLookedAtAndWhatConformsPasses() {
        Floor.Frame frame = atTheLook();
        tick(frame, "looked at");
        assertThat(codeAt(frame)).isEqualTo(look);
        assertThat(floor.sheet(frame).inTheWay())
                .anyMatch(refusal -> refusal.why().contains(FIRST + " was not looked at"));
        see(frame, FIRST, WeldLooks.Sighting.nothing());
        List<SeenNode> seen = see(frame, SECOND, undercut("0.15", true));
        SeenNode.Look last = seen.get(1).looks().get(0);
        assertThat(last.limit()).isEqualByComparingTo("0.15");
        assertThat(last.words()).isEqualTo("Undercut of 0.15 mm; level C allows 0.15 mm. ISO 5817:2014.");
        assertThat(last.verdict()).isEqualTo(LookVerdict.CONFORMING);
        see(frame, THIRD, WeldLooks.Sighting.nothing());
        assertThat(codeAt(frame)).isEqualTo("999");
    }

    @Test
    void whatDoesNotConformOpensANonconformanceThatTheWeldIsAtFaultFor() {
        Floor.Frame frame = atTheLook();
        see(frame, FIRST, undercut("0.151", true));
        assertThat(found(frame).words()).contains(FIRST, "Undercut of 0.151 mm", "level C allows 0.15 mm");
        assertThat(found(frame).faultCode()).isEqualTo(weld);
        assertThat(found(frame).operationCode()).isEqualTo(look);
        decide(frame, Decision.REWORK);
        assertThat(codeAt(frame)).isEqualTo(weld);
    }

    @Test
    void aCrackConformsToNothingAndNeedsNoSize() {
        Floor.Frame frame = atTheLook();
        SeenNode node = see(frame, SECOND, new WeldLooks.Sighting(Imperfection.CRACK, null, false, null, null, null))
                .get(1);
        assertThat(node.passes()).isFalse();
        assertThat(found(frame).words()).contains("A crack conforms to no level");
    }

    /** The head tube is asked for at level B, and no line of level B was read in print. */
    @Test
    void whatNoLineSpeaksOfIsUndecidedUntilItIsLookedAtAgainOrTheQaLeadTakesItUp() {
        Floor.Frame frame = atTheLook();
        see(frame, FIRST, WeldLooks.Sighting.nothing());
        see(frame, SECOND, WeldLooks.Sighting.nothing());
        SeenNode node = see(frame, THIRD, undercut("0.05", true)).get(2);
        assertThat(node.level()).isEqualTo("B");
        assertThat(node.passes()).isFalse();
        assertThat(node.looks().get(0).verdict()).isEqualTo(LookVerdict.UNDECIDED);
        assertThat(node.looks().get(0).words()).contains("no line for undercut at level B");
        assertThat(deciding.of(frame.serial())).isEmpty();
        tick(frame, "looked at");
        assertThat(codeAt(frame)).isEqualTo(look);
        refused(() -> looks.refer(crew.act(welder), at(frame), THIRD), "QA lead");
        refused(() -> looks.refer(crew.act(qa), at(frame), FIRST), "is undecided");
        looks.refer(crew.act(qa), at(frame), THIRD);
        assertThat(found(frame).words()).contains("no line for undercut at level B");
        long operation = at(frame);
        assertThat(looks.of(operation).get(2).passes()).isFalse();
        qa = floor.hire(Role.QA_LEAD);
        refused(() -> decide(frame, Decision.CLEARED), "No newer look at " + THIRD);
        decide(frame, Decision.CONCESSION);
        assertThat(looks.of(operation).get(2).passes()).isTrue();
        assertThat(looks.of(operation).get(2).looks().get(1).isShort()).isTrue();
    }

    /** By the QA lead's word alone nothing that was seen is gone: a newer look has to say so. */
    @Test
    void aFindingIsClearedOnceANewerLookConforms() {
        Floor.Frame frame = atTheLook();
        see(frame, FIRST, undercut("0.2", true));
        refused(() -> decide(frame, Decision.CLEARED), "No newer look at " + FIRST);
        see(frame, FIRST, undercut("0.1", true));
        assertThat(looks.of(at(frame)).get(0).passes()).isFalse();
        decide(frame, Decision.CLEARED);
        assertThat(looks.of(at(frame)).get(0).passes()).isTrue();
    }

    @Test
    void aCrackStaysByNobodysWord() {
        Floor.Frame frame = atTheLook();
        see(frame, SECOND, new WeldLooks.Sighting(Imperfection.CRACK, null, false, null, null, null));
        refused(() -> decide(frame, Decision.CONCESSION), SECOND + " has a crack, which conforms to no level");
        refused(() -> decide(frame, Decision.CLEARED), "No newer look");
        decide(frame, Decision.REWORK);
        assertThat(codeAt(frame)).isEqualTo(weld);
    }

    @Test
    void whoeverLookedIsNoSecondPerson() {
        Floor.Frame frame = atTheLook(Signer.WORKER, Signer.SECOND);
        for (String node : List.of(FIRST, SECOND, THIRD)) {
            see(frame, node, WeldLooks.Sighting.nothing());
        }
        long other = floor.hire(Role.WELDER);
        bench.tick(crew.act(other), List.of(step(frame, "looked at")), null, null);
        refused(() -> signing.sign(crew.act(looker), at(frame), looker, Signer.SECOND), "took no part");
    }

    /** Nine nodes without a finding are a word that the gate rests on. */
    @Test
    void whoLooksHoldsWhatTheStepAsksForAndIsNoApprentice() {
        Floor.Frame frame = atTheLook();
        long apprentice = floor.hire(Role.APPRENTICE);
        refused(
                () -> looks.see(crew.act(apprentice), at(frame), FIRST, WeldLooks.Sighting.nothing()),
                "apprentice",
                "may sign");
        lookedBy = "VISUAL";
        Floor.Frame asking = atTheLook();
        refused(() -> see(asking, FIRST, WeldLooks.Sighting.nothing()), "VISUAL");
        looker = floor.qualified("VISUAL", Role.ALIGNER);
        see(asking, FIRST, WeldLooks.Sighting.nothing());
    }

    /** Who found a pore that no line covers does not measure it again until one does. */
    @Test
    void anUndecidedFindingIsLookedAtAgainBySomebodyElse() {
        Floor.Frame frame = atTheLook();
        WeldLooks.Sighting thin = new WeldLooks.Sighting(
                Imperfection.UNDERCUT, new BigDecimal("0.05"), true, new BigDecimal("0.4"), null, null);
        see(frame, FIRST, thin);
        assertThat(looks.of(at(frame)).get(0).looks().get(0).verdict()).isEqualTo(LookVerdict.UNDECIDED);
        see(frame, FIRST, undercut("0.05", true));
        assertThat(looks.of(at(frame)).get(0).passes()).isFalse();
        looker = floor.hire(Role.ALIGNER);
        see(frame, FIRST, undercut("0.05", true));
        assertThat(looks.of(at(frame)).get(0).passes()).isTrue();
    }

    /** Seat tube of 0.8 mm and down tube of 1.2 mm with an end of 1.6: a limit may not be drawn from another node's wall. */
    @ParameterizedTest
    @CsvSource({
        "Node 2: seat tube to shell, 0.8, 0.81",
        "Node 1: down tube to shell, 1.6, 1.61",
        "Node 3: down tube to head tube, 1.6, 1.7"
    })
    void theWallIsNoThickerThanTheTubesOfTheNode(String node, String most, String above) {
        Floor.Frame frame = atTheLook();
        drawn(Map.of(
                "DOWN_TUBE_WALL",
                "1.2",
                "DOWN_TUBE_WALL_AT_HEAD",
                "1.6",
                "SEAT_TUBE_WALL",
                "0.8",
                "TOP_TUBE_WALL",
                "2"));
        refused(() -> see(frame, node, pore(above)), "is thicker than the thinner one at " + node, most + " mm");
        see(frame, node, pore(most));
    }

    /** A bridge is no tube of the drawing: the thinnest of all counts. */
    @Test
    void aNodeThatNamesNoTubeIsNoThickerThanTheThinnest() {
        FrameSheet.Head head = travellers.head(atTheLook().travellerId());
        drawn(Map.of("DOWN_TUBE_WALL", "1.2", "SEAT_TUBE_WALL", "0.8"));
        assertThat(welders.thickestAt(head, "Node 9: bridges, last weld")).contains(new BigDecimal("0.8"));
        assertThat(welders.thickestAt(head, "Node 4: seat tube to down tube")).contains(new BigDecimal("0.8"));
    }

    private static WeldLooks.Sighting pore(String wall) {
        return new WeldLooks.Sighting(
                Imperfection.SINGLE_PORE, new BigDecimal("0.1"), false, new BigDecimal(wall), null, null);
    }

    private void drawn(Map<String, String> geometry) {
        when(designs.revision(anyLong()))
                .thenAnswer(i -> new DesignSheet(
                        i.<Long>getArgument(0),
                        1,
                        "T-1",
                        "A",
                        DesignState.RELEASED,
                        "AL6061",
                        "HARDTAIL",
                        "test frame",
                        null,
                        Map.of(),
                        geometry,
                        List.of(),
                        null,
                        null));
    }

    @Test
    void nobodyLooksOverTheOwnWeld() {
        Floor.Frame frame = atTheLook();
        refused(
                () -> looks.see(crew.act(welder), at(frame), FIRST, WeldLooks.Sighting.nothing()),
                "took part in welding it");
        assertThat(looks.of(at(frame)).get(0).looks()).isEmpty();
    }

    /** Whoever signed first and looks after signed what was not there yet. */
    @Test
    void aSignatureGivenBeforeALookIsAskedForAnew() {
        Floor.Frame frame = atTheLook(Signer.WORKER, Signer.SECOND);
        for (String node : List.of(FIRST, SECOND, THIRD)) {
            see(frame, node, WeldLooks.Sighting.nothing());
        }
        tick(frame, "looked at");
        long second = floor.hire(Role.STATION_WORKER);
        signing.sign(crew.act(second), at(frame), second, Signer.SECOND);
        looks.see(crew.act(second), at(frame), FIRST, WeldLooks.Sighting.nothing());
        signing.sign(crew.act(welder), at(frame), welder, Signer.WORKER);
        assertThat(codeAt(frame)).isEqualTo(look);
        refused(() -> signing.sign(crew.act(second), at(frame), second, Signer.SECOND), "took no part");
    }

    @Test
    void whatCannotBeIsRefusedAndWhatIsSentTwiceIsRecordedOnce() {
        Floor.Frame frame = atTheLook();
        refused(() -> see(frame, "Node 9", WeldLooks.Sighting.nothing()), "no such node");
        refused(() -> see(frame, FIRST, undercut("0", true)), "The size, 0 mm, is no such figure");
        refused(
                () -> see(
                        frame,
                        FIRST,
                        new WeldLooks.Sighting(Imperfection.UNDERCUT, BigDecimal.ONE, false, null, null, null)),
                "The wall is missing");
        refused(
                () -> see(
                        frame,
                        FIRST,
                        new WeldLooks.Sighting(
                                Imperfection.CONVEXITY, BigDecimal.ONE, false, new BigDecimal("1.5"), null, null)),
                "The width of the weld was not measured.");
        Act once = crew.act(looker);
        looks.see(once, at(frame), FIRST, WeldLooks.Sighting.nothing());
        assertThat(looks.see(once, at(frame), FIRST, WeldLooks.Sighting.nothing())
                        .get(0)
                        .looks())
                .hasSize(1);
    }

    private List<SeenNode> see(Floor.Frame frame, String node, WeldLooks.Sighting sighting) {
        return looks.see(crew.act(looker), at(frame), node, sighting);
    }

    private static WeldLooks.Sighting undercut(@Nullable String size, boolean isShort) {
        return new WeldLooks.Sighting(
                Imperfection.UNDERCUT,
                new BigDecimal(Objects.requireNonNull(size)),
                isShort,
                new BigDecimal("1.5"),
                null,
                null);
    }

    private Floor.Frame atTheLook(Signer... signers) {
        looksSigned = List.of(signers);
        NewProcedure c = plain();
        inForce(Written.with(
                c,
                new HeatRules(null, null, null, null, 0),
                c.nodes(),
                new LookRules("C", "B: head tube", "ISO-5817-2014")));
        Floor.Frame frame = atTheArc();
        for (String node : List.of("Node 1", "Node 2", "Node 3")) {
            begin(frame, node, null, null);
            end(frame, node);
        }
        assertThat(codeAt(frame)).isEqualTo(look);
        looker = floor.hire(Role.ALIGNER);
        return frame;
    }
}
