package org.trammel.calc.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PunchMarkTest {

    /** Three out of eight: 8·7·6 / (3·2·1) = 56. */
    @Test
    void thereAre56Punches() {
        assertThat(PunchMark.all()).hasSize(56).doesNotHaveDuplicates();
    }

    @Test
    void eachWorkerTakesAnotherUntilAllAreGivenOut() {
        List<PunchMark> inUse = new ArrayList<>();
        while (PunchMark.nextFree(inUse) instanceof PunchMark.NextFree.Free free) {
            inUse.add(free.mark());
        }
        assertThat(inUse).hasSize(56).doesNotHaveDuplicates();
        assertThat(PunchMark.nextFree(inUse)).isInstanceOf(PunchMark.NextFree.NoneLeft.class);
        inUse.remove(30);
        assertThat(PunchMark.nextFree(inUse)).isInstanceOf(PunchMark.NextFree.Free.class);
    }

    @Test
    void aPunchIsStoredAsThreeDigits() {
        assertThat(PunchMark.ofCode("036")).isEqualTo(new PunchMark(List.of(0, 3, 6)));
        assertThat(PunchMark.all())
                .allSatisfy(mark -> assertThat(PunchMark.ofCode(mark.code())).isEqualTo(mark));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "00", "0368", "330", "038", "abc"})
    void otherCodesAreNoPunch(String code) {
        assertThatThrownBy(() -> PunchMark.ofCode(code)).isInstanceOf(IllegalArgumentException.class);
    }
}
