package org.trammel.shop.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** Tables that were typed by hand and are compared to what the program says. */
final class TypedTable {

    private TypedTable() {}

    static List<String> parts(String cell) {
        return cell.isEmpty() ? List.of() : Arrays.asList(cell.split(","));
    }

    /** The rows of a table, by the names in its heading; lines that begin with a hash say where it is from. */
    static List<Map<String, String>> table(String name) {
        List<String> lines = new ArrayList<>();
        try (InputStream in = Objects.requireNonNull(TypedTable.class.getResourceAsStream("/demo/" + name + ".csv"))) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .forEach(lines::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String[] heads = lines.get(0).split(";", -1);
        return lines.subList(1, lines.size()).stream()
                .map(line -> {
                    String[] cells = line.split(";", -1);
                    assertThat(cells).as(line).hasSameSizeAs(heads);
                    Map<String, String> row = new HashMap<>();
                    for (int i = 0; i < heads.length; i++) {
                        row.put(heads[i], cells[i]);
                    }
                    return row;
                })
                .collect(Collectors.toList());
    }
}
