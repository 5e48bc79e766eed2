package org.trammel.calc.drawing;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.drawing.Mark.Anchor;
import org.trammel.calc.drawing.Mark.Hand;
import org.trammel.calc.geometry.Paper;

/** The main dimensions and the cut list as tables. */
public final class NumbersSheet {

    private static final double INSET_MM = 4;
    private static final double ROW_MM = 6.4;
    private static final double SECOND_LINE_MM = 3.8;
    private static final double LETTERS_MM = 3.3;
    private static final double SMALL_MM = 2.8;
    private static final int FIGURES_A_ROW = 3;

    /** A figure and what it is. */
    public record Figure(String label, String said) {}

    /**
     * A table.
     *
     * @param title above it
     * @param columns from the left
     * @param rows as many cells each as there are columns; what stands behind a line break is set small below
     * @param notes sentences below it
     */
    public record Table(String title, List<Column> columns, List<List<String>> rows, List<String> notes) {

        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            notes = List.copyOf(notes);
        }
    }

    /**
     * A column.
     *
     * @param share of the table's width, in parts of all shares
     * @param figures whether its cells stand at their right
     */
    public record Column(String name, double share, boolean figures) {}

    private final SheetFrame sheet;
    private final Board board;

    private NumbersSheet(SheetFrame sheet) {
        this.sheet = sheet;
        this.board = sheet.board();
    }

    /**
     * Draws it; notes that find no room are counted on the last line.
     *
     * @param number of this sheet
     * @param of how many there are
     */
    public static DrawnSheet of(
            List<Figure> figures, Table table, TitleBlock block, Lettering lettering, Paper paper, int number, int of) {
        NumbersSheet drawn = new NumbersSheet(new SheetFrame(paper, block, lettering));
        drawn.sheet.draw("Main dimensions and cut list", 0, number, of);
        double y =
                drawn.figures(figures, drawn.sheet.top() - (block.notForWork().isEmpty() ? 14 : 24));
        drawn.table(table, y - 5);
        return drawn.sheet.sheet("Main dimensions and cut list.", 0);
    }

    private double left() {
        return sheet.left() + INSET_MM;
    }

    private double wide() {
        return sheet.right() - INSET_MM - left();
    }

    private double figures(List<Figure> figures, double top) {
        double column = wide() / FIGURES_A_ROW;
        double gap = 6;
        for (int i = 0; i < figures.size(); i++) {
            double x = left() + column * (i % FIGURES_A_ROW);
            double y = top - ROW_MM * (i / FIGURES_A_ROW + 1);
            Figure figure = figures.get(i);
            double end = x + column - (i % FIGURES_A_ROW == FIGURES_A_ROW - 1 ? 0 : gap);
            board.line(new At(x, y), new At(end, y), Pen.NARROW);
            board.words(new At(x, y + 1.8), figure.label(), LETTERS_MM, Anchor.START, Hand.PLAIN);
            board.words(new At(end, y + 1.8), figure.said(), LETTERS_MM, Anchor.END, Hand.BOLD);
        }
        int rows = (figures.size() + FIGURES_A_ROW - 1) / FIGURES_A_ROW;
        return top - ROW_MM * rows;
    }

    private void table(Table table, double top) {
        double y = top - 4;
        board.words(new At(left(), y), table.title(), LETTERS_MM + 0.4, Anchor.START, Hand.BOLD);
        y -= 3;
        double all = table.columns().stream().mapToDouble(Column::share).sum();
        double x = left();
        double head = y - 4.6;
        for (Column column : table.columns()) {
            double room = wide() * column.share() / all;
            cell(column, x, head, room, column.name(), SMALL_MM, Hand.PLAIN);
            x += room;
        }
        y = head - 1.8;
        board.line(new At(left(), y), new At(left() + wide(), y), Pen.OUTLINE);
        for (List<String> row : table.rows()) {
            x = left();
            boolean two = row.stream().anyMatch(cell -> cell.contains("\n"));
            y -= two ? ROW_MM + SECOND_LINE_MM : ROW_MM;
            for (int i = 0; i < row.size(); i++) {
                Column column = table.columns().get(i);
                double room = wide() * column.share() / all;
                String[] lines = row.get(i).split("\n", 2);
                double base = y + (two ? SECOND_LINE_MM : 0) + 1.9;
                cell(column, x, base, room, lines[0], LETTERS_MM, i == 0 ? Hand.BOLD : Hand.PLAIN);
                if (lines.length > 1) {
                    cell(column, x, base - SECOND_LINE_MM - 0.2, room, lines[1], SMALL_MM, Hand.PLAIN);
                }
                x += room;
            }
            board.line(new At(left(), y), new At(left() + wide(), y), Pen.NARROW);
        }
        notes(table.notes(), y - 6);
    }

    private void cell(Column column, double x, double y, double room, String words, double size, Hand hand) {
        if (words.isEmpty()) {
            return;
        }
        double gap = 2;
        double wide = board.lettering().width_mm(words, size, hand == Hand.BOLD);
        double fits = wide > room - gap ? size * (room - gap) / wide : size;
        board.words(
                new At(column.figures() ? x + room - gap : x, y),
                words,
                fits,
                column.figures() ? Anchor.END : Anchor.START,
                hand);
    }

    private void notes(List<String> notes, double top) {
        double step = 4.4;
        int room = (int) Math.floor((top - sheet.bottom() - 2) / step) + 1;
        List<String> lines = new ArrayList<>();
        for (String note : notes) {
            lines.addAll(board.lettering().lines(note, SMALL_MM, wide()));
        }
        boolean cut = lines.size() > room;
        for (int i = 0; i < Math.min(lines.size(), room); i++) {
            boolean last = cut && i == room - 1;
            board.words(
                    new At(left(), top - step * i),
                    last ? (lines.size() - i) + " more lines stand on the drawing's page." : lines.get(i),
                    SMALL_MM,
                    Anchor.START,
                    Hand.PLAIN);
        }
    }
}
