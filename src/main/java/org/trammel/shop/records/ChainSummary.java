package org.trammel.shop.records;

/**
 * A chain and where it stands.
 *
 * @param name such as frame:AB270423, or shop
 * @param records how many records it has
 * @param hash seal of the last
 */
public record ChainSummary(String name, long records, String hash) {}
