package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;

/**
 * What an answer at the gate rests on. That nothing is forgotten is found by trying: every input is moved, taken away or
 * put there, and whatever check then shows something else must name the input and void its answer.
 */
@ShopTest
class GateInputsTest {

    private static final String MORE =
            "STACK_ASKED 643 SADDLE_CLAMP 700 SEATPOST 400 SEATPOST_MARK 100 SEATPOST_DEPTH 320"
                    + " CRANK 172.5 FEET_HELD 0 SEAT_TUBE_OFFSET 2 FORMED_TOP_TUBE_HEAD 32 FORMED_TOP_TUBE_HEAD_ZONE 60"
                    + " FORMED_DOWN_TUBE_HEAD 40 FORMED_DOWN_TUBE_HEAD_ZONE 60 TOP_TUBE_OUTSIDE 31.8 TOP_TUBE_LENGTH 640"
                    + " TOP_TUBE_BUTT_AT_HEAD 100 TOP_TUBE_MIDDLE_WALL 0.8 TOP_TUBE_BUTT_AT_SEAT 100";

    @Autowired
    private GateLimits limits;

    @Autowired
    private SawDrawer saws;

    @ParameterizedTest
    @EnumSource(GeometryInput.class)
    void whateverMovesAFigureIsAnInputOfItsCheckAndVoidsItsAnswer(GeometryInput input) {
        for (Map<String, String> before : List.of(
                inputs(MORE), inputs(""), inputs(MORE + " PIVOT_AHEAD 20"), typed(SwingFrame.inputs("O-104")))) {
            Map<GateCheck, CheckFigures> was = figures(before);
            for (Map<String, String> after : changed(before, input)) {
                Map<GateCheck, CheckFigures> is = figures(after);
                for (GateCheck check : both(was, is)) {
                    boolean moved = !shown(was, check).equals(shown(is, check));
                    boolean named = GateInputs.of(check).contains(input);
                    if (moved && isWhole(was.get(check)) && isWhole(is.get(check))) {
                        assertThat(named).as("%s moves %s", input, check).isTrue();
                    }
                    boolean voids =
                            !was.get(check).givenOn().equals(is.get(check).givenOn());
                    assertThat(voids)
                            .as("%s and the answer of %s", input, check)
                            .isEqualTo(moved || named);
                }
            }
        }
    }

    private static List<Map<String, String>> changed(Map<String, String> before, GeometryInput input) {
        String typed = before.get(input.code());
        if (typed == null) {
            return List.of(with(before, input, input.band().usualFrom().toPlainString()));
        }
        String moved = input.yesOrNo()
                ? typed.equals("0") ? "1" : "0"
                : new BigDecimal(typed).add(new BigDecimal("0.7")).toPlainString();
        return List.of(with(before, input, moved), with(before, input, null));
    }

    private static Map<String, String> with(Map<String, String> before, GeometryInput input, String amount) {
        Map<String, String> after = new TreeMap<>(before);
        after.remove(input.code());
        Optional.ofNullable(amount).ifPresent(given -> after.put(input.code(), given));
        return after;
    }

    /** Nothing is missing for its figures, and nothing contradicts itself. */
    private static boolean isWhole(CheckFigures check) {
        return check.lacking().isEmpty() && check.cannot().isEmpty();
    }

    private static String shown(Map<GateCheck, CheckFigures> figures, GateCheck check) {
        CheckFigures one = figures.get(check);
        return Stream.of(one.figures(), one.lacking(), one.cannot())
                .flatMap(List::stream)
                .map(Object::toString)
                .collect(Collectors.joining("\n"));
    }

    private static Map<String, String> inputs(String changed) {
        return typed(TrailFrame.inputs(changed));
    }

    private static Map<String, String> typed(Map<GeometryInput, BigDecimal> inputs) {
        Map<String, String> typed = new TreeMap<>();
        inputs.forEach((input, amount) -> typed.put(input.code(), amount.toPlainString()));
        return typed;
    }

    /** A check that only one of the two frames has is no other answer: it is asked anew, or not at all. */
    private static Set<GateCheck> both(Map<GateCheck, CheckFigures> was, Map<GateCheck, CheckFigures> is) {
        Set<GateCheck> both = EnumSet.copyOf(was.keySet());
        both.retainAll(is.keySet());
        return both;
    }

    private Map<GateCheck, CheckFigures> figures(Map<String, String> geometry) {
        DesignSheet sheet = new DesignSheet(
                1,
                1,
                "O-1",
                "A",
                DesignState.DRAFT,
                "AL6061",
                "HARDTAIL",
                "x",
                null,
                Map.of(),
                geometry,
                List.of(),
                null,
                "HT-AL-A");
        return GateFigures.of(
                sheet,
                ComputedFrame.of(geometry, saws.rules()),
                limits,
                new OrderTells.Told("SE", "MOUNTAIN", "left", new BigDecimal("780"), new BigDecimal("90"), 3),
                List.of(),
                Optional.of(new TestFamily(
                        1,
                        "HT-AL-A",
                        "hardtail",
                        new BigDecimal("551"),
                        new BigDecimal("85"),
                        new BigDecimal("560"),
                        new BigDecimal("640"),
                        "report 7",
                        Instant.EPOCH,
                        1)));
    }

    @Test
    void aWallOfAButtLeavesAllAnswersButThoseOfMitreFamilyAndNominals() {
        Map<GateCheck, CheckFigures> was = figures(inputs(MORE));
        Map<GateCheck, CheckFigures> is = figures(inputs(MORE + " TOP_TUBE_MIDDLE_WALL 0.7"));
        assertThat(both(was, is).stream()
                        .filter(check -> !Objects.equals(
                                was.get(check).givenOn(), is.get(check).givenOn())))
                .containsExactly(GateCheck.MITRES, GateCheck.TEST_FAMILY, GateCheck.NOMINALS);
    }
}
