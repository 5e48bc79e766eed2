package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.trammel.calc.marks.ScribeMark;
import org.trammel.shop.TestClock;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;

class FrameMarksTest {

    private final List<ScribeMarkRow> rows = new ArrayList<>();
    private final Set<String> open = new HashSet<>();
    private final ActLog log = mock(ActLog.class);
    private final ScribeMarkRepository marks = mock(ScribeMarkRepository.class);
    private final TravellerRepository travellers = mock(TravellerRepository.class);
    private final FrameMarks given = new FrameMarks(marks, travellers, log);

    @BeforeEach
    void aTransactionIsOpen() {
        TransactionSynchronizationManager.initSynchronization();
        when(marks.findAll()).thenReturn(rows);
        when(marks.save(any())).thenAnswer(save -> {
            rows.add(save.getArgument(0));
            return save.getArgument(0);
        });
        when(travellers.openSerials()).thenReturn(open);
    }

    @AfterEach
    void itEnds() {
        TransactionSynchronizationManager.clearSynchronization();
    }

    @Test
    void everyTwoOpenFramesDifferInTwoCutsOrMore() {
        for (int frame = 101; frame < 141; frame++) {
            release("AV26" + frame + "X");
        }
        List<ScribeMark> all =
                rows.stream().map(row -> ScribeMark.ofCode(row.code())).toList();
        assertThat(all).hasSize(40);
        for (ScribeMark one : all) {
            assertThat(all.stream().filter(other -> other != one))
                    .allMatch(other -> one.difference(other) >= ScribeMark.LEAST_DIFFERENCE);
        }
    }

    @Test
    void aFrameKeepsItsMarkWhenANewerRevisionIsReleased() {
        release("AV26101H");
        String before = given.codeOf("AV26101H");
        release("AV26101H");
        assertThat(given.codeOf("AV26101H")).isEqualTo(before);
        assertThat(given.codeOf("AV26101H-FT")).isEqualTo(before);
        verify(log, times(1)).event(any(), eq("mark-given"), any());
    }

    @Test
    void theMarkOfAFrameThatLeftPassesOn() {
        release("AV26101H");
        String mark = given.codeOf("AV26101H");
        open.remove("AV26101H");
        release("AV26102F");
        assertThat(given.codeOf("AV26102F")).isEqualTo(mark);
        assertThat(given.codeOf("AV26101H")).isNull();
    }

    @Test
    void whenNoMarkIsFreeTheNumberTellsTheFrameAlone() {
        for (int frame = 100; frame < 400; frame++) {
            release("AV26" + frame + "X");
        }
        assertThat(rows).hasSizeLessThan(175);
        assertThat(given.codeOf("AV26399X")).isNull();
    }

    private void release(String serial) {
        open.add(serial);
        given.give(new Act(UUID.randomUUID(), 1, null, TestClock.START, null), serial);
        given.read();
    }
}
