package org.trammel.shop.designs;

/**
 * A characteristic that wants a nominal from the design and has none.
 *
 * @param code with the part in front for a child, such as SA/030-1
 */
public record Lacking(String code, String operation, String name, String unit) {}
