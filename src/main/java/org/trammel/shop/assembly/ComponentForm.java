package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Keyed;

/** The fields of the form of a component's sheet; a fastener without a name is not there. */
final class ComponentForm {

    /** What decides where the form does not: the kind of component. */
    private static final String USUAL = "";

    private static final String DEED = "The sheet was not written.";
    private static final int SPARE = 3;

    private ComponentForm() {}

    static NewComponent content(Map<String, String> fields) {
        List<NewFastener> fasteners = new ArrayList<>();
        for (int i = 0; i < NewComponent.MOST_FASTENERS; i++) {
            if (!text(fields, "name" + i).isEmpty()) {
                fasteners.add(fastener(fields, i));
            }
        }
        return new NewComponent(
                kind("kind", fields),
                text(fields, "what"),
                text(fields, "operation"),
                text(fields, "rideOperation"),
                fields.containsKey("carbon"),
                figure(fields, "clampedMost"),
                text(fields, "source"),
                text(fields, "edition"),
                fasteners,
                figure(fields, "leastInsertion"));
    }

    private static NewFastener fastener(Map<String, String> fields, int i) {
        String bolts = text(fields, "bolts" + i);
        if (!bolts.isEmpty() && !bolts.matches("[0-9]{1,3}")) {
            throw Refusal.input("bolts" + i, DEED, "The count of bolts is no whole number.", "Enter 1 to 24.");
        }
        String witness = text(fields, "witness" + i);
        return new NewFastener(
                text(fields, "name" + i),
                bolts.isEmpty() ? 1 : Integer.parseInt(bolts),
                figure(fields, "least" + i),
                figure(fields, "target" + i),
                figure(fields, "most" + i),
                fields.containsKey("greased" + i),
                figure(fields, "nutFactor" + i),
                figure(fields, "thread" + i),
                fields.containsKey("crosswise" + i),
                passes(fields, i),
                fields.containsKey("leftHand" + i),
                witness.equals(USUAL) ? null : Boolean.valueOf(witness.equals("true")),
                fields.containsKey("afterRide" + i),
                kind("clamps" + i, fields),
                text(fields, "answers" + i),
                fields.containsKey("everyPlace" + i));
    }

    private static List<Integer> passes(Map<String, String> fields, int i) {
        List<Integer> passes = new ArrayList<>();
        for (String share : text(fields, "passes" + i).split("[\\s,;%]+")) {
            if (share.isEmpty()) {
                continue;
            }
            if (!share.matches("[0-9]{1,3}")) {
                throw Refusal.input("passes" + i, DEED, share + " is no share in per cent.", "Enter them as 60 100.");
            }
            passes.add(Integer.valueOf(share));
        }
        return passes;
    }

    private static @Nullable ComponentKind kind(String field, Map<String, String> fields) {
        String chosen = text(fields, field);
        return chosen.isEmpty() ? null : Keyed.one(ComponentKind.class, field, DEED, chosen);
    }

    private static @Nullable BigDecimal figure(Map<String, String> fields, String field) {
        return Keyed.figureOrNone(field, DEED, fields.get(field));
    }

    private static String text(Map<String, String> fields, String field) {
        return fields.getOrDefault(field, "").strip();
    }

    /** Places for fasteners that the form shows. */
    static int places(@Nullable Component last) {
        int there = last == null ? 0 : last.fasteners().size();
        return Math.min(NewComponent.MOST_FASTENERS, there + SPARE);
    }

    static Map<String, String> kinds(String none) {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("", none);
        Stream.of(ComponentKind.values()).forEach(kind -> kinds.put(kind.name(), kind.word()));
        return kinds;
    }

    static Map<String, String> witness() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put(USUAL, "as is usual for its kind");
        choices.put("true", "yes");
        choices.put("false", "no");
        return choices;
    }

    static Map<String, Object> values(@Nullable Component last) {
        Map<String, Object> values = new HashMap<>();
        if (last == null) {
            return values;
        }
        values.put("kind", last.kind());
        values.put("what", last.what());
        values.put("operation", last.operation());
        values.put("rideOperation", last.rideOperation());
        values.put("carbon", last.carbon());
        values.put("clampedMost", last.clampedMost_Nm());
        values.put("leastInsertion", last.leastInsertion_mm() == null ? null : bare(last.leastInsertion_mm()));
        values.put("source", last.source());
        values.put("edition", last.edition());
        for (int i = 0; i < last.fasteners().size(); i++) {
            fill(values, i, last.fasteners().get(i));
        }
        return values;
    }

    private static void fill(Map<String, Object> values, int i, Fastener fastener) {
        values.put("name" + i, fastener.name());
        values.put("bolts" + i, String.valueOf(fastener.bolts()));
        values.put("least" + i, bare(fastener.least_Nm()));
        values.put("target" + i, bare(fastener.target_Nm()));
        values.put("most" + i, bare(fastener.most_Nm()));
        values.put("greased" + i, fastener.greased());
        values.put("nutFactor" + i, bare(fastener.nutFactor()));
        values.put("thread" + i, fastener.thread_mm() == null ? null : bare(fastener.thread_mm()));
        values.put("crosswise" + i, fastener.crosswise());
        values.put("passes" + i, fastener.passes().stream().map(String::valueOf).collect(Collectors.joining(" ")));
        values.put("leftHand" + i, fastener.leftHand());
        values.put("witness" + i, String.valueOf(fastener.witness()));
        values.put("afterRide" + i, fastener.afterRide());
        values.put("clamps" + i, fastener.clamps());
        values.put("answers" + i, fastener.answers());
        values.put("everyPlace" + i, fastener.everyPlace());
    }

    private static BigDecimal bare(BigDecimal figure) {
        BigDecimal stripped = figure.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
