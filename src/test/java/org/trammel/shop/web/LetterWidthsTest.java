package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Widths of words against those that the platform's own library finds in the same font. */
class LetterWidthsTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1201,1",
                "65,5°",
                "Ø 22,0, splay 7,8°",
                "Design gate signed by",
                "M. Ekdalen, 19 Jan 2026",
                "1 : 5"
            })
    void wordsAreAsWideAsTheyAreDrawn(String words) throws Exception {
        assertThat(LetterWidths.of(words, false))
                .isCloseTo(width("/fonts/b612-latin-400-normal.ttf", words), within(0.01));
        assertThat(LetterWidths.of(words, true))
                .isCloseTo(width("/fonts/b612-latin-700-normal.ttf", words), within(0.01));
    }

    private static double width(String resource, String words) throws Exception {
        try (InputStream in = Objects.requireNonNull(LetterWidthsTest.class.getResourceAsStream(resource))) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(1000f);
            return font.getStringBounds(words, new FontRenderContext(null, true, true))
                            .getWidth()
                    / 1000;
        }
    }
}
