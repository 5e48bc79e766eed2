package org.trammel.shop.web;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import org.springframework.stereotype.Component;

/** QR codes (ISO/IEC 18004) as drawings. Templates know it as {@code @qr} and write it with {@code th:utext}. */
@Component("qr")
public class QrCode {

    /** Empty modules that a reader needs all round. */
    private static final int QUIET = 4;

    /**
     * The code of a text, error correction M: a worn or greasy badge is still read.
     *
     * @param text what a reader types
     * @param label what it is, for those who hear the page
     */
    public String svg(String text, String label) {
        ByteMatrix modules = encoded(text);
        int side = modules.getWidth() + 2 * QUIET;
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                int from = x;
                while (x < modules.getWidth() && modules.get(x, y) == 1) {
                    x++;
                }
                if (x > from) {
                    path.append('M').append(from + QUIET).append(' ').append(y + QUIET);
                    path.append('h')
                            .append(x - from)
                            .append("v1h")
                            .append(from - x)
                            .append('z');
                }
            }
        }
        // Black on white on the night sheet too: readers do not know an inverted code.
        return Svg.labelled("qr", side, side, label)
                .rect(0, 0, side, side, "#fff")
                .path(path.toString(), "#000", null, 0)
                .done();
    }

    private static ByteMatrix encoded(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("A QR code cannot hold this text", tooLong);
        }
    }
}
