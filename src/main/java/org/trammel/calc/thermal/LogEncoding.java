package org.trammel.calc.thermal;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * In which characters a logger's file is written, from its first bytes: by its byte-order mark; UTF-16 without a mark by its
 * zero bytes; UTF-8 if they are well-formed; else windows-1252, which reads any bytes and has ° where old loggers write it.
 */
public final class LogEncoding {

    private LogEncoding() {}

    /**
     * Looks.
     *
     * @param first some thousand bytes from the file's start, or all of it
     */
    public static Charset of(byte[] first) {
        if (first.length >= 2 && (first[0] & 0xFF) == 0xFE && (first[1] & 0xFF) == 0xFF) {
            return StandardCharsets.UTF_16BE;
        }
        if (first.length >= 2 && (first[0] & 0xFF) == 0xFF && (first[1] & 0xFF) == 0xFE) {
            return StandardCharsets.UTF_16LE;
        }
        int even = 0;
        int odd = 0;
        for (int i = 0; i < first.length; i++) {
            even += first[i] == 0 && i % 2 == 0 ? 1 : 0;
            odd += first[i] == 0 && i % 2 == 1 ? 1 : 0;
        }
        if (odd > first.length / 4 && even == 0) {
            return StandardCharsets.UTF_16LE;
        }
        if (even > first.length / 4 && odd == 0) {
            return StandardCharsets.UTF_16BE;
        }
        CoderResult utf8 = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(first), CharBuffer.allocate(first.length + 1), false);
        return utf8.isError() ? Charset.forName("windows-1252") : StandardCharsets.UTF_8;
    }
}
