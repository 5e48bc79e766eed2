package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QrCodeTest {

    private static final int SCALE = 6;

    @ParameterizedTest
    @ValueSource(strings = {"AV26-101-H", "4417-2", "https://tablet.local/station/101-H?revision=A&part=FT"})
    void aReaderReadsWhatWasDrawn(String text) throws Exception {
        BufferedImage image = painted(new QrCode().svg(text, "code"));
        String read = new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(image))))
                .getText();
        assertThat(read).isEqualTo(text);
    }

    /** Paints the squares of the drawing as a printer would. */
    private static BufferedImage painted(String svg) {
        Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"").matcher(svg);
        assertThat(box.find()).isTrue();
        int side = Integer.parseInt(box.group(1));
        BufferedImage image = new BufferedImage(side * SCALE, side * SCALE, BufferedImage.TYPE_INT_RGB);
        Graphics2D paper = image.createGraphics();
        paper.setColor(Color.WHITE);
        paper.fillRect(0, 0, image.getWidth(), image.getHeight());
        paper.setColor(Color.BLACK);
        Matcher square = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1").matcher(svg.substring(svg.lastIndexOf("<path")));
        while (square.find()) {
            paper.fillRect(
                    Integer.parseInt(square.group(1)) * SCALE,
                    Integer.parseInt(square.group(2)) * SCALE,
                    Integer.parseInt(square.group(3)) * SCALE,
                    SCALE);
        }
        return image;
    }
}
