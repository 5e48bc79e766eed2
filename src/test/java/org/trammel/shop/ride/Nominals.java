package org.trammel.shop.ride;

import java.util.Map;

/** Nominals of an invented drawing, typed by hand. */
final class Nominals {

    private static final Map<String, String> BY_CODE = Map.ofEntries(
            Map.entry("020-1", "42.00"),
            Map.entry("020-2", "1.40"),
            Map.entry("030-1", "690.0"),
            Map.entry("030-2", "62.50"),
            Map.entry("030-3", "71.00"),
            Map.entry("030-4", "70.00"),
            Map.entry("040-1", "38.00"),
            Map.entry("040-2", "46.00"),
            Map.entry("060-1", "458.0"),
            Map.entry("060-2", "610.0"),
            Map.entry("060-3a", "65.50"),
            Map.entry("060-3b", "74.50"),
            Map.entry("060-4a", "434.0"),
            Map.entry("060-4b", "33.0"),
            Map.entry("060-5", "2.50"),
            Map.entry("4", "148.00"),
            Map.entry("7", "65.50"),
            Map.entry("8a", "610.0"),
            Map.entry("8b", "458.0"),
            Map.entry("11", "1190.0"),
            Map.entry("12a", "33.00"),
            Map.entry("12b", "38.00"),
            Map.entry("13", "74.50"),
            Map.entry("130-1", "44.000"),
            Map.entry("130-2", "73.00"),
            Map.entry("130-4", "30.900"),
            Map.entry("130-6", "1750"),
            Map.entry("130-7", "24.000"),
            Map.entry("170-3", "210.0"),
            Map.entry("190-1a", "720"),
            Map.entry("190-1b", "520"),
            Map.entry("190-1c", "60"));

    private Nominals() {}

    /** The nominal of a characteristic; of a part with its mark before it, such as FT/080-7. */
    static String of(String code) {
        String own = code.substring(code.indexOf('/') + 1);
        String nominal = BY_CODE.get(own);
        return nominal != null ? nominal : BY_CODE.get(own.substring(own.indexOf('-') + 1));
    }
}
