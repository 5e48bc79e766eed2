package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One invented order, as the file tells it.
 *
 * @param until where it stands on the demo morning: "100:2" is operation 100 with two steps ticked, "all" is every
 *     operation done, "ship DATE" is shipped, "design" is not released; parts are told apart by "FT 150:6;SA 140:0"
 * @param anchors when operations began, in the shop's time, by operation or its first digits
 * @param nominals by characteristic; "*-7" is every characteristic that ends so
 * @param gauges which height gauge was used at an operation
 */
record DemoOrder(
        String order,
        String description,
        String route,
        int rider,
        LocalDate ordered,
        LocalDate promised,
        BigDecimal price,
        @Nullable String family,
        String until,
        @Nullable String welder,
        @Nullable String jig,
        @Nullable String filler,
        @Nullable String run,
        @Nullable Map<String, BigDecimal> geometry,
        @Nullable Map<String, BigDecimal> nominals,
        @Nullable Map<String, LocalDateTime> anchors,
        @Nullable Map<String, String> gauges) {

    static final ZoneId ZONE = ZoneId.of("Europe/Stockholm");

    private static final LocalDate SECOND_BOTTLE = LocalDate.parse("2026-03-09");

    String metal() {
        if (route.contains("6061")) {
            return "AL6061";
        }
        if (route.contains("7005")) {
            return "AL7005";
        }
        return route.startsWith("TI") ? "TI" : "STEEL";
    }

    String tubes() {
        return switch (metal()) {
            case "AL6061" -> order.equals("O-103") ? "TL-6061-191" : "TL-6061-188";
            case "AL7005" -> "TL-7005-073";
            case "TI" -> "TL-TI-017";
            default -> "TL-CRMO-052";
        };
    }

    /** Head tubes and shells of its metal. */
    String fittings() {
        return switch (metal()) {
            case "AL6061" -> "TF-6061-021";
            case "AL7005" -> "TF-7005-022";
            case "TI" -> "TF-TI-024";
            default -> "TF-CRMO-023";
        };
    }

    /** What is walked: the whole, or the parts that the file tells apart. */
    Set<String> parts() {
        return until.startsWith("FT ") ? Set.of("FT", "SA") : Set.of("");
    }

    /** The lot a step of that kind takes on a day. */
    String lot(String kind, LocalDate day) {
        return switch (kind) {
            case "TUBE", "FITTING" -> tubes();
            case "FILLER" -> filler == null ? "FL-4643-022" : filler;
            case "FLUX" -> "FX-06";
            case "GAS" -> day.isBefore(SECOND_BOTTLE) ? "AR-0330" : "AR-0331";
            case "MEDIA" ->
                switch (metal()) {
                    case "STEEL" -> "BM-ALOX-03";
                    case "TI" -> "BM-GLASS-08";
                    default -> "BM-GLASS-07";
                };
            case "POWDER" -> order.equals("O-114") ? "PW-SAND-04" : "PW-GREEN-12";
            default -> "BR-6902-11";
        };
    }

    /** The time an operation began, if the file tells it. */
    @Nullable
    Instant anchor(String code) {
        if (anchors == null) {
            return null;
        }
        return anchors.entrySet().stream()
                .filter(e -> code.startsWith(e.getKey()))
                .map(e -> e.getValue().atZone(ZONE).toInstant())
                .findFirst()
                .orElse(null);
    }

    /** The nominal of a characteristic the design must give. */
    @Nullable
    BigDecimal nominal(String code) {
        if (nominals == null) {
            return null;
        }
        String bare = code.substring(code.indexOf('/') + 1);
        BigDecimal exact = nominals.getOrDefault(code, nominals.get(bare));
        return exact != null ? exact : nominals.get("*" + bare.substring(bare.lastIndexOf('-')));
    }
}
