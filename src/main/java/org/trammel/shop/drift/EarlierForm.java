package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.util.List;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** What is asked of a reading from before this program before it is kept. */
final class EarlierForm {

    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

    private EarlierForm() {}

    static EarlierReading checked(EarlierReading entry, int place, String unit, String not) {
        String where = "Line " + place + ": ";
        if (entry.lowerLimit().compareTo(entry.upperLimit()) >= 0
                || entry.nominal().compareTo(entry.lowerLimit()) < 0
                || entry.nominal().compareTo(entry.upperLimit()) > 0) {
            throw Refusal.input(
                    "lines",
                    not,
                    where + "nominal " + entry.nominal().toPlainString() + " does not lie between "
                            + entry.lowerLimit().toPlainString() + " and "
                            + entry.upperLimit().toPlainString() + ".",
                    "Enter nominal, lower and upper limit in this order.");
        }
        for (BigDecimal figure : List.of(entry.value(), entry.nominal(), entry.lowerLimit(), entry.upperLimit())) {
            Digits.READING.require("lines", not, where, figure);
        }
        if (unit.equals("mm")) {
            refuseInches(entry, where, not);
        }
        return new EarlierReading(
                entry.readOn(),
                TypedText.line("lines", where + "the frame", not, entry.frame(), 60),
                entry.value(),
                entry.nominal(),
                entry.lowerLimit(),
                entry.upperLimit(),
                TypedText.lineOrNone("lines", where + "the welder", not, entry.welder(), 40),
                TypedText.lineOrNone("lines", where + "the tube set", not, entry.tubeSet(), 60));
    }

    /** Far outside its limits, and inside them if it were inches: nobody's frame is twenty-five times too small. */
    private static void refuseInches(EarlierReading entry, String where, String not) {
        BigDecimal inches = entry.value().multiply(MM_PER_INCH);
        if (!inside(entry, entry.value()) && inside(entry, inches)) {
            throw Refusal.input(
                    "lines",
                    not,
                    where + entry.value().toPlainString() + " mm lies outside "
                            + entry.lowerLimit().toPlainString() + " to "
                            + entry.upperLimit().toPlainString() + "; as inches it would be "
                            + inches.stripTrailingZeros().toPlainString() + " mm.",
                    "Enter millimetres.");
        }
    }

    private static boolean inside(EarlierReading entry, BigDecimal value) {
        return value.compareTo(entry.lowerLimit()) >= 0 && value.compareTo(entry.upperLimit()) <= 0;
    }
}
