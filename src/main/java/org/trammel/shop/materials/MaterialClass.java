package org.trammel.shop.materials;

import org.jspecify.annotations.Nullable;

/**
 * A class of material that the table of fits knows.
 *
 * @param family the one family of metals it may ever meet, whatever the table says; null if the table alone decides
 */
public record MaterialClass(
        String code, LotKind kind, String name, @Nullable MetalFamily family) {}
