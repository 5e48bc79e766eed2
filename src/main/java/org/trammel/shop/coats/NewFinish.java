package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.inspection.GivenCodes;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * What a finish asks for.
 *
 * @param metals codes of the metals it is for
 * @param blastOperations codes of the operations in which its frames are blasted or pretreated
 * @param coatOperations codes of those in which they are sprayed
 * @param masks landmarks that are covered before the blast, in the order in which they are ticked
 * @param most_bar greatest blast pressure
 * @param mostEarth_MOhm greatest earth resistance from hook to frame; null where nothing is sprayed by charge
 * @param source where the numbers come from
 * @param secondColour what it asks of the film of a second colour; null where there is none
 * @param gives characteristics of its operations that what is recorded gives, by the figure
 */
public record NewFinish(
        String what,
        List<String> metals,
        List<String> blastOperations,
        List<String> coatOperations,
        List<String> masks,
        @Nullable BigDecimal most_bar,
        @Nullable BigDecimal mostEarth_MOhm,
        String source,
        @Nullable SecondColour secondColour,
        Map<CoatFigure, List<String>> gives) {

    static final Set<String> METALS = new LinkedHashSet<>(List.of("AL6061", "AL7005", "STEEL", "TI"));

    private static final int MOST_MASKS = 30;
    private static final BigDecimal GREATEST_BAR = BigDecimal.valueOf(20);
    private static final BigDecimal GREATEST_MOHM = BigDecimal.valueOf(1000);

    /** One whose records give no characteristic. */
    public NewFinish(
            String what,
            List<String> metals,
            List<String> blastOperations,
            List<String> coatOperations,
            List<String> masks,
            @Nullable BigDecimal most_bar,
            @Nullable BigDecimal mostEarth_MOhm,
            String source) {
        this(what, metals, blastOperations, coatOperations, masks, most_bar, mostEarth_MOhm, source, null, Map.of());
    }

    /** The same, giving characteristics. */
    public NewFinish giving(Map<CoatFigure, List<String>> codes) {
        return with(secondColour, codes);
    }

    /** The same with a second colour. */
    public NewFinish with(@Nullable SecondColour second) {
        return with(second, gives);
    }

    private NewFinish with(@Nullable SecondColour second, Map<CoatFigure, List<String>> codes) {
        return new NewFinish(
                what, metals, blastOperations, coatOperations, masks, most_bar, mostEarth_MOhm, source, second, codes);
    }

    public NewFinish {
        gives = Map.copyOf(gives);
        metals = List.copyOf(metals);
        blastOperations = List.copyOf(blastOperations);
        coatOperations = List.copyOf(coatOperations);
        masks = List.copyOf(masks);
    }

    NewFinish checked(String deed) {
        if (metals.isEmpty() || !METALS.containsAll(metals)) {
            throw Refusal.input(
                    "metals",
                    deed,
                    metals.isEmpty() ? "It is for no metal." : "It names a metal that nobody knows.",
                    "Choose from " + String.join(", ", METALS) + ".");
        }
        List<String> blast = codes("blastOperations", deed, blastOperations);
        List<String> coat = codes("coatOperations", deed, coatOperations);
        if (blast.isEmpty() && coat.isEmpty()) {
            throw Refusal.input(
                    "coatOperations", deed, "It names no operation.", "Enter the codes as the routes have them.");
        }
        blast.stream().filter(coat::contains).findFirst().ifPresent(both -> {
            throw Refusal.input(
                    "coatOperations",
                    deed,
                    "Operation " + both + " is named for the blast and for the coat.",
                    "Name it once.");
        });
        return new NewFinish(
                TypedText.line("what", "What it is", deed, what, 200),
                METALS.stream().filter(metals::contains).toList(),
                blast,
                coat,
                landmarks(deed),
                above("mostBar", "The greatest blast pressure", deed, most_bar, GREATEST_BAR, "bar"),
                mostEarth_MOhm == null
                        ? null
                        : above(
                                "mostEarth",
                                "The greatest earth resistance",
                                deed,
                                mostEarth_MOhm,
                                GREATEST_MOHM,
                                "MΩ"),
                TypedText.line("source", "The source", deed, source, 400),
                secondColour == null ? null : secondColour.checked(deed, coat),
                gives(deed));
    }

    /** A line of film has a code of its own; those of a further operation stand after them. */
    private Map<CoatFigure, List<String>> gives(String deed) {
        Map<CoatFigure, List<String>> checked = GivenCodes.checked(CoatFigure.class, deed, gives);
        int lines = secondColour == null
                ? 0
                : (int) secondColour.lines().stream()
                        .filter(line -> !line.isBlank())
                        .count();
        for (CoatFigure figure : List.of(CoatFigure.LINE, CoatFigure.BLEED)) {
            int codes = checked.getOrDefault(figure, List.of()).size();
            if (codes > 0 && (lines == 0 || codes % lines != 0)) {
                throw Refusal.input(
                        "gives" + figure,
                        deed,
                        "Its second colour has " + lines + " lines of film, and " + codes
                                + " codes are given for them.",
                        "Enter one code to each line, in their order, and those of a further operation after them.");
            }
        }
        return checked;
    }

    static List<String> codes(String field, String deed, List<String> typed) {
        List<String> codes = typed.stream()
                .map(String::strip)
                .filter(code -> !code.isEmpty())
                .distinct()
                .toList();
        codes.stream()
                .filter(code -> !code.matches("[A-Za-z0-9][A-Za-z0-9.-]{0,15}"))
                .findFirst()
                .ifPresent(code -> {
                    throw Refusal.input(
                            field, deed, code + " is no code of an operation.", "Enter codes such as 140 or 150.4.");
                });
        return codes;
    }

    private List<String> landmarks(String deed) {
        List<String> read = masks.stream()
                .filter(mask -> !mask.isBlank())
                .map(mask -> TypedText.line("masks", "A landmark", deed, mask, 60))
                .toList();
        if (read.size() > MOST_MASKS || read.size() != Set.copyOf(read).size()) {
            throw Refusal.input(
                    "masks",
                    deed,
                    read.size() > MOST_MASKS
                            ? read.size() + " landmarks are more than " + MOST_MASKS + "."
                            : "A landmark stands there twice.",
                    "Write one landmark to a line, each once.");
        }
        return read;
    }

    private static BigDecimal above(
            String field, String what, String deed, @Nullable BigDecimal value, BigDecimal most, String unit) {
        if (value == null || value.signum() <= 0 || value.compareTo(most) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    value == null
                            ? what + " is missing."
                            : what + ", " + value.toPlainString() + " " + unit + ", does not lie above 0 and up to "
                                    + most + " " + unit + ".",
                    "Enter it as the procedure says.");
        }
        return value;
    }

    /** What was typed into one field, by white space and commas. */
    static List<String> words(String typed) {
        return GivenCodes.typed(typed);
    }
}
