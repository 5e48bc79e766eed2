package org.trammel.shop.materials;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.Settings;

/** Which tempers of a metal the shop takes: tube of another answers to none of the heat that follows. */
@Component
class Tempers {

    /** Designations of EN 515 as they stand behind an alloy; the W of AW in the alloy's own name is none. */
    private static final Pattern TEMPER = Pattern.compile("(?<![A-Z0-9])(T[0-9]{1,4}|H[0-9]{2,3}|F|O|W)(?![A-Z0-9])");

    private static final Map<String, String> SETTINGS =
            Map.of("AL6061", "tube.tempers.6061", "AL7005", "tube.tempers.7005");

    private final Settings settings;

    Tempers(Settings settings) {
        this.settings = settings;
    }

    /** Why the temper of a lot is not one the shop takes; empty if it is, or if none is asked of its metal. */
    Optional<String> against(@Nullable String metal, String grade) {
        List<String> taken = taken(metal);
        String has = of(grade);
        if (taken.isEmpty() || taken.contains(has)) {
            return Optional.empty();
        }
        return Optional.of((has.isEmpty() ? "its temper is not on record" : "its temper is " + has) + ", and "
                + String.join(" or ", taken) + " is asked for");
    }

    private List<String> taken(@Nullable String metal) {
        String setting = metal == null ? null : SETTINGS.get(metal);
        return setting == null
                ? List.of()
                : Arrays.stream(settings.text(setting).toUpperCase(Locale.ROOT).split("[\\s,;]+"))
                        .filter(word -> !word.isEmpty())
                        .toList();
    }

    /** The temper in what was entered as alloy and temper; empty where none stands there. */
    static String of(String grade) {
        Matcher found = TEMPER.matcher(grade.toUpperCase(Locale.ROOT));
        String last = "";
        while (found.find()) {
            last = found.group(1);
        }
        return last;
    }
}
