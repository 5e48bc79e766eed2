package org.trammel.shop.travellers;

import org.trammel.shop.records.Act;

/** Somebody ticked at an operation that asks for a qualification; published in the transaction of the tick. */
public record SkilledWork(Act act, long travellerId, String serial) {}
