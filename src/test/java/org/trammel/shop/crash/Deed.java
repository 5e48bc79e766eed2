package org.trammel.shop.crash;

import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.trammel.shop.outside.WrittenShop;

/**
 * One act of a client, with what it must leave behind.
 *
 * @param steps that it ticks or unticks; none for a reading
 * @param characteristic that it reads; 0 for a tick
 * @param raw what it read
 * @param frames whose chains it is recorded in at least
 */
record Deed(UUID id, String kind, List<Long> steps, long characteristic, String raw, int frames) {

    static Deed tick(List<Long> steps) {
        return new Deed(UUID.randomUUID(), "tick", steps, 0, "", steps.size());
    }

    static Deed untick(long step) {
        return new Deed(UUID.randomUUID(), "untick", List.of(step), 0, "", 1);
    }

    static Deed read(long characteristic, String raw) {
        return new Deed(UUID.randomUUID(), "read", List.of(), characteristic, raw, 1);
    }

    String path() {
        return switch (kind) {
            case "tick" -> "/api/v1/ticks";
            case "untick" -> "/api/v1/unticks";
            default -> "/api/v1/characteristics/" + characteristic + "/readings";
        };
    }

    String body() {
        String head = "{\"actId\":\"" + id + "\",";
        return head
                + switch (kind) {
                    case "tick" ->
                        "\"steps\":[" + steps.stream().map(String::valueOf).collect(Collectors.joining(",")) + "]}";
                    case "untick" -> "\"step\":" + steps.get(0) + "}";
                    default -> "\"raw\":[\"" + raw + "\"],\"gauge\":\"" + WrittenShop.GAUGE + "\"}";
                };
    }
}
