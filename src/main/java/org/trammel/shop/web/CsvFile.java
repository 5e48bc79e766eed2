package org.trammel.shop.web;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/**
 * A table as a CSV file (RFC 4180): comma, CRLF, UTF-8, decimal point, header row. A text that a spreadsheet would take
 * for a formula gets an apostrophe in front; figures are written as they are, so that negative ones stay figures.
 */
public final class CsvFile {

    private final StringWriter text = new StringWriter();
    private final CsvWriter csv = CsvWriter.builder().build(text);
    private final int columns;

    private CsvFile(List<String> header) {
        columns = header.size();
        row(header.toArray());
    }

    /** Begins a file with the names of its columns, units in them. */
    public static CsvFile of(String... header) {
        return new CsvFile(List.of(header));
    }

    /** Adds a row: figures, dates, text; null is an empty cell. */
    public CsvFile row(@Nullable Object... cells) {
        if (cells.length != columns) {
            throw new IllegalArgumentException("A row has " + columns + " cells, not " + cells.length);
        }
        List<String> written = new ArrayList<>();
        for (Object cell : cells) {
            written.add(written(cell));
        }
        csv.writeRecord(written);
        return this;
    }

    /** The file as an answer that a browser saves under this name. */
    public ResponseEntity<byte[]> answer(String name) {
        ContentDisposition disposition = ContentDisposition.attachment()
                .filename(name, StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition.toString())
                .body(text().getBytes(StandardCharsets.UTF_8));
    }

    /** The file's text. */
    public String text() {
        try {
            csv.flush();
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return text.toString();
    }

    private static String written(@Nullable Object cell) {
        if (cell == null) {
            return "";
        }
        if (cell instanceof BigDecimal exact) {
            return exact.toPlainString();
        }
        if (cell instanceof Number) {
            return cell.toString();
        }
        String text = cell.toString();
        return startsFormula(text) ? "'" + text : text;
    }

    /** Spreadsheets skip blanks before a formula, and read the wide forms of its first character too. */
    private static boolean startsFormula(String text) {
        String bare = text.stripLeading();
        boolean control = !text.isEmpty() && "\t\r\n".indexOf(text.charAt(0)) >= 0;
        return control || !bare.isEmpty() && "=+-@\uFF1D\uFF0B\uFF0D\uFF20|%".indexOf(bare.charAt(0)) >= 0;
    }
}
