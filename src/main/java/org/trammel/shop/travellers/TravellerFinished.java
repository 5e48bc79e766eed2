package org.trammel.shop.travellers;

import org.trammel.shop.records.Act;

/** Every operation of a frame or part is done; published in the transaction that did the last one. */
public record TravellerFinished(Act act, long travellerId, String serial, String part) {}
