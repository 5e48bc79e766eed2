package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.coating.FilmRule;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * What a finish asks of the finished coat.
 *
 * @param operations codes of those at whose gate the film is read
 * @param areas where on the frame, in the order in which they are read
 * @param least_um thickness asked for, or the least of the specification
 * @param most_um that no reading may pass, or the most of the specification; null for none
 * @param level restriction of spots and areas; null for the usual one and for other rules
 * @param strict fewer than a fifth below, not a fifth at most
 * @param guarded whether the doubt of the gauge is counted against a verdict
 * @param mostCrossCut greatest class of the cross-cut on the panel; null where none is cut
 * @param gloss at the angle the order names; null where it is not read
 * @param glossWithin to either side
 * @param mostColourDifference from the ordered sample; null where it is not read
 */
public record CoatAsked(
        List<String> operations,
        List<String> areas,
        @Nullable Rule rule,
        @Nullable BigDecimal least_um,
        @Nullable BigDecimal most_um,
        FilmRule.@Nullable Level level,
        boolean strict,
        boolean guarded,
        @Nullable Integer mostCrossCut,
        @Nullable BigDecimal gloss,
        @Nullable BigDecimal glossWithin,
        @Nullable BigDecimal mostColourDifference) {

    private static final int MOST_AREAS = 40;
    private static final BigDecimal THICKEST_UM = BigDecimal.valueOf(1500);
    private static final BigDecimal MOST_GLOSS = BigDecimal.valueOf(1000);
    private static final BigDecimal FARTHEST = BigDecimal.valueOf(100);

    /** By which rule the film is judged. */
    public enum Rule {
        EIGHTY_TWENTY("80/20: mean reached, none below four fifths, few below"),
        SPOTS_AND_AREAS("spots and areas, with a level"),
        MEAN_OF_AREAS("means of areas");

        private final String word;

        Rule(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public CoatAsked {
        operations = List.copyOf(operations);
        areas = List.copyOf(areas);
    }

    /** Whether the coat's look is judged at all. */
    public boolean asksLook() {
        return mostCrossCut != null || gloss != null || mostColourDifference != null;
    }

    FilmRule filmRule() {
        BigDecimal least = java.util.Objects.requireNonNull(least_um);
        return switch (java.util.Objects.requireNonNull(rule)) {
            case EIGHTY_TWENTY -> new FilmRule.EightyTwenty(least, strict, most_um);
            case SPOTS_AND_AREAS ->
                new FilmRule.SpotsAndAreas(
                        least, java.util.Objects.requireNonNull(most_um), level == null ? FilmRule.Level.THREE : level);
            case MEAN_OF_AREAS -> new FilmRule.MeanOfAreas(least);
        };
    }

    CoatAsked checked(String deed) {
        if (rule == null) {
            throw Refusal.input("rule", deed, "It is not said by which rule the film is judged.", "Choose one.");
        }
        figure("leastUm", "The film that is asked for", deed, least_um, THICKEST_UM, "µm");
        if (rule == Rule.SPOTS_AND_AREAS || most_um != null) {
            figure("mostUm", "The thickest film", deed, most_um, THICKEST_UM, "µm");
            if (most_um.compareTo(least_um) < 0) {
                throw Refusal.input(
                        "mostUm", deed, "The thickest film is thinner than what is asked for.", "Enter both again.");
            }
        }
        if (mostCrossCut != null && (mostCrossCut < 0 || mostCrossCut > 5)) {
            throw Refusal.input(
                    "crossCut", deed, "A class of the cross-cut is 0 to 5.", "Enter the greatest that is allowed.");
        }
        if (gloss != null) {
            figure("gloss", "The gloss", deed, gloss, MOST_GLOSS, "gloss units");
            figure("glossWithin", "How far the gloss may be off", deed, glossWithin, MOST_GLOSS, "gloss units");
        }
        if (mostColourDifference != null) {
            figure("colour", "The greatest colour difference", deed, mostColourDifference, FARTHEST, "");
        }
        List<String> codes = NewFinish.codes("filmOperations", deed, operations);
        List<String> read = Stream.of(areas.toArray(String[]::new))
                .filter(area -> !area.isBlank())
                .map(area -> TypedText.line("areas", "An area", deed, area, 60))
                .toList();
        if (codes.isEmpty()
                || read.isEmpty()
                || read.size() > MOST_AREAS
                || Set.copyOf(read).size() != read.size()) {
            throw Refusal.input(
                    codes.isEmpty() ? "filmOperations" : "areas",
                    deed,
                    codes.isEmpty()
                            ? "It names no operation at which the film is read."
                            : read.isEmpty()
                                    ? "Its map has no area."
                                    : "Its map has more than " + MOST_AREAS + " areas, or one twice.",
                    codes.isEmpty() ? "Enter codes such as 150 or 150.9." : "Write one area to a line, each once.");
        }
        return new CoatAsked(
                codes,
                read,
                rule,
                least_um,
                most_um,
                rule == Rule.SPOTS_AND_AREAS ? level : null,
                strict,
                guarded,
                mostCrossCut,
                gloss,
                gloss == null ? null : glossWithin,
                mostColourDifference);
    }

    private static void figure(
            String field, String what, String deed, @Nullable BigDecimal value, BigDecimal most, String unit) {
        if (value == null || value.signum() <= 0 || value.compareTo(most) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    value == null
                            ? what + " is missing."
                            : what + ", " + value.toPlainString() + ", does not lie above 0 and up to " + most + " "
                                    + unit.strip() + ".",
                    "Enter it as the order or the maker's sheet says.");
        }
    }
}
