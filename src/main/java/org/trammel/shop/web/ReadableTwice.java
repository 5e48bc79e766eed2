package org.trammel.shop.web;

import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A request whose JSON body is read once for the act's id and once for the act itself. */
final class ReadableTwice extends HttpServletRequestWrapper {

    /** The body is larger than any act. */
    static final class TooLarge extends IOException {}

    /** Larger than any act; pictures come as files, not as JSON. */
    static final int MOST_BYTES = 4 * 1024 * 1024;

    private static final JsonMapper JSON = JsonMapper.shared();

    private byte @Nullable [] body;
    private @Nullable JsonNode tree;

    ReadableTwice(HttpServletRequest request) {
        super(request);
    }

    /** A text property at the top of the body; null if there is none or the body is not JSON. */
    @Nullable
    String property(String name) {
        JsonNode all = tree();
        JsonNode value = all == null ? null : all.get(name);
        return value == null || !value.isString() ? null : value.stringValue();
    }

    /** The body as it was sent; null if it is not JSON. */
    @Nullable
    JsonNode tree() {
        try {
            if (tree == null) {
                tree = JSON.readTree(body());
            }
            return tree;
        } catch (JacksonException unreadable) {
            return null;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private byte[] body() throws IOException {
        byte[] known = body;
        if (known == null) {
            known = super.getInputStream().readNBytes(MOST_BYTES + 1);
            if (known.length > MOST_BYTES) {
                throw new TooLarge();
            }
            body = known;
        }
        return known;
    }

    @Override
    public ServletInputStream getInputStream() throws IOException {
        ByteArrayInputStream bytes = new ByteArrayInputStream(body());
        return new ServletInputStream() {
            @Override
            public boolean isFinished() {
                return bytes.available() == 0;
            }

            @Override
            public boolean isReady() {
                return true;
            }

            @Override
            public void setReadListener(ReadListener listener) {
                throw new IllegalStateException("This body is read in one go");
            }

            @Override
            public int read() {
                return bytes.read();
            }

            @Override
            public int read(byte[] into, int from, int length) {
                return bytes.read(into, from, length);
            }
        };
    }

    @Override
    public BufferedReader getReader() throws IOException {
        return new BufferedReader(new InputStreamReader(getInputStream(), StandardCharsets.UTF_8));
    }
}
