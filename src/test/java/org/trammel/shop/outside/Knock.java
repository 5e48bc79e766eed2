package org.trammel.shop.outside;

import java.io.IOException;

/** Asks a service whether it is ready. */
final class Knock {

    private final int port;

    Knock(int port) {
        this.port = port;
    }

    boolean answered() {
        try (Line line = new Line(port)) {
            return line.send("GET", "/actuator/health", "", null).status() == 200;
        } catch (IOException notYet) {
            return false;
        }
    }
}
