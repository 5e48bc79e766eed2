package org.trammel.shop.routes;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a draft changes against the revision in force. */
final class Compare {

    private static final Set<String> LISTS = Set.of("steps", "characteristics");

    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("repeatLimit", "repeat limit"),
            Map.entry("fromDesign", "nominal from the design"),
            Map.entry("lowerDeviation", "lower"),
            Map.entry("upperDeviation", "upper"),
            Map.entry("gaugeKind", "gauge kind"),
            Map.entry("readBack", "read back blind"),
            Map.entry("secondPerson", "two people"),
            Map.entry("coldSetClock", "cold-set window"),
            Map.entry("coldSetAttempts", "cold-set attempts"),
            Map.entry("coldSetAmount", "cold-set amount"),
            Map.entry("triageTolerances", "triage in tolerances"),
            Map.entry("startedBy", "started by"),
            Map.entry("lotKind", "lot"),
            Map.entry("startsClock", "starts clock"));

    private final List<Changed> changes = new ArrayList<>();

    private final Function<BigDecimal, String> figures;

    private Compare(Function<BigDecimal, String> figures) {
        this.figures = figures;
    }

    /**
     * The differences, operations first.
     *
     * @param figures how a number is written
     */
    static List<Changed> of(RouteSheet before, RouteSheet after, Function<BigDecimal, String> figures) {
        Compare compare = new Compare(figures);
        compare.lists(
                before.operations(),
                after.operations(),
                OperationSheet::code,
                OperationSheet::name,
                compare::operation);
        compare.lists(before.clocks(), after.clocks(), ClockSheet::code, ClockSheet::name, compare::fields);
        compare.lists(before.children(), after.children(), ChildSheet::part, ChildSheet::name, compare::part);
        return List.copyOf(compare.changes);
    }

    private interface Both<T> {
        void compare(String place, T before, T after);
    }

    private <T> void lists(
            List<T> before, List<T> after, Function<T, String> code, Function<T, String> name, Both<T> both) {
        Map<String, T> old = byCode(before, code);
        Map<String, T> now = byCode(after, code);
        old.forEach((key, item) -> {
            if (!now.containsKey(key)) {
                changes.add(new Changed(key, "retired", name.apply(item)));
            }
        });
        List<String> oldOrder = old.keySet().stream().filter(now::containsKey).toList();
        List<String> newOrder = now.keySet().stream().filter(old::containsKey).toList();
        now.forEach((key, item) -> {
            T was = old.get(key);
            if (was == null) {
                changes.add(new Changed(key, "added", name.apply(item)));
                return;
            }
            both.compare(key, was, item);
        });
        moved(oldOrder, newOrder);
    }

    /** Names the fewest that moved: those outside the longest run that kept its order. */
    private void moved(List<String> before, List<String> after) {
        Set<String> kept = Set.copyOf(Order.kept(before, after));
        for (String code : after) {
            if (!kept.contains(code)) {
                int at = after.indexOf(code);
                changes.add(new Changed(code, "moved", at == 0 ? "to the front" : "after " + after.get(at - 1)));
            }
        }
    }

    private void operation(String place, OperationSheet before, OperationSheet after) {
        fields(place, before, after);
        steps(place, before.steps(), after.steps());
        lists(
                before.characteristics(),
                after.characteristics(),
                CharacteristicSheet::code,
                CharacteristicSheet::name,
                this::fields);
    }

    /** Steps have no code: those whose text went are retired, those whose text came are added. */
    private void steps(String place, List<StepSheet> before, List<StepSheet> after) {
        Map<String, StepSheet> old = byCode(before, StepSheet::text);
        Map<String, StepSheet> now = byCode(after, StepSheet::text);
        old.keySet().stream()
                .filter(text -> !now.containsKey(text))
                .forEach(text -> changes.add(new Changed(place, "retired", "step " + quoted(text))));
        now.forEach((text, step) -> {
            StepSheet was = old.get(text);
            if (was == null) {
                changes.add(new Changed(place, "added", "step " + quoted(text)));
            } else {
                difference(was, step)
                        .forEach(
                                one -> changes.add(new Changed(place, "changed", "step " + quoted(text) + ", " + one)));
            }
        });
        List<String> oldOrder = old.keySet().stream().filter(now::containsKey).toList();
        List<String> newOrder = now.keySet().stream().filter(old::containsKey).toList();
        Set<String> kept = Set.copyOf(Order.kept(oldOrder, newOrder));
        newOrder.stream()
                .filter(text -> !kept.contains(text))
                .forEach(text -> changes.add(new Changed(place, "moved", "step " + quoted(text))));
    }

    private void part(String place, ChildSheet before, ChildSheet after) {
        if (!before.name().equals(after.name())) {
            changes.add(new Changed(place, "changed", "name: " + before.name() + " → " + after.name()));
        }
        if (before.route().revisionId() != after.route().revisionId()) {
            changes.add(new Changed(
                    place,
                    "changed",
                    after.route().code() + ": revision " + before.route().letter() + " → "
                            + after.route().letter()));
        }
    }

    private <T> void fields(String place, T before, T after) {
        difference(before, after).forEach(one -> changes.add(new Changed(place, "changed", one)));
    }

    private <T> List<String> difference(T before, T after) {
        List<String> differences = new ArrayList<>();
        for (RecordComponent component : before.getClass().getRecordComponents()) {
            if (LISTS.contains(component.getName())) {
                continue;
            }
            Object was = value(component, before);
            Object is = value(component, after);
            if (!Objects.equals(was, is)) {
                String word = WORDS.getOrDefault(
                        component.getName(), component.getName().toLowerCase(Locale.ROOT));
                differences.add(word + ": " + said(was) + " → " + said(is));
            }
        }
        return differences;
    }

    private static @Nullable Object value(RecordComponent component, Object of) {
        try {
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " cannot be read", e);
        }
    }

    private String said(@Nullable Object value) {
        if (value == null || "".equals(value)) {
            return "none";
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof BigDecimal number) {
            return figures.apply(number);
        }
        if (value instanceof Collection<?> many) {
            return many.isEmpty() ? "none" : many.stream().map(this::said).collect(Collectors.joining(", "));
        }
        if (value instanceof Enum<?> word) {
            return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        return value.toString();
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }

    private static <T> Map<String, T> byCode(List<T> list, Function<T, String> code) {
        Map<String, T> map = new LinkedHashMap<>();
        list.forEach(item -> map.putIfAbsent(code.apply(item), item));
        return map;
    }
}
