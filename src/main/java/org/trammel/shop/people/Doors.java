package org.trammel.shop.people;

import java.util.List;

/** Paths that are open to everybody, and where somebody may be sent after signing on. */
final class Doors {

    static final String[] STATIC = {"/css/**", "/js/**", "/fonts/**", "/webjars/**", "/favicon.ico"};

    /** What a browser must reach before anybody is signed on. */
    static final String[] OPEN = {"/sign-on", "/enrol", "/first-owner", "/theme", "/error"};

    private static final List<String> STATIC_BEGINNINGS =
            List.of("/css/", "/js/", "/fonts/", "/webjars/", "/favicon.ico");

    private Doors() {}

    static boolean isStatic(String path) {
        return STATIC_BEGINNINGS.stream().anyMatch(path::startsWith);
    }

    /** Whether a program asks; the pages that describe the API are read in a browser. */
    static boolean isApi(String path) {
        return path.startsWith("/api/") && !path.startsWith("/api/docs");
    }

    /** A path of our own to go on to, or the other if the wanted one leads away from here. */
    static String inside(String wanted, String other) {
        boolean ours = wanted.matches("/[\\x21-\\x7E&&[^\\\\]]*")
                && !wanted.startsWith("//")
                && !wanted.startsWith("/sign-on")
                && wanted.length() < 2000;
        return ours ? wanted : other;
    }
}
