package org.trammel.shop.overview;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The time axis of the run of the shop. Places are in hundredths of its width, so that lines keep their weight and words
 * their size on a sheet of any width.
 */
final class Axis {

    private static final int HEAD = 46;
    private static final int ROW = 29;
    private static final int WEEKS_BACK = 2;
    private static final int WEEKS_AT_LEAST = 7;
    private static final int WEEKS_AT_MOST = 17;
    private static final int LABELS_AT_MOST = 9;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private final LocalDate first;
    private final LocalDate last;
    private final Instant now;
    private final ZoneId zone;

    private Axis(LocalDate first, LocalDate last, Instant now, ZoneId zone) {
        this.first = first;
        this.last = last;
        this.now = now;
        this.zone = zone;
    }

    /** From two weeks ago to a week past the farthest promise, seventeen weeks at most. */
    static Axis of(List<RunLine> lines, Instant now, ZoneId zone) {
        LocalDate today = LocalDate.ofInstant(now, zone);
        LocalDate from =
                today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).minusWeeks(WEEKS_BACK);
        LocalDate least = from.plusWeeks(WEEKS_AT_LEAST);
        LocalDate most = from.plusWeeks(WEEKS_AT_MOST);
        LocalDate until = lines.stream()
                .map(RunLine::promised)
                .filter(Objects::nonNull)
                .map(day -> day.plusDays(8).with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY)))
                .max(LocalDate::compareTo)
                .orElse(least);
        return new Axis(from, until.isBefore(least) ? least : until.isAfter(most) ? most : until, now, zone);
    }

    /** The weeks, their Mondays and the flag of this moment. */
    String head(String moment) {
        StringBuilder svg = new StringBuilder(2000);
        svg.append("<svg class=\"axis\" width=\"100%\" height=\"").append(HEAD).append("\" aria-hidden=\"true\">");
        svg.append("<rect x=\"0\" y=\"16\" width=\"100%\" height=\"30\" fill=\"var(--sheet-2)\"/>");
        long weeks = java.time.temporal.ChronoUnit.WEEKS.between(first, last);
        long every = Math.max(1, (weeks + LABELS_AT_MOST - 1) / LABELS_AT_MOST);
        for (long week = 0; week < weeks; week++) {
            LocalDate monday = first.plusWeeks(week);
            String x = at(monday);
            boolean labelled = week % every == 0;
            line(svg, x, labelled ? 33 : 39, x, HEAD, "var(--ink)", 1.4, null);
            if (labelled) {
                // On a narrow sheet only every second of them has room, on a very narrow one every fourth.
                String room = week % (every * 4) == 0 ? "" : week % (every * 2) == 0 ? "finer" : "fine";
                if (!room.isEmpty()) {
                    svg.append("<g class=\"").append(room).append("\">");
                }
                text(svg, x, 5, 41, DAY.format(monday), "var(--ink-2)", monday.getDayOfMonth() <= 7);
                if (week % (every * 2) == 0) {
                    text(svg, x, 5, 28, "week " + monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR), "var(--ink-3)", false);
                }
                if (!room.isEmpty()) {
                    svg.append("</g>");
                }
            }
        }
        line(svg, "0", HEAD - 1, "100%", HEAD - 1, "var(--ink)", 2, null);
        double left = place(now);
        int width = moment.length() * 8 + 8;
        double shift = left < 24 ? -20 : -width / 2.0;
        open(svg, percent(left), 0)
                .append("<path d=\"M")
                .append(n(shift))
                .append(" 0h")
                .append(width)
                .append("v16h-")
                .append(width)
                .append("z\" fill=\"var(--plate)\"/><path d=\"M0 16v30\" stroke=\"var(--blue)\" stroke-width=\"3\"/>")
                .append("<text x=\"")
                .append(n(shift + width / 2.0))
                .append(
                        "\" y=\"12\" font-size=\"12\" font-weight=\"700\" text-anchor=\"middle\" fill=\"var(--on-plate)\">")
                .append(escaped(moment))
                .append("</text></svg>");
        return svg.append("</svg>").toString();
    }

    /** The line of one order. */
    String row(RunLine order) {
        StringBuilder svg = new StringBuilder(1200);
        svg.append("<svg class=\"axis\" width=\"100%\" height=\"").append(ROW).append("\" aria-hidden=\"true\">");
        for (LocalDate monday = first.plusWeeks(1); monday.isBefore(last); monday = monday.plusWeeks(2)) {
            line(svg, at(monday), 0, at(monday), ROW, "var(--rule)", 1, null);
        }
        line(svg, percent(place(now)), 0, percent(place(now)), ROW, "var(--blue)", 1.2, "9 2 2 2");
        List<Track> parts =
                order.tracks().stream().filter(t -> !t.part().isEmpty()).toList();
        Track whole = order.tracks().stream()
                .filter(t -> t.part().isEmpty())
                .reduce((a, b) -> b)
                .orElse(null);
        double promise = promise(order);
        if (parts.isEmpty() || parts.stream().allMatch(Track::finished)) {
            if (whole == null) {
                drawn(svg, order, promise);
            } else {
                track(svg, whole, 15, 4, promise, promise);
            }
        } else {
            double join = Math.min(99, place(now) + Math.max(4, (promise - place(now)) * 0.5));
            double y = 15 - 4.0 * (parts.size() - 1);
            for (Track part : parts) {
                track(svg, part, y, 2.6, join, promise);
                open(svg, percent(join), 0)
                        .append("<path d=\"M0 ")
                        .append(n(y))
                        .append("L9 15\" fill=\"none\" stroke=\"var(--ink)\"/></svg>");
                y += 8;
            }
            if (promise > join) {
                line(svg, percent(join + 1.2), 15, percent(promise), 15, "var(--ink)", 1, "8 4");
            }
        }
        flag(svg, order, promise);
        return svg.append("</svg>").toString();
    }

    /** Before the release there is only the time since the order came in. */
    private void drawn(StringBuilder svg, RunLine order, double promise) {
        double from = place(order.since());
        tick(svg, from, 15);
        line(svg, percent(from), 15, percent(place(now)), 15, "var(--ink)", 2, "6 4");
        line(svg, percent(place(now)), 15, percent(promise), 15, "var(--ink)", 1, "8 4");
    }

    private void track(StringBuilder svg, Track track, double y, double wide, double until, double promise) {
        double from = place(track.from());
        double done = place(track.doneTo());
        double here = place(now);
        tick(svg, from, y);
        line(svg, percent(from), y, percent(done), y, "var(--ink)", wide, null);
        if (track.finished()) {
            tick(svg, done, y);
            line(svg, percent(done), y, percent(until), y, "var(--ink)", 1, "8 4");
            return;
        }
        if (track.workFrom() != null && !track.stopped()) {
            double began = Math.min(place(track.workFrom()), Math.max(0, here - 0.8));
            line(svg, percent(done), y, percent(began), y, "var(--ink)", 1.6, "6 4");
            svg.append("<rect x=\"")
                    .append(percent(began))
                    .append("\" y=\"")
                    .append(n(y - wide - 1))
                    .append("\" width=\"")
                    .append(percent(here - began))
                    .append("\" height=\"")
                    .append(n(wide * 2 + 2))
                    .append("\" fill=\"var(--plate)\" stroke=\"var(--plate-edge)\"/>");
        } else {
            line(svg, percent(done), y, percent(here), y, "var(--ink)", 1.6, track.stopped() ? null : "6 4");
        }
        if (track.stopped()) {
            open(svg, percent(here), y)
                    .append("<path d=\"M-9 7-5-7M-3 7 1-7\" stroke=\"var(--red)\" stroke-width=\"2.2\"/></svg>");
        }
        line(svg, percent(here), y, percent(until), y, "var(--ink)", 1, "8 4");
        if (track.nextHold() != null) {
            double share = track.untilHold() / (double) (track.left() + 1);
            double ahead = Math.max(1.8, (Math.max(promise, here) - here) * share);
            hold(
                    svg,
                    Math.min(98, Math.min(here + ahead, Math.max(until, here + 1.8))),
                    y,
                    track.nextHold(),
                    track.part(),
                    promise);
        }
    }

    private static void hold(StringBuilder svg, double at, double y, String code, String part, double promise) {
        open(svg, percent(at), y)
                .append(
                        "<path d=\"M0-6 6 0 0 6-6 0z\" fill=\"var(--sheet)\" stroke=\"var(--blue)\" stroke-width=\"2\"/>");
        if (part.isEmpty()) {
            // Where the promise is near, the number stands clear of its flag.
            boolean near = promise > at && promise - at < 7;
            open(near ? svg.append("</svg>") : svg, near ? percent(promise) : "0", near ? y : 0)
                    .append("<text x=\"9\" y=\"-2\" font-size=\"12\" fill=\"var(--blue)\">")
                    .append(escaped(code))
                    .append(near ? "</text>" : "</text></svg>");
        }
        svg.append("</svg>");
    }

    private void flag(StringBuilder svg, RunLine order, double promise) {
        if (order.promised() == null) {
            return;
        }
        String colour = order.late() ? "var(--red)" : "var(--ink)";
        open(svg, percent(promise), 0)
                .append("<path d=\"M0 8v18\" stroke=\"")
                .append(colour)
                .append("\" stroke-width=\"3\"/><path d=\"M-5 1.200h10v8h-10z\" stroke-width=\"2\" stroke=\"")
                .append(colour)
                .append("\" fill=\"")
                .append(order.late() ? colour : "var(--sheet)")
                .append("\"/></svg>");
    }

    private double promise(RunLine order) {
        LocalDate day = order.promised();
        return day == null
                ? Math.min(99, place(now) + 12)
                : place(day.plusDays(1).atStartOfDay(zone).toInstant());
    }

    private String at(LocalDate day) {
        return percent(place(day.atStartOfDay(zone).toInstant()));
    }

    /** Place in hundredths of the width, kept on the sheet. */
    private double place(Instant moment) {
        Instant from = first.atStartOfDay(zone).toInstant();
        Instant until = last.atStartOfDay(zone).toInstant();
        double share = Duration.between(from, moment).toMinutes()
                / (double) Duration.between(from, until).toMinutes();
        return Math.max(0, Math.min(0.993, share)) * 100;
    }

    private static void tick(StringBuilder svg, double at, double y) {
        if (at > 0) {
            line(svg, percent(at), y - 6, percent(at), y + 6, "var(--ink)", 1.6, null);
        }
    }

    private static StringBuilder open(StringBuilder svg, String x, double y) {
        return svg.append("<svg x=\"").append(x).append("\" y=\"").append(n(y)).append("\" overflow=\"visible\">");
    }

    private static void line(
            StringBuilder svg,
            String x1,
            double y1,
            String x2,
            double y2,
            String stroke,
            double width,
            @Nullable String dash) {
        svg.append("<line x1=\"")
                .append(x1)
                .append("\" y1=\"")
                .append(n(y1))
                .append("\" x2=\"")
                .append(x2);
        svg.append("\" y2=\"")
                .append(n(y2))
                .append("\" stroke=\"")
                .append(stroke)
                .append("\" stroke-width=\"");
        svg.append(n(width)).append('"');
        if (dash != null) {
            svg.append(" stroke-dasharray=\"").append(dash).append('"');
        }
        svg.append("/>");
    }

    private static void text(StringBuilder svg, String x, int dx, int y, String words, String fill, boolean bold) {
        svg.append("<text x=\"")
                .append(x)
                .append("\" dx=\"")
                .append(dx)
                .append("\" y=\"")
                .append(y);
        svg.append("\" font-size=\"12\" fill=\"").append(fill).append('"');
        if (bold) {
            svg.append(" font-weight=\"700\"");
        }
        svg.append('>').append(escaped(words)).append("</text>");
    }

    private static String percent(double place) {
        return String.format(Locale.ROOT, "%.2f%%", Math.max(0, place));
    }

    private static String n(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
