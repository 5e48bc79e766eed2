package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.coating.FilmArea;
import org.trammel.calc.coating.FilmRule;
import org.trammel.shop.web.OnlyTheseNames;

/** Readings of a film by area, and the rule they are judged by. */
@OnlyTheseNames
record FilmRequest(
        @Schema(description = "100 at most") List<Area> areas,

        Rule rule,

        @Schema(description = "EIGHTY_TWENTY: thickness asked for; else the least of the specification")
        BigDecimal leastUm,

        @Schema(
                description =
                        "SPOTS_AND_AREAS: most of the specification; EIGHTY_TWENTY: of any reading, may be left out")
        @Nullable
        BigDecimal mostUm,

        @Schema(description = "EIGHTY_TWENTY: fewer than a fifth may lie below, not a fifth at most; false if left out")
        @Nullable
        Boolean strict,

        @Schema(description = "SPOTS_AND_AREAS: restriction level; THREE if left out")
        FilmRule.@Nullable Level level) {

    private static final int MOST_AREAS = 100;
    private static final int MOST_SPOTS = 100;
    private static final int MOST_READINGS = 100;

    enum Rule {
        EIGHTY_TWENTY,
        SPOTS_AND_AREAS,
        MEAN_OF_AREAS
    }

    @OnlyTheseNames
    @Schema(name = "FilmArea")
    record Area(
            String name,

            @Schema(description = "readings of each spot in µm, 100 spots of 100 at most")
            List<List<BigDecimal>> spotsUm) {}

    List<FilmArea> filmAreas() {
        NotComputed.boundedBy(MOST_AREAS, "areas", areas);
        List<FilmArea> read = new ArrayList<>();
        for (Area area : areas) {
            String at = "areas[" + read.size() + "].";
            NotComputed.boundedBy(MOST_SPOTS, at + "spotsUm", area.spotsUm());
            for (int spot = 0; spot < area.spotsUm().size(); spot++) {
                NotComputed.boundedBy(
                        MOST_READINGS,
                        at + "spotsUm[" + spot + "]",
                        area.spotsUm().get(spot));
            }
            read.add(new FilmArea(NotComputed.named(area.name(), at + "name"), area.spotsUm()));
        }
        return read;
    }

    FilmRule filmRule() {
        return switch (rule) {
            case EIGHTY_TWENTY -> new FilmRule.EightyTwenty(leastUm, Boolean.TRUE.equals(strict), mostUm);
            case SPOTS_AND_AREAS -> {
                if (mostUm == null) {
                    throw NotComputed.input("mostUm", "mostUm is missing: spots and areas have a most.");
                }
                yield new FilmRule.SpotsAndAreas(leastUm, mostUm, level == null ? FilmRule.Level.THREE : level);
            }
            case MEAN_OF_AREAS -> new FilmRule.MeanOfAreas(leastUm);
        };
    }
}
