package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.units.Answer;
import org.trammel.shop.routes.RouteBook;

/** Nominals as the computed frame gives them, for the characteristics of a route that ask for what it knows. */
@Component
class DrawnNominals {

    /** Finer than any gauge, coarser than what a computation rounds off. */
    private static final int COMPUTED_DECIMALS = 6;

    private final SawDrawer saws;
    private final MassBasis masses;
    private final Tolerances tolerances;
    private final RouteBook routes;

    DrawnNominals(SawDrawer saws, MassBasis masses, Tolerances tolerances, RouteBook routes) {
        this.saws = saws;
        this.masses = masses;
        this.tolerances = tolerances;
        this.routes = routes;
    }

    /**
     * A nominal from the drawing.
     *
     * @param value rounded to what the characteristic shows: what is frozen, printed and read back is one number
     * @param exact as it was computed; what is typed is held against this
     * @param tolerance of its kind
     */
    record FromDrawing(BigDecimal value, BigDecimal exact, Tolerance tolerance) {

        /** A typed nominal lies further from it than its kind allows; one that is typed as it is printed never does. */
        boolean contradicts(BigDecimal typed) {
            return typed.compareTo(value) != 0 && tolerance.isBeyond(typed, exact);
        }
    }

    /** By code, for those lines of a list that the route leaves to the design and the frame knows. */
    Map<String, FromDrawing> of(List<CharacteristicLine> lines, DesignSheet sheet) {
        SawRules rules = saws.rules();
        ComputedFrame computed = ComputedFrame.of(sheet, rules);
        Answer<MassBasis.Metal> metal = masses.of(sheet.metal());
        DrawnFeature.Drawn frame = new DrawnFeature.Drawn(
                new GivenInputs(sheet.geometry()),
                computed,
                FrameMass.of(sheet.geometry(), computed, metal),
                FrameMass.ofArm(sheet.geometry(), computed, rules, metal));
        Map<String, Tolerance> classes = tolerances.inForce();
        Map<String, FromDrawing> drawn = new LinkedHashMap<>();
        for (CharacteristicLine line : lines) {
            if (line.fromDesign()) {
                DrawnFeature.asked(line.kind(), line.name(), line.unit()).ifPresent(feature -> {
                    OptionalDouble value = feature.of(frame);
                    if (value.isPresent()) {
                        drawn.put(
                                line.code(),
                                new FromDrawing(
                                        rounded(value.getAsDouble(), line.decimals()),
                                        rounded(value.getAsDouble(), COMPUTED_DECIMALS),
                                        Objects.requireNonNull(classes.get(feature.toleranceClass()))));
                    }
                });
            }
        }
        return drawn;
    }

    private static BigDecimal rounded(double value, int decimals) {
        return Nominal.plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** Gives a draft every nominal its drawing knows and nobody typed, and takes away those it no longer knows. */
    void fill(DesignRevision revision) {
        Long route = revision.routeRevisionId();
        if (route == null) {
            return;
        }
        CharacteristicList list = CharacteristicList.of(routes.revision(route), revision.nominals());
        Map<String, Nominal> nominals = new LinkedHashMap<>();
        of(list.lines(), revision.sheet())
                .forEach((code, drawn) ->
                        nominals.put(code, narrower(list.line(code).orElseThrow(), drawn)));
        revision.takeFromDrawing(nominals);
    }

    /** Class and route both have limits; the narrower of the two hold on either side. */
    private static Nominal narrower(CharacteristicLine line, FromDrawing drawn) {
        BigDecimal lower = later(line.routeLower(), drawn.tolerance().lower(), 1);
        BigDecimal upper = later(line.routeUpper(), drawn.tolerance().upper(), -1);
        boolean own = !same(lower, line.routeLower()) || !same(upper, line.routeUpper());
        return own && !excludeEachOther(line, drawn.tolerance())
                ? new Nominal(drawn.value(), lower, upper, true)
                : Nominal.of(drawn.value());
    }

    /** Nothing can be inside the limits of both, so that one of them is wrong; the gate says so. */
    static boolean excludeEachOther(CharacteristicLine line, Tolerance tolerance) {
        BigDecimal lower = later(line.routeLower(), tolerance.lower(), 1);
        BigDecimal upper = later(line.routeUpper(), tolerance.upper(), -1);
        return lower != null && upper != null && lower.compareTo(upper) >= 0;
    }

    private static @Nullable BigDecimal later(@Nullable BigDecimal one, @Nullable BigDecimal other, int sign) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.compareTo(other) * sign >= 0 ? one : other;
    }

    private static boolean same(@Nullable BigDecimal one, @Nullable BigDecimal other) {
        return one == null || other == null ? one == other : one.compareTo(other) == 0;
    }
}
