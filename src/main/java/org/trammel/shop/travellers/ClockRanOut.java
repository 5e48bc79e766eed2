package org.trammel.shop.travellers;

import org.trammel.shop.records.Act;

/** A window closed before the operation it guards began; published in the transaction that noticed it. */
public record ClockRanOut(Act act, long travellerId, String serial, String part, String code, String name) {}
