package org.trammel.shop.designs;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where words stand on a printed sheet, in millimetres from its lower left corner. */
final class PrintedWords {

    private static final double MM_PER_UNIT = 25.4 / 72;

    private PrintedWords() {}

    /** The first letter of each place where these words stand. */
    static List<double[]> places(byte[] file, int page, String words) {
        List<TextPosition> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    letters.add(letter);
                }
            };
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            stripper.writeText(
                    document, new OutputStreamWriter(java.io.OutputStream.nullOutputStream(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        StringBuilder all = new StringBuilder();
        letters.forEach(letter -> all.append(letter.getUnicode()));
        List<double[]> places = new ArrayList<>();
        for (int at = all.indexOf(words); at >= 0; at = all.indexOf(words, at + 1)) {
            places.add(new double[] {
                letters.get(at).getTextMatrix().getTranslateX() * MM_PER_UNIT,
                letters.get(at).getTextMatrix().getTranslateY() * MM_PER_UNIT
            });
        }
        return places;
    }
}
