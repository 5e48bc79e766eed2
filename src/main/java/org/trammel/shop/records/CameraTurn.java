package org.trammel.shop.records;

import java.awt.geom.AffineTransform;

/**
 * How a camera was held, from the orientation tag of its JPEG (Exif 2.32, tag 0x0112 in the first directory of the APP1
 * segment): 1 upright, 3 upside down, 6 and 8 on its side, the others mirrored.
 */
final class CameraTurn {

    private static final int UPRIGHT = 1;
    private static final int ORIENTATION = 0x0112;
    private static final int APP1 = 0xE1;
    private static final int START_OF_SCAN = 0xDA;
    private static final int ENTRY_BYTES = 12;

    private final byte[] bytes;
    private boolean leastFirst;

    private CameraTurn(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The value of the tag, 1 to 8; 1 where there is none that can be read. */
    static int of(byte[] jpeg) {
        try {
            return new CameraTurn(jpeg).find();
        } catch (ArrayIndexOutOfBoundsException cutOff) {
            return UPRIGHT;
        }
    }

    /** Puts a picture of the given size, as it lies in the file, upright. */
    static AffineTransform upright(int turn, int width, int height) {
        return switch (turn) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    private int find() {
        int at = 2;
        while (byteAt(at) == 0xFF && byteAt(at + 1) != START_OF_SCAN) {
            int length = byteAt(at + 2) << 8 | byteAt(at + 3);
            if (byteAt(at + 1) == APP1 && isExif(at + 4)) {
                return directory(at + 10);
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private boolean isExif(int at) {
        return byteAt(at) == 'E' && byteAt(at + 1) == 'x' && byteAt(at + 2) == 'i' && byteAt(at + 3) == 'f';
    }

    private int directory(int tiff) {
        leastFirst = byteAt(tiff) == 'I';
        int at = tiff + (number(tiff + 4) << 16 | number(tiff + 6));
        if (leastFirst) {
            at = tiff + (number(tiff + 6) << 16 | number(tiff + 4));
        }
        int entries = number(at);
        for (int i = 0; i < entries; i++) {
            int entry = at + 2 + i * ENTRY_BYTES;
            if (number(entry) == ORIENTATION) {
                int turn = number(entry + 8);
                return turn >= 1 && turn <= 8 ? turn : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    private int number(int at) {
        return leastFirst ? byteAt(at) | byteAt(at + 1) << 8 : byteAt(at) << 8 | byteAt(at + 1);
    }

    private int byteAt(int at) {
        return bytes[at] & 0xFF;
    }
}
