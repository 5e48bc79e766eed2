package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.ChildSheet;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.RouteSheet;

/** A route's characteristics, the children's first, joined with the nominals of one design revision. */
final class CharacteristicList {

    private static final int NAMED = 4;
    private static final String ANY_METAL = "ANY";

    private final Map<String, CharacteristicLine> lines = new LinkedHashMap<>();
    private final Map<String, Nominal> given;

    private CharacteristicList(Map<String, Nominal> given) {
        this.given = given;
    }

    static CharacteristicList of(RouteSheet route, Map<String, Nominal> given) {
        CharacteristicList list = new CharacteristicList(given);
        for (ChildSheet child : route.children()) {
            list.add(child.part() + "/", child.route());
        }
        list.add("", route);
        return list;
    }

    private void add(String part, RouteSheet route) {
        for (OperationSheet operation : route.operations()) {
            for (CharacteristicSheet characteristic : operation.characteristics()) {
                String code = part + characteristic.code();
                lines.put(
                        code,
                        line(code, route.kind(), part + operation.code(), operation, characteristic, given.get(code)));
            }
        }
    }

    private static CharacteristicLine line(
            String code,
            String kind,
            String operationCode,
            OperationSheet operation,
            CharacteristicSheet says,
            @Nullable Nominal given) {
        BigDecimal nominal = given == null ? says.nominal() : given.nominal();
        boolean ownLimits = given != null && given.overridesLimits();
        boolean lacking = says.fromDesign() && given == null;
        boolean none = !says.fromDesign() && says.nominal() == null;
        BigDecimal from = nominal == null ? BigDecimal.ZERO : nominal;
        BigDecimal routeFrom = says.fromDesign() ? from : says.nominal() == null ? BigDecimal.ZERO : says.nominal();
        return new CharacteristicLine(
                code,
                kind,
                operationCode,
                operation.name(),
                says.name(),
                says.unit(),
                says.decimals(),
                says.fromDesign(),
                lacking || nominal == null || none && nominal.signum() == 0 ? null : Nominal.plain(nominal),
                says.fromDesign() ? null : says.nominal(),
                lacking ? null : limit(from, ownLimits ? given.lowerDeviation() : says.lowerDeviation()),
                lacking ? null : limit(from, ownLimits ? given.upperDeviation() : says.upperDeviation()),
                lacking ? null : limit(routeFrom, says.lowerDeviation()),
                lacking ? null : limit(routeFrom, says.upperDeviation()),
                says.lowerDeviation(),
                says.upperDeviation(),
                ownLimits,
                lacking,
                says.sided(),
                says.gaugeKind(),
                says.points(),
                says.rule().name().toLowerCase(Locale.ROOT),
                says.signers().stream()
                        .map(signer -> signer.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                        .toList());
    }

    private static @Nullable BigDecimal limit(BigDecimal from, @Nullable BigDecimal deviation) {
        return deviation == null ? null : Nominal.plain(from.add(deviation));
    }

    List<CharacteristicLine> lines() {
        return new ArrayList<>(lines.values());
    }

    Optional<CharacteristicLine> line(String code) {
        return Optional.ofNullable(lines.get(code));
    }

    List<Lacking> lacking() {
        return lines.values().stream()
                .filter(CharacteristicLine::lacking)
                .map(line -> new Lacking(line.code(), line.operation(), line.name(), line.unit()))
                .toList();
    }

    void refuseIfLacking(String deed) {
        List<Lacking> lacking = lacking();
        if (!lacking.isEmpty()) {
            String named = lacking.stream()
                    .limit(NAMED)
                    .map(one -> one.code() + " " + one.name())
                    .collect(Collectors.joining(", "));
            String more = lacking.size() > NAMED ? " and " + (lacking.size() - NAMED) + " more" : "";
            throw Refusal.state(
                    deed,
                    "The characteristic list lacks a nominal for " + named + more + ".",
                    "Enter them in the draft; if this revision is no draft, begin the next one.");
        }
    }

    /** A route chosen after the nominals were given, or a nominal given long ago, may not move what the route fixes. */
    void refuseIfMoved(String deed) {
        lines.values().stream()
                .filter(line -> NominalCheck.moves(line, given.get(line.code())))
                .findFirst()
                .ifPresent(line -> {
                    throw Refusal.state(
                            deed,
                            NominalCheck.fixed(line, given.get(line.code())),
                            "Take that nominal away in a draft; if this revision is no draft, begin the next one.");
                });
    }

    static void refuseOtherMetal(String deed, String metal, RouteSheet route) {
        if (!route.metal().equals(metal) && !route.metal().equals(ANY_METAL)) {
            throw Refusal.state(
                    deed,
                    "Route " + route.code() + " is for " + FrameWords.metal(route.metal()) + "; the design is for "
                            + FrameWords.metal(metal) + ".",
                    "Choose a route for " + FrameWords.metal(metal) + ".");
        }
    }
}
