package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Standing;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.ConfirmationOverrides;
import org.trammel.shop.travellers.FrameSheet;

/**
 * Whether a welder's qualification reaches what is to be welded: standard, metal, process, the walls of the drawing and the
 * joint. That it is held and in date, or was overridden, the operation asks before.
 */
@Component
class Welders {

    private final Qualifications qualifications;
    private final Designs designs;
    private final Crew crew;
    private final ConfirmationOverrides overrides;
    private final Settings settings;

    Welders(
            Qualifications qualifications,
            Designs designs,
            Crew crew,
            ConfirmationOverrides overrides,
            Settings settings) {
        this.qualifications = qualifications;
        this.designs = designs;
        this.crew = crew;
        this.overrides = overrides;
        this.settings = settings;
    }

    /**
     * Refuses somebody whose qualification does not reach it, and a procedure that does not.
     *
     * @param operation asks for a kind of qualification, or for none
     */
    void requireCovered(
            Procedure procedure,
            FrameSheet.Head head,
            FrameSheet.OperationSheetOfFrame operation,
            long person,
            String deed) {
        NewProcedure content = procedure.content();
        List<BigDecimal> walls = walls(head);
        walls.stream().filter(wall -> !content.isForWall(wall)).findFirst().ifPresent(wall -> {
            throw Refusal.state(
                    deed,
                    "Procedure " + procedure.called() + " is for walls of " + content.thicknessFrom_mm() + " to "
                            + content.thicknessTo_mm() + " mm; the drawing has one of " + wall.toPlainString() + " mm.",
                    "Call the QA lead: another procedure, or a revision of this one with its tests.");
        });
        List<BigDecimal> asked = walls.isEmpty()
                ? Arrays.asList(content.thicknessFrom_mm(), content.thicknessTo_mm()).stream()
                        .filter(Objects::nonNull)
                        .toList()
                : walls;
        List<Qualification> held = held(operation, person);
        List<@Nullable String> gaps =
                held.stream().map(one -> gap(one, content, asked)).toList();
        if (gaps.stream().anyMatch(Objects::isNull)) {
            return;
        }
        throw Refusal.person(
                deed,
                held.isEmpty()
                        ? crew.byId(person).initials() + " holds no qualification by "
                                + content.papers().welderStandard() + " for it."
                        : crew.byId(person).initials() + " holds " + held.get(0).standard() + " ("
                                + held.get(0).kind() + "); " + gaps.get(0),
                "Let somebody qualified for it weld, or have the test extended and entered by the QA lead.");
    }

    /** Those of the kind asked for that are in date; a lapsed one only where the QA lead overrode it for this operation. */
    private List<Qualification> held(FrameSheet.OperationSheetOfFrame operation, long person) {
        LocalDate today = settings.today();
        String kind = operation.qualification();
        boolean overridden = kind != null && overrides.given(operation.line().operationId(), person, kind);
        return qualifications.of(person).stream()
                .filter(one -> kind == null || one.kind().equals(kind))
                .filter(one -> one.state(today) == Standing.State.VALID
                        || overridden && one.state(today) == Standing.State.CONFIRMATION_LAPSED)
                .sorted(Comparator.comparing(one -> one.state(today)))
                .toList();
    }

    /** What it does not reach, as the end of a sentence; null if it reaches all. What it leaves empty it does not reach. */
    private static @Nullable String gap(Qualification held, NewProcedure asked, List<BigDecimal> walls) {
        String standard = asked.papers().welderStandard();
        if (!isPart(pressed(held.standard()), pressed(standard))) {
            return "the procedure asks for " + standard + ".";
        }
        String empty = firstEmpty(held);
        if (empty != null) {
            return "it names no " + empty + ", and what it leaves empty it does not cover.";
        }
        if (!isFor(words(Objects.requireNonNull(held.metal())), asked.metal())) {
            return "it is for " + held.metal() + ".";
        }
        if (!words(Objects.requireNonNull(held.process())).contains(asked.process())) {
            return "it is for process " + held.process() + ", and this is " + asked.process() + ".";
        }
        for (BigDecimal wall : walls) {
            if (!held.coversMm(wall)) {
                return "it is for walls of " + plain(held.thicknessFromMm()) + " to " + plain(held.thicknessToMm())
                        + " mm, and one of " + wall.toPlainString() + " mm is welded.";
            }
        }
        if (!words(Objects.requireNonNull(held.joint())).containsAll(asked.joints())) {
            return "it is for " + held.joint() + ", and " + String.join(" and ", asked.joints()) + " are welded.";
        }
        return null;
    }

