package org.trammel.shop.inspection;

import org.trammel.shop.records.Act;

/**
 * A reading was taken, or took the place of one. Published inside the transaction that keeps it, for whoever watches what
 * frames read.
 *
 * @param code of the characteristic
 */
public record ReadingTaken(Act act, long travellerId, long operationId, String code, long readingId) {}
