package org.trammel.calc.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.trammel.calc.marks.ScribeMark.Cut;
import org.trammel.calc.marks.ScribeMark.NextFree;

class ScribeMarkTest {

    /**
     * Counted by hand: of 4·4·4·4 rows 108 have one empty step and 81 none. Of three kinds in three places 1 row is all
     * up, 1 all down, 1 all through: 24 · 4 = 96 left; in four places likewise 81 − 3 = 78. 96 + 78 = 174.
     */
    @Test
    void thereAre174Marks() {
        assertThat(ScribeMark.all()).hasSize(174).doesNotHaveDuplicates();
    }

    @Test
    void everyMarkHasThreeCutsSomeAboveSomeBelowNotAllAlike() {
        for (ScribeMark mark : ScribeMark.all()) {
            List<Cut> made = mark.cuts().stream().filter(c -> c != Cut.NONE).toList();
            assertThat(made).hasSizeGreaterThanOrEqualTo(3);
            assertThat(made.stream().distinct()).hasSizeGreaterThan(1);
            assertThat(made).anyMatch(c -> c != Cut.DOWN).anyMatch(c -> c != Cut.UP);
        }
        assertThatThrownBy(() -> new ScribeMark(List.of(Cut.THROUGH, Cut.THROUGH, Cut.THROUGH, Cut.NONE)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ScribeMark(List.of(Cut.UP, Cut.DOWN, Cut.NONE, Cut.NONE)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void fortyEightFramesCanBeOpenAtOnce() {
        List<ScribeMark> inUse = new ArrayList<>();
        for (int frame = 0; frame < 48; frame++) {
            inUse.add(((NextFree.Free) ScribeMark.nextFree(inUse)).mark());
        }
        assertDifferInTwoCuts(inUse);
        assertThat(ScribeMark.nextFree(inUse)).isInstanceOf(NextFree.NoneLeft.class);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8})
    void framesComingAndGoingNeverShareALikeMark(long seed) {
        Random random = new Random(seed);
        List<ScribeMark> inUse = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            if (inUse.size() == 40 || !inUse.isEmpty() && random.nextInt(3) == 0) {
                inUse.remove(random.nextInt(inUse.size()));
            } else {
                inUse.add(((NextFree.Free) ScribeMark.nextFree(inUse)).mark());
            }
        }
        assertDifferInTwoCuts(inUse);
    }

    @Test
    void aMarkIsStoredAsFourLetters() {
        ScribeMark mark = new ScribeMark(List.of(Cut.UP, Cut.DOWN, Cut.NONE, Cut.THROUGH));
        assertThat(mark.code()).isEqualTo("UD-T");
        assertThat(mark.words()).isEqualTo("up, down, none, through");
        assertThat(ScribeMark.all())
                .allSatisfy(m -> assertThat(ScribeMark.ofCode(m.code())).isEqualTo(m));
        assertThatThrownBy(() -> ScribeMark.ofCode("UUUU")).isInstanceOf(IllegalArgumentException.class);
    }

    private static void assertDifferInTwoCuts(List<ScribeMark> marks) {
        for (int i = 0; i < marks.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(marks.get(i).difference(marks.get(j))).isGreaterThanOrEqualTo(2);
            }
        }
    }
}
