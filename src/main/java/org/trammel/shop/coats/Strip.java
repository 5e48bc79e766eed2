package org.trammel.shop.coats;

import java.time.Instant;

/**
 * How the coat came off.
 *
 * @param words with what, and how long
 */
public record Strip(StripMethod method, String words, long by, Instant at) {}
