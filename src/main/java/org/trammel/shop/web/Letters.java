package org.trammel.shop.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Text in runs, each in a font that has its letters. */
final class Letters {

    /** Stands for a letter that no font of the file has. */
    private static final String UNKNOWN = "?";

    private static final double PER_EM = 1000;

    /** Letters of one font. */
    record Run(PDFont font, String words) {}

    private Letters() {}

    static List<Run> runs(String words, PDFont first, PDFont second) {
        List<Run> runs = new ArrayList<>();
        // a hyphen that does not break is drawn as any other
        words.replace('\u2011', '-')
                .codePoints()
                .forEach(letter -> add(runs, Character.toString(letter), first, second));
        return runs;
    }

    private static void add(List<Run> runs, String letter, PDFont first, PDFont second) {
        PDFont font = has(first, letter) || !has(second, letter) ? first : second;
        String written = has(font, letter) ? letter : UNKNOWN;
        Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
        if (last != null && last.font() == font) {
            runs.set(runs.size() - 1, new Run(font, last.words() + written));
        } else {
            runs.add(new Run(font, written));
        }
    }

    private static boolean has(PDFont font, String letter) {
        try {
            font.encode(letter);
            return true;
        } catch (IllegalArgumentException e) {
            // that is how the library says that a font lacks a letter
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** In parts of the size of the letters. */
    static double width(List<Run> runs) {
        double width = 0;
        for (Run run : runs) {
            try {
                width += run.font().getStringWidth(run.words()) / PER_EM;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return width;
    }
}