    private static @Nullable String firstEmpty(Qualification held) {
        if (blank(held.metal())) {
            return "metal";
        }
        if (blank(held.process())) {
            return "process";
        }
        if (held.thicknessFromMm() == null && held.thicknessToMm() == null) {
            return "range of walls";
        }
        return blank(held.joint()) ? "joint" : null;
    }

    private static boolean blank(@Nullable String typed) {
        return typed == null || typed.isBlank();
    }

    /** The standard itself or an edition of it; one of several parts is none of the others, nor a standard without parts. */
    private static boolean isPart(String held, String asked) {
        if (!held.startsWith(asked)) {
            return false;
        }
        String rest = held.substring(asked.length());
        return rest.isEmpty() || rest.charAt(0) != '-' && !Character.isDigit(rest.charAt(0));
    }

    /** Of one that names an alloy the alloy counts, not its family. */
    private static boolean isFor(Set<String> named, String metal) {
        boolean alloy = named.stream().anyMatch(word -> word.endsWith("6061") || word.endsWith("7005"));
        return named.stream()
                .filter(word -> !alloy || word.endsWith("6061") || word.endsWith("7005"))
                .anyMatch(called(metal)::contains);
    }

    /** Walls at the ends of the tubes of the drawing, thinnest first; a butted tube is not welded in its middle. */
    List<BigDecimal> walls(FrameSheet.Head head) {
        if (head.designRevisionId() == null) {
            return List.of();
        }
        return designs.revision(head.designRevisionId()).geometry().entrySet().stream()
                .filter(input ->
                        input.getKey().contains("_WALL") && !input.getKey().contains("MIDDLE"))
                .map(input -> new BigDecimal(input.getValue()))
                .sorted()
                .distinct()
                .toList();
    }

    /**
     * The thickest that the thinner wall of a node can be by the drawing: of the tubes that its words name, the thinnest by its
     * thicker end; of a node that names none, the thinnest wall there is. Empty without a drawing.
     */
    Optional<BigDecimal> thickestAt(FrameSheet.Head head, String node) {
        if (head.designRevisionId() == null) {
            return Optional.empty();
        }
        String words = node.toLowerCase(Locale.ROOT);
        Map<String, BigDecimal> ends = new HashMap<>();
        designs.revision(head.designRevisionId()).geometry().forEach((input, typed) -> {
            int wall = input.indexOf("_WALL");
            if (wall > 0 && !input.contains("MIDDLE")) {
                String tube = input.substring(0, wall).replace('_', ' ').toLowerCase(Locale.ROOT);
                ends.merge(tube, new BigDecimal(typed), BigDecimal::max);
            }
        });
        return ends.entrySet().stream()
                .filter(tube -> words.contains(tube.getKey()))
                .map(Map.Entry::getValue)
                .min(Comparator.naturalOrder())
                .or(() -> walls(head).stream().findFirst());
    }

    private static Set<String> called(String metal) {
        return switch (metal) {
            case "AL6061" -> Set.of("AL6061", "AL", "ALUMINIUM", "6061");
            case "AL7005" -> Set.of("AL7005", "AL", "ALUMINIUM", "7005");
            case "TI" -> Set.of("TI", "TITANIUM");
            default -> Set.of("STEEL", "25CRMO4");
        };
    }

    private static Set<String> words(String typed) {
        return Arrays.stream(typed.toUpperCase(Locale.ROOT).split("[^A-Z0-9]+")).collect(Collectors.toSet());
    }

    private static String pressed(String standard) {
        return standard.toUpperCase(Locale.ROOT).replaceAll("\\s", "");
    }

    private static String plain(@Nullable BigDecimal figure) {
        return figure == null ? "any" : figure.stripTrailingZeros().toPlainString();
    }
}
