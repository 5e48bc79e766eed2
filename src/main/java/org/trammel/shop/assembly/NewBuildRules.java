package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * What joining, fitting, the final check and packing ask for.
 *
 * @param joinOperations codes of the operations in which parts of a frame are joined
 * @param fitOperations of those in which a customer's own part may be fitted
 * @param finalOperations of those in which brakes are bedded and the bicycle is ridden
 * @param packOperations of those in which it is packed
 * @param shares what the parts contribute to the offset of the wheel where nothing was read of them
 * @param beddingStops firm stops of each brake where the sheet of its pads says nothing else
 * @param countryItems what a country asks for, a line each: two letters, a stroke and the thing; * for every country
 */
public record NewBuildRules(
        List<String> joinOperations,
        List<String> fitOperations,
        List<String> finalOperations,
        List<String> packOperations,
        OffsetShares shares,
        int beddingStops,
        @Nullable BigDecimal bedding_kmh,
        List<CountryItem> countryItems,
        String source) {

    private static final int MOST_STOPS = 200;
    private static final int MOST_ITEMS = 100;
    private static final BigDecimal FASTEST_kmh = BigDecimal.valueOf(60);
    private static final String DEED = "The rules were not put in force.";

    public NewBuildRules {
        joinOperations = List.copyOf(joinOperations);
        fitOperations = List.copyOf(fitOperations);
        finalOperations = List.copyOf(finalOperations);
        packOperations = List.copyOf(packOperations);
        countryItems = List.copyOf(countryItems);
    }

    /** @param country two letters of ISO 3166-1, or * for every one */
    public record CountryItem(String country, String item) {

        boolean holdsIn(String where) {
            return country.equals("*") || country.equalsIgnoreCase(where);
        }

        String line() {
            return country + " | " + item;
        }
    }

    NewBuildRules checked() {
        if (finalOperations.isEmpty() && joinOperations.isEmpty() && packOperations.isEmpty()) {
            throw Refusal.input(
                    "finalOperations", DEED, "They name no operation.", "Enter the codes as the routes have them.");
        }
        if (beddingStops < 1 || beddingStops > MOST_STOPS) {
            throw Refusal.input(
                    "beddingStops",
                    DEED,
                    beddingStops + " stops do not lie within 1 and " + MOST_STOPS + ".",
                    "Enter it.");
        }
        return new NewBuildRules(
                codes("joinOperations", joinOperations),
                codes("fitOperations", fitOperations),
                codes("finalOperations", finalOperations),
                codes("packOperations", packOperations),
                shares.checked(DEED),
                beddingStops,
                speed("beddingKmh", DEED, bedding_kmh),
                countryItems.stream().map(NewBuildRules::item).toList(),
                TypedText.line("source", "The source", DEED, source, 400));
    }

    private static List<String> codes(String field, List<String> typed) {
        return typed.stream()
                .filter(code -> !code.isBlank())
                .map(code -> NewFastener.code(field, DEED, code))
                .distinct()
                .toList();
    }

    static BigDecimal speed(String field, String deed, @Nullable BigDecimal kmh) {
        if (kmh == null || kmh.signum() <= 0 || kmh.compareTo(FASTEST_kmh) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    kmh == null
                            ? "The speed is missing."
                            : kmh.toPlainString() + " km/h does not lie above 0 and up to " + FASTEST_kmh + " km/h.",
                    "Enter it in km/h.");
        }
        // What is kept has one decimal; a finer figure would be judged as one thing and read back as another.
        if (kmh.stripTrailingZeros().scale() > 1) {
            throw Refusal.input(
                    field,
                    deed,
                    kmh.toPlainString() + " km/h has more than one decimal.",
                    "Enter what the instrument shows, with one decimal at most.");
        }
        return kmh;
    }

    private static CountryItem item(CountryItem typed) {
        String country = typed.country().strip().toUpperCase(Locale.ROOT);
        if (!country.equals("*") && !country.matches("[A-Z]{2}")) {
            throw Refusal.input(
                    "countryItems",
                    DEED,
                    "“" + typed.country() + "” is no country of two letters.",
                    "Begin each line with two letters of ISO 3166-1, or * for every country.");
        }
        return new CountryItem(country, TypedText.line("countryItems", "A thing", DEED, typed.item(), 120));
    }

    /** Lines as they are typed: SE | bell. */
    public static List<CountryItem> items(String typed) {
        List<CountryItem> items = new ArrayList<>();
        typed.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(line -> {
            int stroke = line.indexOf('|');
            if (stroke < 0) {
                throw Refusal.input(
                        "countryItems",
                        DEED,
                        "“" + line + "” has no stroke between country and thing.",
                        "Write a line as SE | bell.");
            }
            items.add(new CountryItem(
                    line.substring(0, stroke).strip(),
                    line.substring(stroke + 1).strip()));
        });
        if (items.size() > MOST_ITEMS) {
            throw Refusal.input("countryItems", DEED, items.size() + " things are too many.", "Keep 100 at most.");
        }
        return items;
    }
}
