package org.trammel.shop.inspection;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.trammel.shop.records.Refusal;

/** Which characteristics a kind of record gives: to each of its figures the codes that routes use, kept as a line each. */
public final class GivenCodes {

    private static final int MOST = 12;

    private GivenCodes() {}

    /** Codes typed into one field, parted by white space, commas or semicolons. */
    public static List<String> typed(String text) {
        return Arrays.stream(text.split("[\\s,;]+"))
                .filter(code -> !code.isEmpty())
                .toList();
    }

    /** Refuses what is no code, and a code that stands twice. The field of a figure is {@code gives} and its name. */
    public static <F extends Enum<F>> Map<F, List<String>> checked(
            Class<F> figures, String deed, Map<F, List<String>> typed) {
        Map<F, List<String>> checked = new EnumMap<>(figures);
        Set<String> seen = new HashSet<>();
        typed.forEach((figure, codes) -> codes.forEach(code -> {
            String field = "gives" + figure.name();
            if (!code.matches("[0-9A-Za-z][0-9A-Za-z.-]{0,19}") || codes.size() > MOST) {
                throw Refusal.input(
                        field,
                        deed,
                        codes.size() > MOST
                                ? "More than " + MOST + " characteristics are named."
                                : code + " is no code of a characteristic.",
                        "Enter codes as the routes have them, such as 110-1, parted by spaces.");
            }
            if (!seen.add(code)) {
                throw Refusal.input(
                        field,
                        deed,
                        "Characteristic " + code + " is named twice.",
                        "Name each at the one figure that it is.");
            }
            checked.computeIfAbsent(figure, one -> new java.util.ArrayList<>()).add(code);
        }));
        return checked;
    }

    public static String written(Map<? extends Enum<?>, List<String>> codes) {
        return codes.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> entry.getKey().name() + " " + String.join(" ", entry.getValue()))
                .collect(Collectors.joining("\n"));
    }

    public static <F extends Enum<F>> Map<F, List<String>> read(Class<F> figures, String written) {
        Map<F, List<String>> codes = new EnumMap<>(figures);
        written.lines()
                .map(line -> line.split(" "))
                .forEach(words -> codes.put(
                        Enum.valueOf(figures, words[0]), List.of(words).subList(1, words.length)));
        return codes;
    }
}
