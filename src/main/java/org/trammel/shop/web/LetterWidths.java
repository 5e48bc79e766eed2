package org.trammel.shop.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How wide the letters of a font are, in parts of their size; read once. */
final class LetterWidths {

    private static final LetterWidths PLAIN = new LetterWidths(PdfFile.REGULAR);
    private static final LetterWidths BOLD = new LetterWidths(PdfFile.BOLD);
    private static final LetterWidths MORE = new LetterWidths(PdfFile.MORE);

    private final TrueTypeFont font;
    private final CmapLookup letters;
    private final double perEm;
    private final Map<Integer, Double> known = new ConcurrentHashMap<>();

    private LetterWidths(String resource) {
        try (InputStream in = Objects.requireNonNull(LetterWidths.class.getResourceAsStream(resource), resource)) {
            this.font = new TTFParser().parse(new RandomAccessReadBuffer(in));
            this.letters = font.getUnicodeCmapLookup();
            this.perEm = font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Of a text at size 1. */
    static double of(String words, boolean bold) {
        LetterWidths first = bold ? BOLD : PLAIN;
        return words.codePoints()
                .map(letter -> letter == '\u2011' ? '-' : letter)
                .mapToDouble(letter -> (first.has(letter) || !MORE.has(letter) ? first : MORE).width(letter))
                .sum();
    }

    private boolean has(int letter) {
        return letters.getGlyphId(letter) != 0;
    }

    private double width(int letter) {
        return known.computeIfAbsent(letter, this::read);
    }

    private synchronized double read(int letter) {
        try {
            return font.getAdvanceWidth(letters.getGlyphId(letter)) / perEm;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
