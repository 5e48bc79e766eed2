package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.statistics.PushProposal.Push;

class PushProposalTest {

    private static final double[] SETS = {0.5, 0.8, 1.0, 1.4, 1.9, 2.3};
    private static final double[] PUSHES = {5.4, 5.9, 6.1, 6.6, 7.2, 7.5};

    private static List<Push> history() {
        return new ArrayList<>(IntStream.range(0, 6)
                .mapToObj(i -> new Push(PUSHES[i], SETS[i]))
                .toList());
    }

    /** Worked by hand with a table of t (4 degrees of freedom, 2.776): 4.92 + 1.165 set, s 0.086; 1.5 mm: 6.66 ± 0.26. */
    @Test
    void theWorkedExampleComesOut() {
        PushProposal proposal = Published.value(PushProposal.of(history(), 1.5, 2.5));
        assertThat(proposal.line().constant().estimate()).isCloseTo(4.92, within(0.005));
        assertThat(proposal.line().terms().get(0).coefficient().estimate()).isCloseTo(1.165, within(5e-4));
        assertThat(proposal.line().residualDeviation()).isCloseTo(0.086, within(5e-4));
        assertThat(proposal.push_mm()).isCloseTo(6.66, within(0.005));
        assertThat(proposal.next_mm().high() - proposal.push_mm()).isCloseTo(0.26, within(0.005));
        assertThat(proposal.push_mm() - proposal.next_mm().low()).isCloseTo(0.26, within(0.005));
        assertThat(proposal.firstPush_mm()).isCloseTo(0.85 * 6.66, within(0.01));
        assertThat(proposal.firstSet_mm()).isCloseTo((0.85 * 6.66 - 4.92) / 1.165, within(0.01));
        assertThat(proposal.firstSet_mm()).isLessThan(proposal.set_mm());
    }

    /** As much as is allowed is allowed; a first push that only bends the tube and springs back leaves nothing. */
    @Test
    void boundsBelongToWhatIsAllowed() {
        PushProposal least = Published.value(PushProposal.of(history(), 0.5, 0.5));
        assertThat(least.firstPush_mm()).isLessThan(least.line().constant().estimate());
        assertThat(least.firstSet_mm()).isZero();
    }

    @Test
    void aPushThatMayBeNoneAtAllIsNotProposed() {
        List<Push> loose = List.of(
                new Push(0.3, 0.02), new Push(2.3, 0.5), new Push(5.3, 1), new Push(7.2, 1.5), new Push(10.2, 2));
        assertThat(Published.words(PushProposal.of(loose, 0.02, 2.5)))
                .singleElement()
                .asString()
                .startsWith("The pushes of the history scatter too far: for 0.02 mm");
        assertThat(Published.value(PushProposal.of(loose, 1, 2.5)).push_mm()).isCloseTo(5, within(0.3));
    }

    /** The line follows: a softer tube's first push joins the history and pulls the next proposal down. */
    @Test
    void eachPushIsLearntFrom() {
        PushProposal before = Published.value(PushProposal.of(history(), 0.9, 2.5));
        List<Push> more = history();
        more.add(new Push(5.66, 1.0));
        PushProposal after = Published.value(PushProposal.of(more, 0.9, 2.5));
        assertThat(after.push_mm()).isLessThan(before.push_mm());
    }

    @ParameterizedTest
    @CsvSource({"0.4", "2.4"})
    void noPushIsProposedBeyondTheHistory(double set_mm) {
        assertThat(Published.words(PushProposal.of(history(), set_mm, 2.5)))
                .singleElement()
                .asString()
                .startsWith("A movement of " + set_mm + " lies outside what was done so far, 0.5 to 2.3");
    }

    @Test
    void whatCannotBeProposedIsASentence() {
        assertThat(Published.words(PushProposal.of(history(), 2.6, 2.5)))
                .containsExactly("A movement of 2.6 mm is more than the 2.5 mm that the shop allows.");
        assertThat(Published.words(PushProposal.of(history(), 0, 2.5)))
                .containsExactly("The wanted movement in mm, 0, is not above 0.");
        assertThat(Published.words(PushProposal.of(history(), Double.NaN, 2.5))).hasSize(1);
        assertThat(Published.words(PushProposal.of(history().subList(0, 2), 0.6, 2.5)))
                .singleElement()
                .asString()
                .startsWith("There are 2 occasions");
        assertThat(Published.words(PushProposal.of(List.of(), 0.6, 2.5))).hasSize(1);
        assertThat(Published.words(PushProposal.of(List.of(new Push(-1, 0.5), new Push(2, -1)), 0.6, 2.5)))
                .containsExactly("The push number 1 in mm, -1, is not above 0.".replace('-', '\u2212'));
        List<Push> falling = List.of(new Push(7, 0.5), new Push(6.1, 1.0), new Push(5, 1.5), new Push(4.2, 2.0));
        assertThat(Published.words(PushProposal.of(falling, 1, 2.5)))
                .singleElement()
                .asString()
                .startsWith("The history does not show that a longer push moves more");
        List<Push> same = List.of(new Push(5, 1), new Push(6, 1), new Push(7, 1));
        assertThat(Published.words(PushProposal.of(same, 1, 2.5)))
                .containsExactly("The movement was the same every time, 1: nothing can be told of what it does.");
    }
}
