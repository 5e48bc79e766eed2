package org.trammel.shop.gauges;

/** Units are compared as they are written; only the two code points of micro are the same letter. */
final class Units {

    private Units() {}

    static String plain(String unit) {
        return unit.strip().replace('\u03bc', '\u00b5');
    }
}
