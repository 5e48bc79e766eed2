package org.trammel.shop.designs;

import org.trammel.calc.geometry.Tiling;
import org.trammel.shop.web.PdfSheet;
import org.trammel.shop.web.PdfSheet.Pen;

/** Where two sheets show the same strip of a drawing: its middle, with crosses that are laid on each other. */
final class TileSeams {

    private static final double CROSS_MM = 3;

    private final PdfSheet sheet;
    private final double x0;
    private final double y0;

    /** At a place of the sheet, in its millimetres; that of the drawing's own lower left corner. */
    TileSeams(PdfSheet sheet, double x0_mm, double y0_mm) {
        this.sheet = sheet;
        this.x0 = x0_mm;
        this.y0 = y0_mm;
    }

    /** All of a drawing of this size. */
    void draw(Tiling tiling, double width_mm, double height_mm) {
        double around = TemplateDrawing.AROUND_MM;
        double right = width_mm + around;
        double top = height_mm + around;
        for (Tiling.Sheet one : tiling.sheets()) {
            if (one.column() > 0 && one.row() == 0) {
                double x = one.left_mm() + TemplateSheets.SHARED_MM / 2 - around;
                seam(x, -around, x, top, one.column() + "|" + (one.column() + 1));
            }
            if (one.row() > 0 && one.column() == 0) {
                double y = one.bottom_mm() + TemplateSheets.SHARED_MM / 2 - around;
                seam(-around, y, right, y, one.row() + "|" + (one.row() + 1));
            }
        }
    }

    private void seam(double fromX, double fromY, double toX, double toY, String name) {
        sheet.line(x0 + fromX, y0 + fromY, x0 + toX, y0 + toY, Pen.DASHED);
        for (double share : new double[] {0.12, 0.88}) {
            double x = x0 + fromX + (toX - fromX) * share;
            double y = y0 + fromY + (toY - fromY) * share;
            sheet.line(x - CROSS_MM, y, x + CROSS_MM, y, Pen.WIDE);
            sheet.line(x, y - CROSS_MM, x, y + CROSS_MM, Pen.WIDE);
            sheet.text(x + 0.8, y + 0.8, name, 2.4);
        }
    }
}
