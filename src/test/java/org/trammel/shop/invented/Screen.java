package org.trammel.shop.invented;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of the table of everything that answers GET: an address and what it answers at each moment.
 *
 * @param pattern of the mapping
 * @param address with the names of facts in braces
 * @param first status while the shop has its owner and nothing else
 * @param work while the frame is in work, on hold, with an open nonconformance
 * @param point while its hold point waits for signatures
 * @param shipped once it has left
 * @param why reason where it is not simply there, such as a redirect, or a place that cannot apply yet
 */
public record Screen(
        String pattern, String address, String first, String work, String point, String shipped, String why) {

    private static final Pattern FACT = Pattern.compile("\\{([a-z]+)\\}");

    /** What an address is tried with before the shop has it: well formed, and nobody's. */
    private static final Map<String, String> NOBODYS = Map.ofEntries(
            Map.entry("gauge", "TW-9"),
            Map.entry("drift", "1"),
            Map.entry("lot", "TI-9.A"),
            Map.entry("key", "shop.name"),
            Map.entry("route", "ODD-1"),
            Map.entry("order", "1"),
            Map.entry("number", "O-1"),
            Map.entry("customer", "1"),
            Map.entry("design", "1"),
            Map.entry("serial", "FR26001B"),
            Map.entry("nonconformance", "1"),
            Map.entry("rejudgement", "1"),
            Map.entry("study", "1"),
            Map.entry("oven", "OX-9"),
            Map.entry("programme", "PX-9"),
            Map.entry("load", "LX-9"),
            Map.entry("trace", "1"),
            Map.entry("finish", "FX-9"),
            Map.entry("coat", "1"),
            Map.entry("component", "KX-9"),
            Map.entry("traveller", "1"),
            Map.entry("weld", "1"),
            Map.entry("revision", "1"),
            Map.entry("photo", "0".repeat(64)),
            Map.entry("characteristic", "1"),
            Map.entry("operation", "1"),
            Map.entry("step", "1"),
            Map.entry("ticked", "1"));

    /** The moments of the walk, in order. */
    public enum Moment {
        FIRST,
        WORK,
        POINT,
        SHIPPED
    }

    public String status(Moment moment) {
        return switch (moment) {
            case FIRST -> first;
            case WORK -> work;
            case POINT -> point;
            case SHIPPED -> shipped;
        };
    }

    /** The address in a shop that knows these facts. */
    public String in(Map<String, String> facts) {
        return FACT.matcher(address)
                .replaceAll(found -> Matcher.quoteReplacement(Objects.requireNonNull(
                        facts.getOrDefault(found.group(1), NOBODYS.get(found.group(1))), found.group(1))));
    }

    public static List<Screen> all() {
        List<Screen> all = new ArrayList<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Screen.class.getResourceAsStream("/screens/screens.csv")),
                StandardCharsets.UTF_8))) {
            lines.readLine();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] cells = line.split(";", 7);
                all.add(new Screen(cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], cells[6]));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }
}
