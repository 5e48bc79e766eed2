package org.trammel.calc.drawing;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.util.Locale;
import java.util.Objects;

/** The letters of the pages as the platform's own library measures and draws them. */
final class Letters implements Lettering {

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private final Font regular = font("/fonts/b612-latin-400-normal.ttf");
    private final Font bold = font("/fonts/b612-latin-700-normal.ttf");

    private static Font font(String resource) {
        try (InputStream in = Objects.requireNonNull(Letters.class.getResourceAsStream(resource))) {
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(100f);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private Font font(boolean isBold) {
        return isBold ? bold : regular;
    }

    @Override
    public String mm(double length_mm) {
        return String.format(Locale.ROOT, "%.1f", length_mm).replace('.', ',');
    }

    @Override
    public String degrees(double angle_rad) {
        return mm(Math.toDegrees(angle_rad)) + "°";
    }

    @Override
    public double width_mm(String words, double size_mm, boolean isBold) {
        return font(isBold).getStringBounds(words, EXACT).getWidth() / 100 * size_mm;
    }

    /** The rectangle about a text's ink, where it stands on the sheet. */
    Area ink(Mark.Words words) {
        boolean isBold = words.hand() == Mark.Hand.BOLD;
        Rectangle2D seen = font(isBold).createGlyphVector(EXACT, words.words()).getVisualBounds();
        double per = words.size_mm() / 100;
        double back = width_mm(words.words(), words.size_mm(), isBold)
                * words.anchor().share();
        Rectangle2D upward = new Rectangle2D.Double(
                seen.getX() * per - back,
                -(seen.getY() + seen.getHeight()) * per,
                seen.getWidth() * per,
                seen.getHeight() * per);
        AffineTransform place = AffineTransform.getTranslateInstance(
                words.at().x_mm(), words.at().y_mm());
        place.rotate(words.turn_rad());
        return new Area(place.createTransformedShape(upward));
    }
}
