package org.trammel.shop.welding;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands of the welds of a frame at an operation.
 *
 * @param procedure code and letter of the one it goes by
 * @param nodes of the operation in the order of the route; none where it only looks
 * @param purge the newest reading; null where none was taken
 */
public record WeldSheet(
        long operationId,
        String procedure,
        List<NodeRecord> nodes,
        @Nullable PurgeRecord purge) {

    /** The node that is in work; null if none is. */
    public @Nullable NodeRecord open() {
        return nodes.stream()
                .filter(node -> node.state() == NodeRecord.State.OPEN)
                .findFirst()
                .orElse(null);
    }

    /** The first node that is to be welded; null if none is. */
    public @Nullable NodeRecord next() {
        return nodes.stream()
                .filter(node -> node.state() == NodeRecord.State.WAITING || node.state() == NodeRecord.State.TO_REPAIR)
                .findFirst()
                .orElse(null);
    }
}
