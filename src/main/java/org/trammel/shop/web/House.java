package org.trammel.shop.web;

import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;

/** The shop as a page needs it: its name, its zone, how it writes figures. */
interface House {

    String name();

    /** Whether invented data is loaded: then every sheet says so. */
    boolean demo();

    ZoneId zone();

    Locale locale();

    Currency currency();

    /** Name of a station. */
    String station(String code);
}
