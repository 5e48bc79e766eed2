package org.trammel.shop.records;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A photograph as it is kept: no more than two million pixels, upright, and without what the camera wrote beside it
 * (place, time, owner).
 */
record Picture(byte[] content, int widthPx, int heightPx) {

    static final int MOST_PIXELS = 2_000_000;

    /** A picture of more pixels than any camera of ours takes is not even decoded. */
    private static final long DECODED_AT_MOST = 120_000_000;

    private static final float QUALITY = 0.85f;

    /**
     * Reads a picture and writes it anew in the same kind.
     *
     * @throws IOException if it cannot be read as one
     */
    static Picture of(byte[] content, FileKind kind) throws IOException {
        BufferedImage read = read(content);
        BufferedImage upright = upright(read, kind == FileKind.JPEG ? CameraTurn.of(content) : 1, kind);
        return new Picture(written(upright, kind), upright.getWidth(), upright.getHeight());
    }

    private static BufferedImage read(byte[] content) throws IOException {
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new IOException("no reader");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream, true, true);
                long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
                if (pixels > DECODED_AT_MOST) {
                    throw new IOException("too many pixels");
                }
                // Every n-th pixel is enough to scale down from, and keeps the memory small.
                int step = (int) Math.max(1, Math.floor(Math.sqrt((double) pixels / MOST_PIXELS) / 2));
                ImageReadParam param = reader.getDefaultReadParam();
                param.setSourceSubsampling(step, step, 0, 0);
                return reader.read(0, param);
            } catch (RuntimeException broken) {
                throw new IOException("broken picture", broken);
            } finally {
                reader.dispose();
            }
        }
    }

    private static BufferedImage upright(BufferedImage read, int turn, FileKind kind) {
        boolean sideways = turn >= 5;
        double scale = Math.min(1, Math.sqrt((double) MOST_PIXELS / ((double) read.getWidth() * read.getHeight())));
        int across = Math.max(1, (int) (read.getWidth() * scale));
        int down = Math.max(1, (int) (read.getHeight() * scale));
        boolean clear = kind == FileKind.PNG && read.getColorModel().hasAlpha();
        BufferedImage drawn = new BufferedImage(
                sideways ? down : across,
                sideways ? across : down,
                clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        AffineTransform place = CameraTurn.upright(turn, across, down);
        place.scale((double) across / read.getWidth(), (double) down / read.getHeight());
        Graphics2D pen = drawn.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        if (!clear) {
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, drawn.getWidth(), drawn.getHeight());
        }
        pen.drawImage(read, place, null);
        pen.dispose();
        return drawn;
    }

    private static byte[] written(BufferedImage image, FileKind kind) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByMIMEType(kind.mediaType()).next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(stream);
            ImageWriteParam param = writer.getDefaultWriteParam();
            if (kind == FileKind.JPEG) {
                param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                param.setCompressionQuality(QUALITY);
            }
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
