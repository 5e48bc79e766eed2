package org.trammel.shop.web;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.security.authentication.TestingAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.trammel.shop.people.SignedOn;

/** The face alone on a port of its own, under the policy the service sets, for a browser to look at. */
final class FaceServer implements AutoCloseable {

    private static final Map<String, String> TYPES =
            Map.of("css", "text/css", "js", "text/javascript", "woff2", "font/woff2", "svg", "image/svg+xml");

    private final MockMvc mvc;
    private final HttpServer server;
    private final MockHttpSession session = new MockHttpSession();
    private final List<Map<String, String>> sent = new CopyOnWriteArrayList<>();
    private volatile boolean reachable = true;
    private volatile @Nullable SignedOn signedOn;

    FaceServer(Class<?>... samples) {
        mvc = Face.with(samples);
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.setExecutor(Executors.newFixedThreadPool(4));
        server.createContext("/", this::answer);
        server.start();
    }

    String at(String path) {
        return "http://localhost:" + server.getAddress().getPort() + path;
    }

    /** What forms sent, in order, whether it was answered or not. */
    List<Map<String, String>> sent() {
        return sent;
    }

    /** While it is not, forms arrive and their answer is lost: the worst a bad Wi-Fi does. */
    void reachable(boolean yes) {
        reachable = yes;
    }

    void signedOn(SignedOn who) {
        signedOn = who;
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            String path = exchange.getRequestURI().getPath();
            InputStream file =
                    path.matches("/(css|js|fonts)/.*") ? FaceServer.class.getResourceAsStream("/static" + path) : null;
            if (file != null) {
                try (file) {
                    String ending = path.substring(path.lastIndexOf('.') + 1);
                    exchange.getResponseHeaders().set("Content-Type", TYPES.getOrDefault(ending, "text/plain"));
                    send(exchange, 200, file.readAllBytes());
                }
                return;
            }
            ask(exchange);
        }
    }

    private void ask(HttpExchange exchange) throws IOException {
        URI uri = exchange.getRequestURI();
        MockHttpServletRequestBuilder request = MockMvcRequestBuilders.request(
                HttpMethod.valueOf(exchange.getRequestMethod()), URI.create(at(uri.toString())));
        exchange.getRequestHeaders().forEach((name, values) -> request.header(name, values.toArray()));
        List<jakarta.servlet.http.Cookie> cookies = new ArrayList<>();
        for (String cookie : exchange.getRequestHeaders().getOrDefault("Cookie", List.of())) {
            for (String pair : cookie.split(";\\s*")) {
                cookies.add(new jakarta.servlet.http.Cookie(pair.split("=", 2)[0], pair.split("=", 2)[1]));
            }
        }
        if (!cookies.isEmpty()) {
            request.cookie(cookies.toArray(new jakarta.servlet.http.Cookie[0]));
        }
        if (exchange.getRequestMethod().equals("POST")) {
            Map<String, String> fields = new java.util.LinkedHashMap<>();
            String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
            for (String pair : body.split("&")) {
                String[] field = pair.split("=", 2);
                if (field.length == 2) {
                    String value = URLDecoder.decode(field[1], StandardCharsets.UTF_8);
                    fields.put(field[0], value);
                    request.param(field[0], value);
                }
            }
            fields.put("path", uri.getPath());
            sent.add(fields);
        }
        if (!reachable) {
            return;
        }
        try {
            SecurityContextHolder.getContext()
                    .setAuthentication(signedOn == null ? null : new TestingAuthenticationToken(signedOn, ""));
            MockHttpServletResponse response =
                    mvc.perform(request.session(session)).andReturn().getResponse();
            response.getHeaderNames()
                    .forEach(name -> exchange.getResponseHeaders().put(name, List.copyOf(response.getHeaders(name))));
            exchange.getResponseHeaders()
                    .set(
                            "Content-Security-Policy",
                            "default-src 'self'; img-src 'self' data: blob:; object-src 'none'");
            exchange.getResponseHeaders().set("Referrer-Policy", "same-origin");
            exchange.getResponseHeaders().set("Cache-Control", "no-store");
            send(exchange, response.getStatus(), response.getContentAsByteArray());
        } catch (Exception e) {
            throw new IOException(e);
        } finally {
            SecurityContextHolder.clearContext();
        }
    }

    private static void send(HttpExchange exchange, int status, byte[] body) throws IOException {
        exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
