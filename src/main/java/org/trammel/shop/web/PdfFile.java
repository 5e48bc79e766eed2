package org.trammel.shop.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Sheets of paper as a file to print, drawn at full size in millimetres. The letters are in the file; a viewer that heeds
 * what the file says prints it without scaling.
 */
public final class PdfFile implements AutoCloseable {

    static final String REGULAR = "/fonts/b612-latin-400-normal.ttf";
    static final String BOLD = "/fonts/b612-latin-700-normal.ttf";
    /** Letters that the others lack. */
    static final String MORE = "/fonts/atkinson-hyperlegible-next-latin-ext-400-normal.ttf";

    private final PDDocument document = new PDDocument();
    private final PDFont regular;
    private final PDFont bold;
    private final PDFont more;

    /**
     * An empty file.
     *
     * @param title what it is, with the number of the frame
     * @param author the shop
     */
    public PdfFile(String title, String author, Locale language) {
        this.regular = font(REGULAR);
        this.bold = font(BOLD);
        this.more = font(MORE);
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        about.setAuthor(author);
        document.setDocumentInformation(about);
        document.getDocumentCatalog().setLanguage(language.toLanguageTag());
        PDViewerPreferences viewer = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        viewer.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        viewer.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(viewer);
    }

    private PDFont font(String resource) {
        try (InputStream in = Objects.requireNonNull(PdfFile.class.getResourceAsStream(resource), resource)) {
            TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(in));
            return PDType0Font.load(document, letters, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Adds a sheet. It is drawn on until the next one is added. */
    public PdfSheet sheet(double width_mm, double height_mm) {
        return new PdfSheet(document, List.of(regular, bold, more), width_mm, height_mm);
    }

    /** The file; nothing can be drawn afterwards. */
    public byte[] content() {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream(60_000);
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
