package org.trammel.shop.handwork;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.routes.Proof;

/**
 * What stands of the handwork at an operation.
 *
 * @param asked what the steps of the operation rest on
 * @param used every tool that was scanned, oldest first
 * @param air newest measurement of air and metal
 * @param read newest reading back of the serial
 * @param misreads every reading back that was not the serial of the frame, oldest first
 * @param waters every look at the film of water, oldest first
 */
public record HandRecord(
        long operationId,
        Set<Proof> asked,
        List<Used> used,
        @Nullable DewMargin air,
        @Nullable SerialRead read,
        List<Misread> misreads,
        List<Water> waters) {

    /** A tool that touched the metal. */
    public record Used(String tool, ToolKind kind, long by, Instant at) {}

    /** A serial read from the metal by somebody who did not strike it. */
    public record SerialRead(long by, Instant at) {}

    /** What somebody read from the metal that is not the serial of the frame. */
    public record Misread(String readAs, long by, Instant at) {}

    /**
     * How water ran off.
     *
     * @param held in one film on all of the parts; else it broke on them
     */
    public record Water(boolean held, String parts, long by, Instant at) {}

    /** The newest look at the film of water; null if nobody looked. */
    public @Nullable Water water() {
        return waters.isEmpty() ? null : waters.get(waters.size() - 1);
    }

    /** When it broke last; what cleaned before did not clean. */
    @Nullable
    Instant brokeAt() {
        return waters.stream()
                .filter(water -> !water.held())
                .map(Water::at)
                .reduce((before, after) -> after)
                .orElse(null);
    }

    public boolean asks(String proof) {
        return asked.contains(Proof.valueOf(proof));
    }

    boolean touchedBy(Collection<ToolKind> kinds) {
        Instant broke = brokeAt();
        return used.stream()
                .anyMatch(use ->
                        kinds.contains(use.kind()) && (broke == null || use.at().isAfter(broke)));
    }
}
