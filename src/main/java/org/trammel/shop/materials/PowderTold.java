package org.trammel.shop.materials;

import org.trammel.shop.records.Act;

/**
 * Something else is known of a lot of powder or paint than before: another sheet stands, or the lot was corrected. Published
 * inside the transaction that recorded it, with the chains of the frames it went into open.
 */
public record PowderTold(Act act, String lot) {}
