package org.trammel.calc.thermal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.trammel.calc.units.Answer;

/**
 * Samples in few bytes and back, without loss.
 *
 * <pre>
 * "TLS" 1 · names (count, then length and UTF-8 of each) · rows · first time · change of the step of time, by row
 * · for each channel: step of its readings, then their changes in that step, by row · CRC-32 of all that
 * </pre>
 *
 * Numbers take seven bits a byte, the lowest first, signs in the lowest bit (0, −1, 1, −2 as 0, 1, 2, 3). A change is coded
 * one higher, so that 0 can stand for an open thermocouple. The step of a channel is the greatest of 1000, 100, 10 and 1
 * thousandths that divides all its readings. A record of every second to a tenth of a degree takes about a byte a reading.
 */
public final class SampleEncoding {

    private static final byte[] MAGIC = {'T', 'L', 'S', 1};
    private static final int CRC_BYTES = 4;
    private static final int MOST_ROWS = SampleTable.MOST_ROWS;

    private SampleEncoding() {}

    /** The bytes that say the samples. */
    public static byte[] encode(Samples samples) {
        Bytes counted = new Bytes(new byte[0]);
        write(counted, samples);
        Bytes out = new Bytes(new byte[counted.size + CRC_BYTES]);
        write(out, samples);
        CRC32 crc = new CRC32();
        crc.update(out.into, 0, out.size);
        long sum = crc.getValue();
        for (int i = 0; i < CRC_BYTES; i++) {
            out.write((int) (sum >>> 8 * i));
        }
        return out.into;
    }

    private static void write(Bytes out, Samples samples) {
        out.writeBytes(MAGIC);
        number(out, samples.channels().size());
        for (String name : samples.channels()) {
            byte[] text = name.getBytes(StandardCharsets.UTF_8);
            number(out, text.length);
            out.writeBytes(text);
        }
        number(out, samples.rows());
        signed(out, samples.time_ms(0));
        long step = 0;
        for (int row = 1; row < samples.rows(); row++) {
            long now = samples.time_ms(row) - samples.time_ms(row - 1);
            signed(out, now - step);
            step = now;
        }
        for (int channel = 0; channel < samples.channels().size(); channel++) {
            readings(out, samples, channel);
        }
    }

    private static void readings(Bytes out, Samples samples, int channel) {
        int step = 1000;
        for (int row = 0; row < samples.rows() && step > 1; row++) {
            while (samples.has(channel, row) && samples.reading_mDegC(channel, row) % step != 0) {
                step /= 10;
            }
        }
        number(out, step);
        long before = 0;
        for (int row = 0; row < samples.rows(); row++) {
            if (samples.has(channel, row)) {
                long now = samples.reading_mDegC(channel, row) / step;
                number(out, zigzag(now - before) + 1);
                before = now;
            } else {
                number(out, 0);
            }
        }
    }

    private static void signed(Bytes out, long value) {
        number(out, zigzag(value));
    }

    private static long zigzag(long value) {
        return value << 1 ^ value >> 63;
    }

    private static void number(Bytes out, long value) {
        long rest = value;
        while ((rest & ~0x7FL) != 0) {
            out.write((int) (rest & 0x7F | 0x80));
            rest >>>= 7;
        }
        out.write((int) rest);
    }

    /** Counts what is written, and keeps as much of it as there is room for: once to count, once to keep. */
    private static final class Bytes {

        private final byte[] into;
        private int size;

        Bytes(byte[] into) {
            this.into = into;
        }

        void write(int value) {
            if (size < into.length) {
                into[size] = (byte) value;
            }
            size++;
        }

        void writeBytes(byte[] values) {
            for (byte value : values) {
                write(value);
            }
        }
    }

    /** The samples that the bytes say, or why they say none. */
    public static Answer<Samples> decode(byte[] encoded) {
        if (encoded.length < MAGIC.length + CRC_BYTES || !startsWithMagic(encoded)) {
            return Answer.none("samples", "The bytes are no samples of a logger.");
        }
        int end = encoded.length - CRC_BYTES;
        CRC32 crc = new CRC32();
        crc.update(encoded, 0, end);
        long sum = 0;
        for (int i = 0; i < CRC_BYTES; i++) {
            sum |= (encoded[end + i] & 0xFFL) << 8 * i;
        }
        if (sum != crc.getValue()) {
            return Answer.none("samples", "The bytes of the samples were changed: their check sum differs.");
        }
        try {
            return Answer.of(new Decoder(encoded, end).samples());
        } catch (IllegalArgumentException | ArithmeticException | IndexOutOfBoundsException malformed) {
            return Answer.none("samples", "The bytes do not hold together as samples of a logger.");
        }
    }

    private static boolean startsWithMagic(byte[] encoded) {
        for (int i = 0; i < MAGIC.length; i++) {
            if (encoded[i] != MAGIC[i]) {
                return false;
            }
        }
        return true;
    }

    /** Reads the bytes in order; throws where they do not hold together. */
    private static final class Decoder {

        private final byte[] from;
        private final int end;
        private int at = MAGIC.length;

        Decoder(byte[] from, int end) {
            this.from = from;
            this.end = end;
        }

        Samples samples() {
            int channels = count(LoggerFile.MOST_CHANNELS);
            List<String> names = new ArrayList<>();
            for (int channel = 0; channel < channels; channel++) {
                int length = count(LogLines.LONGEST * 4);
                names.add(new String(from, at, length, StandardCharsets.UTF_8));
                at += length;
            }
            // a byte or more a reading: fewer bytes than rows are no samples, and no memory is taken for them
            int rows = count(Math.min(MOST_ROWS, end - at));
            long[] times = new long[rows];
            int[][] readings = new int[channels][rows];
            long step = 0;
            for (int row = 0; row < rows; row++) {
                if (row == 0) {
                    times[0] = signed();
                } else {
                    step += signed();
                    times[row] = times[row - 1] + step;
                }
            }
            for (int channel = 0; channel < channels; channel++) {
                readings(readings[channel]);
            }
            if (at != end) {
                throw new IllegalArgumentException("bytes left over");
            }
            return Samples.given(names, times, readings);
        }

        private void readings(int[] into) {
            long unit = number();
            long before = 0;
            for (int row = 0; row < into.length; row++) {
                long coded = number();
                if (coded == 0) {
                    into[row] = Samples.OPEN;
                } else {
                    before += coded - 1 >>> 1 ^ -(coded - 1 & 1);
                    into[row] = Math.toIntExact(Math.multiplyExact(before, unit));
                }
            }
        }

        private int count(int most) {
            long number = number();
            if (number < 0 || number > most) {
                throw new IllegalArgumentException("count");
            }
            return (int) number;
        }

        private long signed() {
            long coded = number();
            return coded >>> 1 ^ -(coded & 1);
        }

        private long number() {
            long value = 0;
            for (int shift = 0; shift < 64; shift += 7) {
                if (at >= end) {
                    throw new IllegalArgumentException("end");
                }
                byte b = from[at++];
                value |= (b & 0x7FL) << shift;
                if (b >= 0) {
                    return value;
                }
            }
            throw new IllegalArgumentException("number");
        }
    }
}
