package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedDay;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.TypedFields;

/** What was typed into the forms of the drift charts. */
final class DriftForm {

    static final Map<String, String> KINDS = kinds();

    private static final String NOT_TAKEN_OVER = "The earlier readings were not taken over.";
    private static final int CELLS = 6;

    private final Map<String, String> fields;

    DriftForm(Map<String, String> fields) {
        this.fields = fields;
    }

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (Base.Kind kind : Base.Kind.values()) {
            kinds.put(kind.name(), kind.word());
        }
        return kinds;
    }

    NewSeries series() {
        TypedFields typed = new TypedFields(fields, "The axis is not watched.");
        Factor by = typed.one(Factor.class, "by", Factor.JIG);
        typed.refuseIfWrong();
        return new NewSeries(
                by,
                typed.text(
                        switch (by) {
                            case JIG -> "jig";
                            case WELDER -> "welder";
                            case TUBE_SET -> "tubeSet";
                        }),
                typed.text("code"),
                typed.text("name"),
                typed.text("unit"),
                typed.ticked("scaled"));
    }

    NewBase base() {
        TypedFields typed = new TypedFields(fields, "The base was not taken.");
        Base.Kind kind = typed.one(Base.Kind.class, "kind", Base.Kind.FIRST);
        Long first = kind == Base.Kind.FIRST ? typed.idOrNone("first") : null;
        LocalDate from = typed.dayOrNone("from");
        LocalDate until = typed.dayOrNone("until");
        BigDecimal centre = kind == Base.Kind.GIVEN ? typed.figureOrNone("centre") : null;
        BigDecimal sigma = kind == Base.Kind.GIVEN ? typed.figureOrNone("sigma") : null;
        BigDecimal weight = typed.figure("weight");
        BigDecimal width = typed.figure("width");
        BigDecimal slack = typed.figure("slack");
        BigDecimal decision = typed.figure("decision");
        Long seen = typed.idOrNone("seen");
        typed.refuseIfWrong();
        return new NewBase(
                kind,
                first == null ? null : (int) Math.min(first, Integer.MAX_VALUE),
                from,
                until,
                centre,
                sigma,
                Objects.requireNonNull(weight),
                Objects.requireNonNull(width),
                Objects.requireNonNull(slack),
                Objects.requireNonNull(decision),
                typed.ticked("stopsJig"),
                typed.text("source"),
                typed.text("reason"),
                seen);
    }

    /** One line a reading: day; frame; value; nominal; lower limit; upper limit; welder; tube set. */
    List<EarlierReading> earlier() {
        List<EarlierReading> readings = new ArrayList<>();
        int number = 0;
        for (String line : fields.getOrDefault("lines", "").split("\\R")) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            String[] cells = line.split(";", -1);
            if (cells.length < CELLS || cells.length > CELLS + 2) {
                throw refusal(number, "it has " + cells.length + " entries, not " + CELLS + " to " + (CELLS + 2) + ".");
            }
            readings.add(new EarlierReading(
                    day(cells[0].strip(), number),
                    cells[1].strip(),
                    figure(cells[2], number),
                    figure(cells[3], number),
                    figure(cells[4], number),
                    figure(cells[5], number),
                    cell(cells, CELLS),
                    cell(cells, CELLS + 1)));
        }
        return readings;
    }

    private static @Nullable String cell(String[] cells, int place) {
        return cells.length > place && !cells[place].isBlank() ? cells[place].strip() : null;
    }

    private static LocalDate day(String typed, int line) {
        TypedDay day = TypedDay.of(typed);
        if (day instanceof TypedDay.Read read) {
            return read.day();
        }
        throw refusal(line, ((TypedDay.Unreadable) day).reason());
    }

    private static BigDecimal figure(String typed, int line) {
        TypedNumber number = TypedNumber.of(typed);
        if (!(number instanceof TypedNumber.Read read)) {
            throw refusal(line, ((TypedNumber.Unreadable) number).reason());
        }
        return read.value();
    }

    private static Refusal refusal(int line, String why) {
        return Refusal.input(
                "lines",
                NOT_TAKEN_OVER,
                "Line " + line + ": " + why,
                "Enter day; frame; value; nominal; lower limit; upper limit; welder; tube set.");
    }
}
