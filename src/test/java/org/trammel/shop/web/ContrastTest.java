package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contrast of the tokens on both sheets. Formula and thresholds: WCAG 2.2, definition of contrast ratio and relative
 * luminance, success criteria 1.4.3 (text 4.5), 1.4.6 (7), 1.4.11 (graphics 3).
 */
class ContrastTest {

    private static final String TOKENS = read();
    private static final Map<String, String> PAPER = tokens(":root{");
    private static final Map<String, String> NIGHT = night();

    @ParameterizedTest
    @CsvSource({
        "ink, sheet, 7",
        "ink-2, sheet, 4.5",
        "ink-3, sheet, 4.5",
        "ink-3, sheet-2, 4.5",
        "ink-2, sheet-2, 4.5",
        "ink, bench, 4.5",
        "ink, blue-wash, 7",
        "ink-2, blue-wash, 4.5",
        "ink-3, blue-wash, 4.5",
        "blue, sheet, 4.5",
        "blue, blue-wash, 4.5",
        "on-plate, plate, 7",
        "on-plate-2, plate, 4.5",
        "green, sheet, 4.5",
        "green, green-wash, 4.5",
        "green, blue-wash, 4.5",
        "amber-ink, sheet, 4.5",
        "amber-ink, amber-wash, 4.5",
        "amber-ink, blue-wash, 4.5",
        "red, sheet, 4.5",
        "red, red-wash, 4.5",
        "red, blue-wash, 4.5",
        "ink, red-wash, 4.5",
        "rule-2, sheet, 3",
        "plate-edge, sheet, 3",
        "plate-edge, blue-wash, 3"
    })
    void wordsAndMarksStandOutOnBothSheets(String front, String ground, double least) {
        assertThat(ratio(PAPER.get(front), PAPER.get(ground))).isGreaterThanOrEqualTo(least);
        assertThat(ratio(NIGHT.get(front), NIGHT.get(ground))).isGreaterThanOrEqualTo(least);
    }

    /** Black on white is 21 by definition; #767676 on white is the usual example just above 4.5. */
    @Test
    void theRatioIsThatOfTheStandard() {
        assertThat(ratio("#000000", "#FFFFFF")).isEqualTo(21);
        assertThat(ratio("#767676", "#FFFFFF")).isBetween(4.5, 4.6);
    }

    private static double ratio(String a, String b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(String colour) {
        List<Double> parts = new ArrayList<>();
        for (int i = 1; i < 7; i += 2) {
            double c = Integer.parseInt(colour.substring(i, i + 2), 16) / 255.0;
            parts.add(c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return 0.2126 * parts.get(0) + 0.7152 * parts.get(1) + 0.0722 * parts.get(2);
    }

    private static Map<String, String> night() {
        Map<String, String> all = new HashMap<>(PAPER);
        all.putAll(tokens(":root[data-theme=night]{"));
        return all;
    }

    private static Map<String, String> tokens(String block) {
        int from = TOKENS.indexOf(block);
        Matcher token = Pattern.compile("--([\\w-]+):(#[0-9A-Fa-f]{6})")
                .matcher(TOKENS.substring(from, TOKENS.indexOf("\n}", from)));
        Map<String, String> found = new HashMap<>();
        while (token.find()) {
            found.put(token.group(1), token.group(2));
        }
        return found;
    }

    private static String read() {
        try {
            return Files.readString(Path.of("src/main/resources/static/css/tokens.css"));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
