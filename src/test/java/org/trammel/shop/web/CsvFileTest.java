package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvFileTest {

    /** The characters are those of OWASP's page on CSV injection, with the wide forms spreadsheets also read. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "\uFF1D1", "\uFF0B1", "|calc"})
    void aTextThatWouldRunInASpreadsheetBecomesText(String typed) {
        String cell = CsvFile.of("name").row(typed).text().substring("name\r\n".length());
        assertThat(cell.replaceFirst("^\"", "")).startsWith("'");
    }

    @Test
    void aNegativeFigureStaysAFigureAndWordsStayWords() {
        String text = CsvFile.of("name", "twist_deg", "note")
                .row("Ines, \"the\" welder", new BigDecimal("-0.30"), null)
                .text();
        assertThat(text).isEqualTo("name,twist_deg,note\r\n\"Ines, \"\"the\"\" welder\",-0.30,\r\n");
    }

    @Test
    void aRowHasAsManyCellsAsTheHeader() {
        assertThatThrownBy(() -> CsvFile.of("a", "b").row("x")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theFileIsSavedUnderItsNameAndSaysItsLetters() {
        var answer = CsvFile.of("name").row("Łukasz").answer("lots.csv");
        assertThat(answer.getHeaders().getFirst("Content-Disposition")).contains("attachment", "lots.csv");
        assertThat(String.valueOf(answer.getHeaders().getContentType())).isEqualTo("text/csv;charset=UTF-8");
    }
}
