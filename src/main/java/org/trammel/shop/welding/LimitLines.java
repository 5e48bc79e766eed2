package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.welding.Imperfection;
import org.trammel.calc.welding.WeldLimit;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Keyed;

/**
 * Lines of a table of limits as they are typed: level; imperfection; walls above; walls up to; millimetres; factor; t, b or a;
 * at most; the word short where only short ones are allowed.
 */
final class LimitLines {

    private static final int PLACES = 9;
    private static final BigDecimal GREATEST = BigDecimal.valueOf(1000);

    private LimitLines() {}

    static List<WeldLimit> read(String deed, String typed) {
        List<WeldLimit> lines = typed.lines()
                .filter(line -> !line.isBlank())
                .map(line -> line(deed, line.strip()))
                .toList();
        if (lines.isEmpty()) {
            throw Refusal.input("lines", deed, "It has no line.", "Write one limit to a line.");
        }
        return lines;
    }

    /** Lines that are entered: of one level no two speak of the same thing in the same wall, since only one could judge it. */
    static List<WeldLimit> parted(String deed, String typed) {
        List<WeldLimit> lines = read(deed, typed);
        for (int i = 0; i < lines.size(); i++) {
            WeldLimit one = lines.get(i);
            if (lines.subList(i + 1, lines.size()).stream().anyMatch(other -> meet(one, other))) {
                throw Refusal.input(
                        "lines",
                        deed,
                        "At level " + one.level() + " two lines for "
                                + one.imperfection().word() + " speak of the same walls.",
                        "Let one end where the other begins, or leave one out.");
            }
        }
        return lines;
    }

    private static boolean meet(WeldLimit one, WeldLimit other) {
        return one.level().equals(other.level())
                && one.imperfection() == other.imperfection()
                && beginsBefore(one, other)
                && beginsBefore(other, one);
    }

    private static boolean beginsBefore(WeldLimit one, WeldLimit other) {
        return one.over() == null || other.upTo() == null || one.over().compareTo(other.upTo()) < 0;
    }

    private static WeldLimit line(String deed, String line) {
        String[] places = Arrays.stream(line.split(";", -1)).map(String::strip).toArray(String[]::new);
        if (places.length < PLACES - 1 || places.length > PLACES) {
            throw wrong(deed, line, "It has " + places.length + " places; 8 or 9 are read.");
        }
        if (!LookRules.LEVELS.contains(places[0])) {
            throw wrong(deed, line, "Its level is none of B, C, D.");
        }
        BigDecimal offset = figure(deed, line, places[4]);
        BigDecimal factor = figure(deed, line, places[5]);
        String last = places.length == PLACES ? places[8] : "";
        if (!last.isEmpty() && !last.equalsIgnoreCase("short")) {
            throw wrong(deed, line, "Its last place may be empty or say short.");
        }
        BigDecimal over = places[2].isEmpty() ? null : figure(deed, line, places[2]);
        BigDecimal upTo = places[3].isEmpty() ? null : figure(deed, line, places[3]);
        if (over != null && upTo != null && over.compareTo(upTo) >= 0) {
            throw wrong(deed, line, "Its walls begin where they end.");
        }
        return new WeldLimit(
                places[0],
                imperfection(deed, line, places[1]),
                over,
                upTo,
                offset,
                factor,
                size(deed, line, places[6]),
                places[7].isEmpty() ? null : figure(deed, line, places[7]),
                !last.isEmpty());
    }

    private static BigDecimal figure(String deed, String line, String typed) {
        BigDecimal figure;
        try {
            figure = Keyed.figure("lines", deed, typed);
        } catch (Refusal unreadable) {
            throw wrong(deed, line, unreadable.why());
        }
        if (figure.signum() < 0 || figure.compareTo(GREATEST) > 0 || figure.scale() > 6) {
            throw wrong(deed, line, figure.toPlainString() + " is no figure of a limit.");
        }
        return figure;
    }

    private static Imperfection imperfection(String deed, String line, String typed) {
        String code = typed.toUpperCase(Locale.ROOT).replace(' ', '_');
        return Arrays.stream(Imperfection.values())
                .filter(one -> one.name().equals(code) || one.word().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> wrong(
                        deed,
                        line,
                        "There are "
                                + Arrays.stream(Imperfection.values())
                                        .map(Imperfection::word)
                                        .collect(Collectors.joining(", "))
                                + "."));
    }

    private static WeldLimit.Size size(String deed, String line, String typed) {
        return Arrays.stream(WeldLimit.Size.values())
                .filter(size -> size.sign().equals(typed))
                .findFirst()
                .orElseThrow(() -> wrong(deed, line, "Its size is none of t, b, a."));
    }

    private static Refusal wrong(String deed, String line, String why) {
        String shown = line.length() > 60 ? line.substring(0, 60) + "…" : line;
        return Refusal.input(
                "lines", deed, "Line “" + shown + "”: " + why, "Write it as C; undercut; 3; ; 0; 0,1; t; 0,5; short.");
    }

    static String written(List<WeldLimit> lines) {
        return lines.stream()
                .map(line -> String.join(
                        "; ",
                        line.level(),
                        line.imperfection().name(),
                        plain(line.over()),
                        plain(line.upTo()),
                        plain(line.offset()),
                        plain(line.factor()),
                        line.of().sign(),
                        plain(line.most()),
                        line.shortOnly() ? "short" : ""))
                .collect(Collectors.joining("\n"));
    }

    private static String plain(@Nullable BigDecimal figure) {
        return figure == null ? "" : figure.toPlainString();
    }
}
