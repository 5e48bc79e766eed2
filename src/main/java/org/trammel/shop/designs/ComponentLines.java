package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import org.trammel.shop.web.TypedFields;

/** A component list as it is typed: one a line, what it is for, a colon, what it is. */
public final class ComponentLines {

    private ComponentLines() {}

    /** Reads the lines of a field; a line that is none is noted as wrong. */
    public static List<Component> read(TypedFields fields, String field) {
        List<Component> components = new ArrayList<>();
        int number = 0;
        for (String line : fields.text(field).lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            int colon = line.indexOf(':');
            if (colon < 1 || line.substring(colon + 1).isBlank()) {
                fields.wrong(
                        field,
                        "Line " + number + " is not a component and what it is.",
                        "Write it as “fork: 541 mm, offset 44”.");
                continue;
            }
            components.add(new Component(
                    line.substring(0, colon).strip(), line.substring(colon + 1).strip()));
        }
        return components;
    }

    /** The lines to be typed over. */
    public static String written(List<Component> components) {
        StringBuilder lines = new StringBuilder();
        components.forEach(one ->
                lines.append(one.what()).append(": ").append(one.description()).append('\n'));
        return lines.toString();
    }
}
