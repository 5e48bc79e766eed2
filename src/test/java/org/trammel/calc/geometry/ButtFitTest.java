package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.geometry.CutListTest.value;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

class ButtFitTest {

    /** By hand: 30 over, butts of 110 and 90, of which the cuts take 25 and 15. */
    @ParameterizedTest
    @CsvSource({
        "110, 90, 30, 20, 10, 65, 65",
        "150, 90, 30, 30, 0, 95, 75",
        "90, 150, 30, 0, 30, 65, 105",
        "100, 90, 0, 0, 0, 75, 75",
    })
    void bothWeldedEndsKeepAsMuchAsCanBe(
            double one, double two, double over, double offOne, double offTwo, double leftOne, double leftTwo) {
        assertThat(ButtFit.of(tube(one, two), over, 25.0, 15.0))
                .isEqualTo(new ButtFit(offOne, offTwo, leftOne, leftTwo));
    }

    @Test
    void anEndWithoutAWeldLosesAll() {
        assertThat(ButtFit.of(tube(100, 90), 30, 25.0, null)).isEqualTo(new ButtFit(0, 30, 75, 60));
        assertThat(ButtFit.of(tube(100, 90), 30, null, 15.0)).isEqualTo(new ButtFit(30, 0, 70, 75));
    }

    private static WallProfile.Butted tube(double one, double two) {
        return new WallProfile.Butted(700, new WallProfile.Butt(1.6, one), 1.0, new WallProfile.Butt(1.4, two));
    }

    private static CutList cut(double makersLength, double one, double two) {
        DemoFrames.Row frame = CutListTest.frame("O-101");
        TubeSet plain = CutListTest.tubes(frame, null);
        WallProfile butted = new WallProfile.Butted(
                makersLength, new WallProfile.Butt(1.6, one), 1.0, new WallProfile.Butt(1.4, two));
        TubeSet tubes =
                new TubeSet(54, 42, plain.downTube(), new TubeStock(34.9, butted), plain.seatTube(), Map.of(), null);
        return value(CutList.of(frame.axes(), tubes, SawRules.usual(List.of(34.9, 42.0, 54.0))));
    }

    /** The blank is 608,8; the cuts are 27,43 − 20,60 + 3 and 19,94 − 0 + 3 deep. */
    @Test
    void aButtLeftShortAtTheWeldIsTold() {
        CutPiece enough = cut(620, 100, 100).pieces().get(1);
        ButtFit fit = Objects.requireNonNull(enough.butts());
        assertThat(fit.cutOffOne_mm() + fit.cutOffTwo_mm()).isCloseTo(620 - 608.784, within(0.01));
        assertThat(fit.leftOne_mm()).isCloseTo(100 - 9.825 - fit.cutOffOne_mm(), within(0.01));
        assertThat(fit.leftTwo_mm()).isCloseTo(100 - 22.939 - fit.cutOffTwo_mm(), within(0.01));
        assertThat(enough.cautions()).extracting(Caution::kind).doesNotContain(Caution.Kind.SHORT_BUTT);
        assertThat(((EndCut.Mitred) enough.endOne())
                        .mitre()
                        .curve()
                        .joint()
                        .tube()
                        .wall_mm())
                .isEqualTo(1.6);
        assertThat(((EndCut.Mitred) enough.endTwo())
                        .mitre()
                        .curve()
                        .joint()
                        .tube()
                        .wall_mm())
                .isEqualTo(1.4);

        CutPiece shortened = cut(700, 100, 60).pieces().get(1);
        assertThat(shortened.cautions())
                .filteredOn(caution -> caution.kind() == Caution.Kind.SHORT_BUTT)
                .hasSize(2)
                .last()
                .satisfies(caution -> assertThat(caution.words())
                        .startsWith("At the second end 18 mm of the top tube's butt is left behind the weld, less than"
                                + " 60 mm:"));
    }

    @Test
    void aTubeBoughtTooShortIsNotCut() {
        CutList list = cut(600, 100, 100);
        assertThat(list.pieces()).hasSize(2);
        assertThat(list.notCut())
                .containsExactly(new Answer.Gap(
                        "topTube.makersLength",
                        "The top tube needs a blank of 608.8 mm, longer than the tube as bought."));
    }

    @Test
    void buttsLongerThanTheTubeAreNamed() {
        WallProfile butted =
                new WallProfile.Butted(150, new WallProfile.Butt(1.6, 100), 1.0, new WallProfile.Butt(1.4, 90));
        Objections objections = new Objections();
        new TubeStock(34.9, butted).check(objections, FrameTube.TOP_TUBE);
        Answer<String> answer = objections.orElse(() -> Answer.of(""));
        assertThat(answer)
                .isEqualTo(Answer.none(
                        "topTube.makersLength",
                        "The top tube's butts of 100 mm and 90 mm are longer than the tube of 150 mm."));
    }
}
