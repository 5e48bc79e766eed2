package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.Paper;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** The paper that drawings and templates are laid out for. */
@Component
class PaperSizes {

    /** Where sheets are US Letter (Unicode CLDR 47, paperSize). */
    private static final Set<String> LETTER =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

    private final Settings settings;

    PaperSizes(Settings settings) {
        this.settings = settings;
    }

    /** The paper of the shop's region. */
    Paper usual() {
        return LETTER.contains(settings.locale().getCountry()) ? Paper.US_LETTER : Paper.A4;
    }

    /** What can be chosen, by name. */
    static Map<String, String> names() {
        Map<String, String> papers = new LinkedHashMap<>();
        papers.put(Paper.A4.name(), "A4");
        papers.put(Paper.US_LETTER.name(), "US Letter");
        return papers;
    }

    /**
     * The one that was asked for; the usual one if none was.
     *
     * @param undone what is not done if there is no such paper
     */
    Paper of(@Nullable String typed, String undone) {
        if (typed == null || typed.isBlank()) {
            return usual();
        }
        return Arrays.stream(Paper.values())
                .filter(each -> each.name().equals(typed))
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "paper", undone, "“" + typed + "” is no paper it is laid out for.", "Choose A4 or US_LETTER."));
    }
}
