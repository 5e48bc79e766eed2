package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Tree.Flaw;
import org.trammel.shop.routes.Tree.Fork;
import org.trammel.shop.routes.Tree.Leaf;
import org.trammel.shop.routes.Tree.Place;
import org.trammel.shop.routes.Tree.Row;

/**
 * Reads route files. An operation may {@code use} one of the folder {@code operations} and say only what is different;
 * a list of characteristics may {@code use} one of the folder {@code sets} under codes of its own.
 */
final class RouteFiles {

    private static final Set<String> OWN =
            Set.of("use", "leave-out", "change", "more-steps", "more-characteristics", "last-step");

    private static final int DEEPEST = 5;

    private final Function<String, @Nullable String> texts;
    private final Map<String, Tree> known = new LinkedHashMap<>();

    /**
     * @param texts gives the text of a file by its path below the folder of route files, null if there is none
     */
    RouteFiles(Function<String, @Nullable String> texts) {
        this.texts = texts;
    }

    /**
     * Reads one route.
     *
     * @throws Refusal naming file, line and reason
     */
    RouteFile read(String path) {
        try {
            return route(new Entry(tree(path, new Place(path, 1))));
        } catch (Flaw flaw) {
            throw Refusal.input(
                    "file",
                    "Route file " + path + " was not read.",
                    flaw.getMessage() + ".",
                    "Correct line " + flaw.place().line() + " of "
                            + flaw.place().file() + ".");
        }
    }

    private RouteFile route(Entry file) {
        file.only(Set.of("route", "name", "metal", "kind", "operations", "clocks", "children"));
        List<OperationSheet> operations = file.entries("operations").stream()
                .map(entry -> FileParts.operation(expanded(entry, 0)))
                .toList();
        if (operations.isEmpty()) {
            throw file.flaw("operations", "a route has operations");
        }
        String metal = file.text("metal");
        if (!Kinds.METALS.contains(metal)) {
            throw file.flaw("metal", "metal is one of " + String.join(", ", Kinds.METALS) + ", not " + metal);
        }
        List<ClockSheet> clocks =
                file.entries("clocks").stream().map(FileParts::clock).toList();
        List<RouteFile.Child> children = file.entries("children").stream()
                .map(child -> new RouteFile.Child(child.text("part"), child.text("name"), child.text("route")))
                .toList();
        RouteSheet sheet = new RouteSheet(
                0, file.text("route"), file.text("name"), "", metal, file.text("kind"), operations, clocks, List.of());
        return new RouteFile(sheet, children);
    }

    private Tree tree(String path, Place askedAt) {
        Tree before = known.get(path);
        if (before != null) {
            return before;
        }
        String text = path.contains("..") ? null : texts.apply(path);
        if (text == null) {
            throw new Flaw(askedAt, "there is no file " + path);
        }
        Tree tree = TreeReader.read(path, text);
        known.put(path, tree);
        return tree;
    }

    /** The operation with what it uses filled in: its steps and characteristics as plain lists. */
    private Entry expanded(Entry entry, int depth) {
        if (depth > DEEPEST) {
            throw entry.flaw("use", "files use one another more than " + DEEPEST + " deep");
        }
        Map<String, Tree> over = new LinkedHashMap<>(entry.fork().parts());
        over.keySet().removeAll(OWN);
        Fork base = new Fork(entry.fork().place(), Map.of());
        if (entry.has("use")) {
            String path = "operations/" + entry.text("use") + ".yaml";
            base = expanded(new Entry(tree(path, entry.fork().parts().get("use").place())), depth + 1)
                    .fork();
        }
        Entry whole = new Entry(base.with(over));
        List<Fork> steps = forks(whole, "steps");
        List<Fork> characteristics = new ArrayList<>();
        for (Fork each : forks(whole, "characteristics")) {
            characteristics.addAll(set(new Entry(each)));
        }
        for (String left : entry.texts("leave-out")) {
            if (!steps.removeIf(step -> is(step, "text", left))
                    && !characteristics.removeIf(one -> is(one, "code", left))) {
                throw entry.flaw("leave-out", "there is no step and no characteristic " + left + " to leave out");
            }
        }
        change(entry, characteristics, "");
        if (entry.has("last-step")) {
            if (steps.isEmpty()) {
                throw entry.flaw("last-step", "there is no step to change");
            }
            Fork last = steps.remove(steps.size() - 1);
            steps.add(last.with(
                    new Entry(entry.fork().parts().get("last-step")).fork().parts()));
        }
        steps.addAll(forks(entry, "more-steps"));
        for (Fork each : forks(entry, "more-characteristics")) {
            characteristics.addAll(set(new Entry(each)));
        }
        Place place = entry.fork().place();
        return new Entry(whole.fork()
                .with(Map.of(
                        "steps", new Row(place, List.copyOf(steps)),
                        "characteristics", new Row(place, List.copyOf(characteristics)))));
    }

    /** A characteristic, or the characteristics of a set under codes of their own. */
    private List<Fork> set(Entry entry) {
        if (!entry.has("use")) {
            return List.of(entry.fork());
        }
        entry.only(Set.of("use", "as", "each", "change", "leave-out"));
        String path = "sets/" + entry.text("use") + ".yaml";
        Tree tree = tree(path, entry.fork().parts().get("use").place());
        if (!(tree instanceof Row row)) {
            throw new Flaw(tree.place(), "a set is a list of characteristics");
        }
        String as = entry.text("as");
        Map<String, Tree> each = entry.has("each")
                ? new Entry(entry.fork().parts().get("each")).fork().parts()
                : Map.of();
        List<Fork> members = new ArrayList<>();
        for (Tree item : row.items()) {
            Entry member = new Entry(item);
            members.add(member.fork()
                    .with(each)
                    .with(Map.of("code", new Leaf(item.place(), as + "-" + member.text("code")))));
        }
        for (String left : entry.texts("leave-out")) {
            if (!members.removeIf(member -> is(member, "code", as + "-" + left))) {
                throw entry.flaw("leave-out", "the set has no " + left + " to leave out");
            }
        }
        change(entry, members, as + "-");
        return members;
    }

    private static void change(Entry entry, List<Fork> characteristics, String prefix) {
        if (!entry.has("change")) {
            return;
        }
        new Entry(entry.fork().parts().get("change")).fork().parts().forEach((code, change) -> {
            boolean found = false;
            for (int i = 0; i < characteristics.size(); i++) {
                if (is(characteristics.get(i), "code", prefix + code)) {
                    characteristics.set(
                            i,
                            characteristics.get(i).with(new Entry(change).fork().parts()));
                    found = true;
                }
            }
            if (!found) {
                throw new Flaw(change.place(), "there is no characteristic " + code + " to change");
            }
        });
    }

    private static List<Fork> forks(Entry entry, String key) {
        return new ArrayList<>(entry.entries(key).stream().map(Entry::fork).toList());
    }

    private static boolean is(Fork fork, String key, String wanted) {
        return fork.parts().get(key) instanceof Leaf leaf && leaf.text().strip().equals(wanted);
    }
}
