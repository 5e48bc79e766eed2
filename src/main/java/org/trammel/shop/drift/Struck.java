package org.trammel.shop.drift;

import java.time.Instant;

/** A reading from before this program that counts no more. */
record Struck(Point point, String reason, long by, Instant at) {}
