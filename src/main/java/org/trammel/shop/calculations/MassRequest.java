package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.FramePart;
import org.trammel.shop.web.OnlyTheseNames;

/** What a frame is made of, and what it weighed. */
@OnlyTheseNames
record MassRequest(
        @Schema(description = "200 at most") List<Part> parts,

        @Schema(description = "half width within which walls of drawn tube lie; 0.05 if left out") @Nullable
        BigDecimal wallHalfWidthMm,

        @Schema(description = "what the scale said, to compare") @Nullable
        Weighing weighed) {

    static final int MOST_PARTS = 200;

    enum Kind {
        /** Outside, wall and length or sections, density, count. */
        TUBE,
        /** Outside, bore, length, density. */
        BORED,
        /** Mass and its standard uncertainty, count. */
        PIECES,
        /** Mass and its standard uncertainty. */
        WELD
    }

    @OnlyTheseNames
    @Schema(
            description = "TUBE: outsideMm, densityKgPerM3, wallMm and lengthMm or sections, count. BORED: outsideMm,"
                    + " boreMm, lengthMm, densityKgPerM3. PIECES: massKg, uKg, count. WELD: massKg, uKg")
    record Part(
            Kind kind,
            String name,
            @Nullable BigDecimal outsideMm,
            @Nullable BigDecimal boreMm,
            @Nullable BigDecimal wallMm,
            @Nullable BigDecimal lengthMm,

            @Schema(description = "end to end, 20 at most, in place of wallMm and lengthMm") @Nullable
            List<Stretch> sections,

            @Nullable BigDecimal densityKgPerM3,

            @Schema(description = "of all of them together") @Nullable
            BigDecimal massKg,

            @Schema(description = "standard uncertainty of that; 0 if left out") @Nullable
            BigDecimal uKg,

            @Schema(description = "how many alike, 100 at most; 1 if left out") @Nullable
            Integer count) {

        private static final int MOST_SECTIONS = 20;
        private static final int MOST_ALIKE = 100;

        /** As the computation knows it; at is where it stands in the list. */
        FramePart part(String at) {
            NotComputed.boundedBy(MOST_SECTIONS, at + "sections", sections);
            NotComputed.named(name, at + "name");
            int alike = NotComputed.count(count, MOST_ALIKE, at + "count");
            return switch (kind) {
                case TUBE ->
                    new FramePart.Tube(
                            name,
                            needed(outsideMm, at + "outsideMm"),
                            stretches(at),
                            needed(densityKgPerM3, at + "densityKgPerM3"),
                            alike);
                case BORED ->
                    new FramePart.Bored(
                            name,
                            needed(outsideMm, at + "outsideMm"),
                            needed(boreMm, at + "boreMm"),
                            needed(lengthMm, at + "lengthMm"),
                            needed(densityKgPerM3, at + "densityKgPerM3"));
                case PIECES -> new FramePart.Pieces(name, needed(massKg, at + "massKg"), NotComputed.or(uKg, 0), alike);
                case WELD -> new FramePart.Weld(name, needed(massKg, at + "massKg"), NotComputed.or(uKg, 0));
            };
        }

        private List<FramePart.Section> stretches(String at) {
            if (sections == null) {
                double wall = needed(wallMm, at + "wallMm");
                return List.of(new FramePart.Section(wall, wall, needed(lengthMm, at + "lengthMm")));
            }
            if (wallMm != null || lengthMm != null) {
                throw NotComputed.input(
                        at + "sections",
                        "The " + name + " is given by its sections or by one wall and length, not by both.");
            }
            return sections.stream().map(Stretch::section).toList();
        }

        private double needed(@Nullable BigDecimal figure, String field) {
            return NotComputed.needed(figure, field, "the " + name + " has none.");
        }
    }

    @OnlyTheseNames
    record Stretch(BigDecimal wallFromMm, BigDecimal wallToMm, BigDecimal lengthMm) {

        FramePart.Section section() {
            return new FramePart.Section(wallFromMm.doubleValue(), wallToMm.doubleValue(), lengthMm.doubleValue());
        }
    }

    @OnlyTheseNames
    record Weighing(
            BigDecimal weighedKg,

            @Schema(description = "standard uncertainty of the scale")
            BigDecimal scaleUKg,

            @Schema(description = "standard uncertainties from where a difference is flagged; 3 if left out") @Nullable
            BigDecimal limit,

            @Schema(description = "walls of tube on hand, 50 at most") @Nullable
            List<BigDecimal> wallsMm,

            @Schema(description = "shares of the usual weld looked at, 20 at most") @Nullable
            List<BigDecimal> weldShares) {}
}
