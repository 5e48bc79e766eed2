package org.trammel.shop.routes;

/**
 * One difference between a draft and the released revision.
 *
 * @param place code of the operation, characteristic, clock or part
 * @param what added, retired, changed or moved
 * @param detail what it was and what it is, in words
 */
public record Changed(String place, String what, String detail) {}
