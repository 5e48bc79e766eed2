package org.trammel.shop.routes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Tree.Flaw;
import org.trammel.shop.routes.Tree.Fork;
import org.trammel.shop.routes.Tree.Leaf;
import org.trammel.shop.routes.Tree.Row;

/** Named parts of a route file, read by what they must be. */
final class Entry {

    private final Fork fork;

    Entry(Tree tree) {
        if (!(tree instanceof Fork named)) {
            throw new Flaw(tree.place(), "named parts are expected here");
        }
        this.fork = named;
    }

    Fork fork() {
        return fork;
    }

    Flaw flaw(String key, String why) {
        Tree part = fork.parts().get(key);
        return new Flaw(part == null ? fork.place() : part.place(), why);
    }

    /** Refuses parts that nobody reads: a slip of the pen would be lost otherwise. */
    void only(Set<String> known) {
        fork.parts().forEach((key, part) -> {
            if (!known.contains(key)) {
                throw new Flaw(
                        part.place(),
                        "there is no part \"" + key + "\"; known are " + String.join(", ", new TreeSet<>(known)));
            }
        });
    }

    boolean has(String key) {
        return fork.parts().containsKey(key);
    }

    String text(String key) {
        String text = optional(key);
        if (text == null || text.isBlank()) {
            throw flaw(key, key + " is missing");
        }
        return text;
    }

    String text(String key, String otherwise) {
        String text = optional(key);
        return text == null ? otherwise : text;
    }

    @Nullable
    String optional(String key) {
        Tree part = fork.parts().get(key);
        if (part == null) {
            return null;
        }
        if (!(part instanceof Leaf leaf)) {
            throw new Flaw(part.place(), key + " is one text");
        }
        String text = leaf.text().strip();
        return text.isEmpty() ? null : text;
    }

    boolean flag(String key, boolean otherwise) {
        String text = optional(key);
        if (text == null) {
            return otherwise;
        }
        return switch (text) {
            case "true" -> true;
            case "false" -> false;
            default -> throw flaw(key, key + " is true or false, not " + text);
        };
    }

    @Nullable
    Integer whole(String key) {
        BigDecimal number = number(key);
        if (number == null) {
            return null;
        }
        try {
            return number.intValueExact();
        } catch (ArithmeticException e) {
            throw flaw(key, key + " is a whole number, not " + number.toPlainString());
        }
    }

    @Nullable
    BigDecimal number(String key) {
        String text = optional(key);
        if (text == null) {
            return null;
        }
        if (!text.matches("[-+]?\\d{1,9}(\\.\\d{1,6})?")) {
            throw flaw(key, key + " is a number with a decimal point, not " + text);
        }
        return Figures.plain(new BigDecimal(text));
    }

    <E extends Enum<E>> E choice(String key, Class<E> type, @Nullable E otherwise) {
        String text = optional(key);
        if (text == null) {
            if (otherwise == null) {
                throw flaw(key, key + " is missing");
            }
            return otherwise;
        }
        return choice(key, type, text);
    }

    <E extends Enum<E>> List<E> choices(String key, Class<E> type) {
        List<E> chosen = new ArrayList<>();
        texts(key).forEach(text -> chosen.add(choice(key, type, text)));
        return chosen;
    }

    private <E extends Enum<E>> E choice(String key, Class<E> type, String text) {
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> each.name().equals(text.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> flaw(
                        key,
                        key + " is one of "
                                + Arrays.stream(type.getEnumConstants())
                                        .map(Enum::name)
                                        .collect(Collectors.joining(", "))
                                + ", not " + text));
    }

    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (Tree item : row(key)) {
            if (!(item instanceof Leaf leaf) || leaf.text().isBlank()) {
                throw new Flaw(item.place(), key + " is a list of texts");
            }
            texts.add(leaf.text().strip());
        }
        return texts;
    }

    List<Entry> entries(String key) {
        return row(key).stream().map(Entry::new).toList();
    }

    private List<Tree> row(String key) {
        Tree part = fork.parts().get(key);
        if (part == null) {
            return List.of();
        }
        if (!(part instanceof Row row)) {
            throw new Flaw(part.place(), key + " is a list");
        }
        return row.items();
    }
}
