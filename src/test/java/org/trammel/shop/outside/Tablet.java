package org.trammel.shop.outside;

import java.io.Closeable;
import java.io.IOException;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A tablet somebody is signed on at, as its browser talks to the service. */
public final class Tablet implements Closeable {

    private final String headers;
    private @Nullable Line line;
    private int port;

    /** @param token what the service knows the tablet by */
    public Tablet(String token) {
        String page = UUID.randomUUID().toString();
        this.headers =
                "Cookie: trammel-device=" + token + "; XSRF-TOKEN=" + page + "\r\nX-XSRF-TOKEN: " + page + "\r\n";
    }

    /** What came back. */
    public record Answer(int status, String body) {

        public boolean done() {
            return status >= 200 && status < 300;
        }
    }

    public Answer get(int port, String path) throws IOException {
        return send(port, "GET", path, headers, null);
    }

    /**
     * Sends an act, once.
     *
     * @throws IOException if no whole answer came; the act may have been carried out or not
     */
    public Answer post(int port, String path, String json) throws IOException {
        return send(port, "POST", path, headers + "Content-Type: application/json\r\n", json);
    }

    private Answer send(int port, String method, String path, String headers, @Nullable String body)
            throws IOException {
        try {
            if (line == null || this.port != port) {
                close();
                line = new Line(port);
                this.port = port;
            }
            Line.Answer answer = line.send(method, path, headers, body);
            if (line.ended()) {
                close();
            }
            return new Answer(answer.status(), answer.body());
        } catch (IOException | NumberFormatException broken) {
            close();
            throw broken instanceof IOException io ? io : new IOException("Not an answer", broken);
        }
    }

    @Override
    public void close() throws IOException {
        if (line != null) {
            line.close();
            line = null;
        }
    }
}
