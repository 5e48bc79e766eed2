package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.coats.CoatAsked;
import org.trammel.shop.coats.CoatFigure;
import org.trammel.shop.coats.Films;
import org.trammel.shop.coats.Finishes;
import org.trammel.shop.coats.NewFinish;
import org.trammel.shop.coats.SecondColour;
import org.trammel.shop.coats.Surfaces;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * The finishes of the invented workshop, in force since 10 March, and what the crew recorded by them: what was coated before
 * goes by the sheets, as it did there.
 */
@Component
@Profile("demo")
class DemoCoats {

    private static final Instant IN_FORCE = DemoStory.at("2026-03-10T08:00");
    private static final String SOURCE = "powder sheet and procedure HP-07 of the shop, invented";
    private static final List<String> MASKS =
            List.of("threads of the shell", "head-tube seats", "seat-tube bore", "brake faces and ground spot");
    private static final List<String> MAP = List.of(
            "head tube",
            "down tube upper",
            "down tube lower",
            "top tube front",
            "top tube rear",
            "seat tube upper",
            "seat tube lower",
            "seatstays",
            "chainstays",
            "shell");
    private static final List<String> FILM = List.of("150-3a", "150-3b", "150-3c", "150-3d");

    private final Finishes finishes;
    private final Surfaces surfaces;
    private final Films films;
    private final Travellers travellers;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoCoats(
            Finishes finishes, Surfaces surfaces, Films films, Travellers travellers, DemoActs acts, DemoClock clock) {
        this.finishes = finishes;
        this.surfaces = surfaces;
        this.films = films;
        this.travellers = travellers;
        this.acts = acts;
        this.clock = clock;
    }

    void putInForce() {
        clock.setTo(IN_FORCE);
        List<String> aluminium = List.of("AL6061", "AL7005");
        one("F-ALU", "powder on aluminium", aluminium, List.of("140"), List.of("150"), MASKS, "150", "120", null);
        one(
                "F-STEEL",
                "primer and powder on steel",
                List.of("STEEL"),
                List.of("140"),
                List.of("150"),
                MASKS,
                "150",
                "120",
                null);
        one(
                "F-TWO",
                "two colours and clear on aluminium",
                aluminium,
                List.of(),
                List.of("150.1", "150.4", "150.8"),
                List.of(),
                "150.9",
                "240",
                new SecondColour(List.of("150.3"), List.of("150.5"), List.of("down tube, from the shell"), 120));
    }

    private void one(
            String code,
            String what,
            List<String> metals,
            List<String> blast,
            List<String> coat,
            List<String> masks,
            String film,
            String most,
            @Nullable SecondColour second) {
        finishes.putInForce(
                acts.by("TR"),
                code,
                new NewFinish(what, metals, blast, coat, masks, new BigDecimal("2.5"), BigDecimal.ONE, SOURCE)
                        .with(second)
                        .giving(Map.of(
                                CoatFigure.PRESSURE,
                                blast.isEmpty() ? List.of() : List.of("140-1"),
                                CoatFigure.MARGIN,
                                numbered(coat, "-1"),
                                CoatFigure.EARTH,
                                numbered(coat, "-2"),
                                CoatFigure.FILM,
                                FILM,
                                CoatFigure.LINE,
                                second == null ? List.of() : List.of("150.3-1"),
                                CoatFigure.BLEED,
                                second == null ? List.of() : List.of("150.5-1"))),
                new CoatAsked(
                        List.of(film),
                        MAP,
                        CoatAsked.Rule.EIGHTY_TWENTY,
                        new BigDecimal("60"),
                        new BigDecimal(most),
                        null,
                        false,
                        false,
                        null,
                        null,
                        null,
                        null));
    }

    private static List<String> numbered(List<String> operations, String end) {
        return operations.stream().map(operation -> operation + end).toList();
    }

    /** Whether the crew recorded what is done at an operation that has not begun yet, or began by a finish. */
    boolean recorded(FrameSheet.OperationSheetOfFrame at) {
        Instant begun =
                at.line().startedAt() == null ? clock.instant() : at.line().startedAt();
        return (at.line().code().equals("140") || at.line().code().startsWith("150")) && !begun.isBefore(IN_FORCE);
    }

    /** What is recorded before a frame is blasted, or sprayed. */
    void before(DemoOrder order, FrameSheet.OperationSheetOfFrame at) {
        long operation = at.line().operationId();
        String metal = travellers.headOf(operation).metal();
        if (!recorded(at) || finishes.guarding(at.line().code(), metal).isEmpty()) {
            return;
        }
        if (at.line().code().equals("140") && surfaces.of(operation).blast() == null) {
            MASKS.forEach(landmark -> surfaces.mask(acts.by("LM"), operation, landmark, true));
            surfaces.blasted(
                    acts.by("LM"),
                    operation,
                    new Surfaces.Blasted(
                            order.lot("MEDIA", today()), new BigDecimal("2"), "PG-1", "white cloth stays white"));
            measure(operation, "20.5", "48", "20");
        } else if (sprays(at) && surfaces.of(operation).spray() == null) {
            measure(operation, "20.5", "48", "19.5");
            surfaces.spraying(
                    acts.by("LM"),
                    operation,
                    new Surfaces.Spraying(order.lot("POWDER", today()), new BigDecimal("0.2"), "OM-1"));
        }
    }

    private static boolean sprays(FrameSheet.OperationSheetOfFrame at) {
        return List.of("150", "150.1", "150.4", "150.8").contains(at.line().code());
    }

    private java.time.LocalDate today() {
        return clock.instant().atZone(DemoOrder.ZONE).toLocalDate();
    }

    private void measure(long operation, String air, String humidity, String metal) {
        surfaces.measured(
                acts.by("LM"),
                operation,
                new MetalAir(new BigDecimal(air), new BigDecimal(humidity), new BigDecimal(metal), "TH-1", "IR-1"));
    }

    /** A film of even thickness, read by two people where the route asks two. */
    void film(FrameSheet.OperationSheetOfFrame at) {
        boolean open = at.characteristics().stream()
                .anyMatch(c -> FILM.contains(c.code()) && !c.state().settled());
        if (recorded(at) && open) {
            map(at.line().operationId(), "LM", null);
            boolean second = travellers.operation(at.line().operationId()).characteristics().stream()
                    .anyMatch(c -> c.state() == CharacteristicState.FIRST_READ);
            if (second) {
                map(at.line().operationId(), "JA", null);
            }
        }
    }

    /** The map of a frame whose powder is thin at one place. */
    void thin(long operation, int place) {
        map(operation, "LM", place);
    }

    private void map(long operation, String by, @Nullable Integer thin) {
        boolean steel = travellers.headOf(operation).metal().equals("STEEL");
        films.take(
                acts.by(by),
                operation,
                IntStream.range(0, MAP.size())
                        .boxed()
                        .collect(Collectors.toMap(
                                MAP::get,
                                i -> String.valueOf(thin == null ? 66 + 3 * i % 10 : i.equals(thin) ? 41 : 62 + i))),
                steel ? "MG-1" : "EC-1");
    }

    /** Metal too near the dew point: the coat waits, and the clock of the blast runs. */
    void tooCold(long travellerId) {
        FrameSheet.OperationSheetOfFrame at =
                java.util.Objects.requireNonNull(travellers.sheet(travellerId).at());
        measure(at.line().operationId(), "21", "68", "17.2");
    }
}
