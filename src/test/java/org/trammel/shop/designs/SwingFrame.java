package org.trammel.shop.designs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.trammel.calc.geometry.DemoFrames;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Inputs of the invented workshop's frames with a swing arm, as its orders give them. */
final class SwingFrame {

    private SwingFrame() {}

    /** Names of the rows of suspension.csv. */
    static List<String> names() {
        return DemoFrames.read("/geometry/suspension.csv").stream()
                .map(DemoFrames.Row::name)
                .toList();
    }

    static Map<GeometryInput, BigDecimal> inputs(String order) {
        Map<GeometryInput, BigDecimal> inputs = new EnumMap<>(GeometryInput.class);
        try (InputStream in = Objects.requireNonNull(SwingFrame.class.getResourceAsStream("/demo/orders.json"))) {
            for (JsonNode one : JsonMapper.builder().build().readTree(in)) {
                if (one.get("order").asString().equals(order)) {
                    one.get("geometry")
                            .properties()
                            .forEach(input -> inputs.put(
                                    GeometryInput.valueOf(input.getKey()),
                                    input.getValue().decimalValue()));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return inputs;
    }

    /** The same with some inputs changed: pairs of name and number, parted by blanks; "-" takes one away. */
    static Map<GeometryInput, BigDecimal> inputs(String order, String changed) {
        Map<GeometryInput, BigDecimal> inputs = inputs(order);
        String[] parts = changed.isBlank() ? new String[0] : changed.strip().split("\\s+");
        for (int i = 0; i < parts.length; i += 2) {
            if (parts[i + 1].equals("-")) {
                inputs.remove(GeometryInput.valueOf(parts[i]));
            } else {
                inputs.put(GeometryInput.valueOf(parts[i]), new BigDecimal(parts[i + 1]));
            }
        }
        return inputs;
    }
}
