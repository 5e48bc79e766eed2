package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;

/** Files as loggers write them. What they mean is written beside them by hand; the nights of the clock are those of the EU. */
class LoggerFileTest {

    static final LogChoices STOCKHOLM = LogChoices.in(ZoneId.of("Europe/Stockholm"));

    static Answer<ReadLog> answer(String text, LogChoices choices) {
        try {
            return LoggerFile.read(new StringReader(text), choices);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ReadLog read(String text, LogChoices choices) {
        Answer<ReadLog> answer = answer(text, choices);
        assertThat(answer).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<ReadLog>) answer).value();
    }

    static Answer.Gap refused(String text, LogChoices choices) {
        Answer<ReadLog> answer = answer(text, choices);
        assertThat(answer).isInstanceOf(Answer.NotDeterminable.class);
        return ((Answer.NotDeterminable<ReadLog>) answer).gaps().get(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-03-10T18:00:00+01:00|2026-03-10T17:00:00Z",
                "2026-03-10 18:00|2026-03-10T17:00:00Z",
                "2026-03-10T18:00:00Z|2026-03-10T18:00:00Z",
                "2026-03-10 18:00:00,25 UTC|2026-03-10T18:00:00.250Z",
                "2026-03-10 18:00:00 CET|2026-03-10T17:00:00Z",
                "2026-07-10 18:00:00 CEST|2026-07-10T16:00:00Z",
                "2026-07-10 18:00:00|2026-07-10T16:00:00Z",
                "2026/03/10 18:00:00 -0530|2026-03-10T23:30:00Z",
                "10.03.2026 18:00:01|2026-03-10T17:00:01Z",
                "31/3/2026 18:00|2026-03-31T16:00:00Z",
                "3/31/2026 6:00:00 PM|2026-03-31T16:00:00Z",
                "3/31/2026 12:30 AM|2026-03-30T22:30:00Z",
                "29.02.2028 00:00|2028-02-28T23:00:00Z",
                "31.12.2026 23:59:59|2026-12-31T22:59:59Z"
            })
    void aTimeIsReadInEveryFormOfTheTrade(String written, Instant meant) {
        assertThat(read("Time;TC-07\n" + written + ";177,3\n", STOCKHOLM).samples())
                .isEqualTo(Samples.of(List.of("TC-07"), new long[] {meant.toEpochMilli()}, new int[][] {{177_300}}));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "177,3|177300",
                "177.3|177300",
                "-0,5|-500",
                "\u22120.5|-500",
                "+5|5000",
                "1,7725E+02|177250",
                "177.12345|177123",
                "177.1235|177124",
                "177,3 °C|177300",
                "\"177,3\"|177300",
                " 177,3 |177300"
            })
    void aFigureIsReadToAThousandth(String written, int thousandths) {
        assertThat(read("min;TC-07;TC-08\n0;" + written + ";1\n", STOCKHOLM.startedAt(Instant.EPOCH))
                        .samples()
                        .reading_mDegC(0, 0))
                .isEqualTo(thousandths);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {"OPEN", "OL", "NaN", "---", "''", "1372", "9999", "-9999", "#N/A", "Err"})
    void aReadingThatTheThermocoupleDidNotGiveIsOpen(String written) {
        ReadLog log = read(
                "s;TC-07;TC-08\n0;" + written.replace("''", "") + ";20\n60;21;20\n",
                LogChoices.none().startedAt(Instant.EPOCH));
        assertThat(log.samples().has(0, 0)).isFalse();
        assertThat(log.samples().has(0, 1)).isTrue();
        assertThat(log.how().columns().get(1).open()).isEqualTo(1);
    }

    @Test
    void howAFileWasReadIsTold() {
        ReadLog log = read("""
                \uFEFFLogger;4711
                Started;10.03.2026 17:58:00

                Date;Time;TC-07;TC-08;Humidity;Comment
                dd.mm.yyyy;hh:mm:ss;°C;°F;%;
                10.03.2026;18:02:00;177,0;350,6;12;
                10.03.2026;18:00:00;22,5;71,6;40;door shut
                10.03.2026;18:01:00;;68;30;
                10.03.2026;18:01:00;;68;30;

                Date;Time;TC-07;TC-08;Humidity;Comment
                10.03.2026;18:03:00;177,0;350,6;12;
                """, STOCKHOLM);
        HowRead how = log.how();
        assertThat(how.separator()).isEqualTo(';');
        assertThat(how.decimalSign()).isEqualTo(DecimalSign.COMMA);
        assertThat(how.headerLine()).isEqualTo(4);
        assertThat(how.rows()).isEqualTo(4);
        assertThat(how.duplicates()).isEqualTo(1);
        assertThat(how.unordered()).isEqualTo(3);
        assertThat(how.times()).isEqualTo("Date and time in two columns, by the clock of Europe/Stockholm.");
        assertThat(how.notices()).containsExactly("Line 11 names the columns once more.");
        assertThat(how.columns().stream().map(HowRead.Column::content))
                .containsExactly(
                        HowRead.Content.TIME,
                        HowRead.Content.TIME,
                        HowRead.Content.DEG_C,
                        HowRead.Content.DEG_F,
                        HowRead.Content.LEFT_OUT,
                        HowRead.Content.LEFT_OUT);
        assertThat(log.samples().channels()).containsExactly("TC-07", "TC-08");
        assertThat(log.samples().first()).isEqualTo(Instant.parse("2026-03-10T17:00:00Z"));
        // 71.6 °F is 22 °C and 350.6 °F is 177 °C
        assertThat(log.samples().reading_mDegC(1, 0)).isEqualTo(22_000);
        assertThat(log.samples().reading_mDegC(1, 2)).isEqualTo(177_000);
        assertThat(log.samples().has(0, 1)).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|file|The file is empty.",
                "Time;TC-07|file|No line holds a time and a temperature.",
                "Time;TC-07~2026-03-10 18:00;x|file|No line holds a time and a temperature",
                "Time;TC-07~2026-03-10 18:00;1~2026-03-10 18:01;x|line 3|Line 3: \"x\" of TC-07 is no temperature.",
                "Time;TC-07~2026-03-10 18:00;1,5~2026-03-10 18:01;1.5|line 3|has another decimal sign",
                "Time;TC-07~2026-03-10 18:00;1.234,5~2026-03-10 18:01;1|line 2|is not the names of the columns",
                "Time;TC-07~2026-03-10 18:00;1~2026-03-10 18:01;1.234,5|line 3|a comma and a point, which can be read two",
                "Time;TC-07~2026-03-10 18:00;1~2026-02-30 18:01;1|line 3|The calendar has no day 2026-02-30 18:01",
                "Time;TC-07~2026-03-10 18:00;1~2026-03-10 25:01;1|line 3|\"2026-03-10 25:01\" cannot be read as a time.",
                "Time;TC-07~2026-03-10 18:00;1~10.03.26 18:01;1|line 3|as the year does not have four digits.",
                "Time;TC-07~2026-03-10 18:00;1~2026-03-10 18:01 IST;1|line 3|\"IST\" behind the time is no zone",
                "Time;TC-07~2026-03-10 18:00;1~2026-03-10T18:01Z;1|line 3|The time names a zone, and those above name none.",
                "Time;TC-07~2026-03-10 18:00;1~2026-03-10 18:00;2|line 3|It has the time of line 2 and other temperatures.",
                "Time;TC-07~2026-03-10 18:00;1~2026-03-10 18:01;1;5|line 3|The line has 3 fields and the line of names 2.",
                "Time,TC-07~2026-03-10 18:00,22,5|line 2|cannot be the decimal sign as well",
                "Time;TC-07;TC-08~2026-03-10 18:00;1;2~2026-03-10 18:01;1|line 3|has 2 fields and the other rows have 3.",
                "Time;TC-07;TC-07~2026-03-10 18:00;1;2|line 1|Two columns are called TC-07.",
                "Time;TC-07~03/04/2026 18:00;1|line 2|can be told either way round",
                "min;TC-07~0;22|file|The file counts from its start and has no date: say when the record began.",
                "a;b~1;22|line 2|no name above them says which counts",
                "Time;Humidity~2026-03-10 18:00;22|line 1|No column holds temperatures.",
                "2026-03-10 18:00,22,5|line 1|they could be decimal commas",
                "one field only|file|Most lines have one field only",
                "Time;TC-07~2026-03-29 02:30;1|line 2|2026-03-29 02:30 does not exist in Europe/Stockholm"
            })
    void whatCannotBeReadIsRefusedWithItsLineAndReason(String text, String where, String why) {
        Answer.Gap gap = refused(text.replace('~', '\n').replace("''", "") + "\n", STOCKHOLM);
        assertThat(gap.input()).isEqualTo(where);
        assertThat(gap.words()).contains(why);
    }

    @Test
    void withoutAZoneTimesAreNotGuessed() {
        assertThat(refused("Time;TC-07\n2026-03-10 18:00;1\n", LogChoices.none())
                        .words())
                .isEqualTo("The times of the file name no zone: say whose clock they are.");
        assertThat(read("Time (UTC+2);TC-07\n2026-03-10 18:00;1\n", LogChoices.none())
                        .samples()
                        .first())
                .isEqualTo(Instant.parse("2026-03-10T16:00:00Z"));
        assertThat(read("Unix time;TC-07\n1773162000;1\n", LogChoices.none())
                        .samples()
                        .first())
                .isEqualTo(Instant.parse("2026-03-10T17:00:00Z"));
    }

    @Test
    void dayAndMonthAreToldByAnyRowOrByWhoReads() {
        String rows = "Time;TC-07\n03/04/2026 18:00;1\n%s 18:00;1\n";
        assertThat(read(rows.formatted("13/04/2026"), STOCKHOLM).samples().first())
                .isEqualTo(Instant.parse("2026-04-03T16:00:00Z"));
        assertThat(read(rows.formatted("03/13/2026"), STOCKHOLM).samples().rows())
                .isEqualTo(2);
        assertThat(read(rows.formatted("05/04/2026"), STOCKHOLM.dayFirst(false))
                        .samples()
                        .first())
                .isEqualTo(Instant.parse("2026-03-04T17:00:00Z"));
        assertThat(refused(rows.formatted("03/13/2026").replace("03/04", "14/04"), STOCKHOLM)
                        .words())
                .contains("can be told either way round");
    }

    /** The clock went from 03:00 back to 02:00 on 25 October 2026, at 01:00 UTC. */
    @Test
    void theHourThatExistsTwiceIsToldByTheRowsAroundIt() {
        String through = "Time;TC-07\n2026-10-25 01:45;1\n2026-10-25 02:15;2\n2026-10-25 02:45;3\n2026-10-25 02:15;4\n"
                + "2026-10-25 02:45;5\n2026-10-25 03:15;6\n";
        Samples samples = read(through, STOCKHOLM).samples();
        assertThat(samples.first()).isEqualTo(Instant.parse("2026-10-24T23:45:00Z"));
        for (int row = 1; row < 6; row++) {
            assertThat(samples.time_ms(row) - samples.time_ms(row - 1)).isEqualTo(30 * 60_000);
            assertThat(samples.reading_mDegC(0, row)).isEqualTo(1000 * (row + 1));
        }
        String into = "Time;TC-07\n2026-10-25 01:45;1\n2026-10-25 02:15;2\n";
        assertThat(read(into, STOCKHOLM).samples().last()).isEqualTo(Instant.parse("2026-10-25T00:15:00Z"));
        String outOf = "Time;TC-07\n2026-10-25 02:45;1\n2026-10-25 03:15;2\n";
        assertThat(read(outOf, STOCKHOLM).samples().first()).isEqualTo(Instant.parse("2026-10-25T01:45:00Z"));
        assertThat(refused("Time;TC-07\n2026-10-25 02:15;1\n2026-10-25 02:45;2\n", STOCKHOLM)
                        .words())
                .contains("2026-10-25 02:15 exists twice in Europe/Stockholm");
        String unset = into + "2026-10-25 02:45;3\n2026-10-25 03:15;4\n";
        assertThat(refused(unset, STOCKHOLM).words()).contains("is read with its own offset, such as +01:00");
        assertThat(read(unset, LogChoices.in(ZoneId.of("+01:00"))).samples().rows())
                .isEqualTo(4);
        assertThat(refused(through + "2026-10-25 02:30;7\n", STOCKHOLM).words())
                .contains("which of the two hours they mean cannot be told");
    }

    @Test
    void anotherRunsRecordIsFound() {
        String text = "Time;TC-07\n2026-03-10 18:00;1\n2026-03-10 18:01;2\n";
        LogChoices other =
                STOCKHOLM.within(Instant.parse("2026-03-13T17:00:00Z"), Instant.parse("2026-03-14T17:00:00Z"));
        assertThat(refused(text, other).words())
                .isEqualTo("None of its 2 rows lies in the time of the run: it is the record of another run.");
        LogChoices part =
                STOCKHOLM.within(Instant.parse("2026-03-10T17:00:30Z"), Instant.parse("2026-03-14T17:00:00Z"));
        assertThat(read(text, part).how().outside()).isEqualTo(1);
    }

    @Test
    void onlyTheThermocouplesAskedForAreRead() {
        String text = "Time;TC-05;TC-07\n2026-03-10 18:00;1;2\n";
        assertThat(read(text, STOCKHOLM.only(List.of("TC-07"))).samples().channels())
                .containsExactly("TC-07");
        assertThat(refused(text, STOCKHOLM.only(List.of("TC-11"))).words())
                .isEqualTo("Line 1: No column is called TC-11: the file has Time, TC-05, TC-07.");
    }

    @Test
    void aLastLineThatMayBeCutIsLeftOut() {
        String rows = "Time;TC-07\n2026-03-10 18:00;170,5\n2026-03-10 18:01;17";
        for (String end : List.of("", "1", "1,", "2,25", ";")) {
            ReadLog log = read(rows + end, STOCKHOLM);
            assertThat(log.samples().rows()).as(end).isEqualTo(1);
            assertThat(log.how().notices())
                    .containsExactly("Line 3 is the last and has no end: it may be cut and was left out.");
        }
        assertThat(read(rows + "1,5", STOCKHOLM).samples().rows()).isEqualTo(2);
        assertThat(read(rows + "1\n", STOCKHOLM).samples().rows()).isEqualTo(2);
    }

    @Test
    void theCharactersOfAFileAreFoundByItsFirstBytes() {
        String text = "Time;TC-07 °C\r\n2026-03-10 18:00;1\r\n";
        assertThat(LogEncoding.of(text.getBytes(StandardCharsets.UTF_8))).isEqualTo(StandardCharsets.UTF_8);
        assertThat(LogEncoding.of(text.getBytes(StandardCharsets.ISO_8859_1)).name())
                .isEqualTo("windows-1252");
        assertThat(LogEncoding.of(text.getBytes(StandardCharsets.UTF_16LE))).isEqualTo(StandardCharsets.UTF_16LE);
        assertThat(LogEncoding.of(text.getBytes(StandardCharsets.UTF_16BE))).isEqualTo(StandardCharsets.UTF_16BE);
        assertThat(LogEncoding.of(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE)))
                .isEqualTo(StandardCharsets.UTF_16LE);
        assertThat(LogEncoding.of(new byte[0])).isEqualTo(StandardCharsets.UTF_8);
    }
}
