package org.trammel.shop.outside;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One connection to a service of this machine that speaks HTTP/1.1 and nothing more. It sends a request once and never
 * again by itself, so whoever uses it knows what was sent; and it takes little of the machine that is measured.
 */
final class Line implements Closeable {

    private static final int PATIENCE_MS = 30_000;

    private final Socket socket = new Socket();
    private final InputStream in;
    private final OutputStream out;
    private boolean last;

    Line(int port) throws IOException {
        socket.setTcpNoDelay(true);
        socket.setSoTimeout(PATIENCE_MS);
        try {
            socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), PATIENCE_MS);
            in = new BufferedInputStream(socket.getInputStream(), 1 << 16);
            out = socket.getOutputStream();
        } catch (IOException refused) {
            socket.close();
            throw refused;
        }
    }

    /** What came back. */
    record Answer(int status, String body) {}

    /**
     * Sends a request and waits for all of the answer.
     *
     * @param headers each ended by CR LF
     * @param body null for none
     * @throws IOException if no whole answer came; whether the request was carried out is not known then
     */
    Answer send(String method, String path, String headers, @Nullable String body) throws IOException {
        byte[] content = body == null ? new byte[0] : body.getBytes(StandardCharsets.UTF_8);
        String head = method + " " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + socket.getPort() + "\r\n" + headers
                + (body == null ? "" : "Content-Length: " + content.length + "\r\n") + "\r\n";
        ByteArrayOutputStream request = new ByteArrayOutputStream(head.length() + content.length);
        request.write(head.getBytes(StandardCharsets.US_ASCII));
        request.write(content);
        out.write(request.toByteArray());
        out.flush();
        return answer();
    }

    private Answer answer() throws IOException {
        int status = Integer.parseInt(line().split(" ", 3)[1]);
        int length = 0;
        boolean chunked = false;
        for (String header = line(); !header.isEmpty(); header = line()) {
            String small = header.toLowerCase(Locale.ROOT);
            if (small.startsWith("content-length:")) {
                length = Integer.parseInt(small.substring(15).strip());
            } else if (small.startsWith("transfer-encoding:") && small.contains("chunked")) {
                chunked = true;
            } else if (small.startsWith("connection:") && small.contains("close")) {
                last = true;
            }
        }
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        if (chunked) {
            for (int size = Integer.parseInt(line(), 16); size > 0; size = Integer.parseInt(line(), 16)) {
                body.write(exactly(size));
                line();
            }
            line();
        } else if (status != 204 && status != 304) {
            body.write(exactly(length));
        }
        return new Answer(status, body.toString(StandardCharsets.UTF_8));
    }

    /** True if the service takes no further request on this connection. */
    boolean ended() {
        return last;
    }

    private byte[] exactly(int size) throws IOException {
        byte[] read = in.readNBytes(size);
        if (read.length < size) {
            throw new EOFException("The answer broke off");
        }
        return read;
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int c = in.read(); c != '\n'; c = in.read()) {
            if (c < 0) {
                throw new EOFException("The answer broke off");
            }
            if (c != '\r') {
                line.append((char) c);
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
