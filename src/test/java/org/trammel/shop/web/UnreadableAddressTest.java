package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServer;

/** The server alone, without the application: what it refuses by itself never reaches a page. */
class UnreadableAddressTest {

    private WebServer server;

    @BeforeEach
    void open() {
        TomcatServletWebServerFactory factory = new TomcatServletWebServerFactory(0);
        new UnreadableAddress().customize(factory);
        server = factory.getWebServer();
        server.start();
    }

    @AfterEach
    void close() {
        server.destroy();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/frames/%00", "/frames/%5c..%5c", "/frames/%2fetc", "/%zz", "/a|b", "/frames/\"><script>"})
    void anAddressThatCannotBeReadIsAnsweredInThreeParts(String path) throws IOException {
        String answer = answer("GET " + path + " HTTP/1.1", "Accept: text/html");
        assertThat(answer.lines().findFirst())
                .hasValueSatisfying(line -> assertThat(line).contains(" 400"));
        assertThat(answer)
                .contains("There is no such sheet.", "no address of this service has", "Open the sheet from its list")
                .doesNotContain("Tomcat", "HTTP Status", "script", "etc");
    }

    @Test
    void aProgramGetsAProblemDocument() throws IOException {
        assertThat(answer("GET /api/v1/frames/%00 HTTP/1.1", "Accept: */*"))
                .contains("application/problem+json", "\"status\":400", "\"instead\":\"Open the sheet");
        assertThat(answer("GET /frames/%5c HTTP/1.1", "Accept: application/json"))
                .contains("application/problem+json");
    }

    @Test
    void anAddressLongerThanTheServerReadsTellsNothingOfTheServer() throws IOException {
        assertThat(answer("GET /" + "a".repeat(20_000) + " HTTP/1.1", "Accept: text/html"))
                .startsWith("HTTP/1.1 4")
                .doesNotContain("Tomcat", "HTTP Status", "aaaa");
    }

    /** By a bare socket: a client library would mend or refuse such an address before it is sent. */
    private String answer(String line, String accept) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.getPort())) {
            socket.setSoTimeout(20_000);
            String request = String.join("\r\n", List.of(line, "Host: here", accept, "Connection: close", "", ""));
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
