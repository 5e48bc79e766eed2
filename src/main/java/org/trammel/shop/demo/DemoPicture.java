package org.trammel.shop.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A picture that stands for every photograph and drawing of the demo, and says what it is. */
final class DemoPicture {

    private static final byte[] PNG = draw("");

    private DemoPicture() {}

    static byte[] png() {
        return PNG.clone();
    }

    /** The same for one drawing, so that it is another file than the one before. */
    static byte[] png(String name) {
        return draw(name);
    }

    private static byte[] draw(String name) {
        BufferedImage image = new BufferedImage(480, 320, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(0xFAF6EC));
        pen.fillRect(0, 0, 480, 320);
        pen.setColor(new Color(0x1B1E23));
        pen.drawRect(20, 20, 440, 280);
        pen.drawString("Invented picture of the demo workshop", 120, 165);
        pen.drawString(name, 120, 185);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
