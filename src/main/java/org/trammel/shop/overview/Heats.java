package org.trammel.shop.overview;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.Judged;
import org.trammel.shop.ovens.HeatLedgers;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.ovens.Runs;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.FrameStory;
import org.trammel.shop.travellers.OnTheFloor;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/** Reads the clocks of a frame, and what it saw of ovens, for its story. */
@Component
class Heats {

    private final Travellers travellers;
    private final Runs runs;
    private final HeatLedgers ledgers;
    private final OnTheFloor floor;
    private final Clock clock;

    Heats(Travellers travellers, Runs runs, HeatLedgers ledgers, OnTheFloor floor, Clock clock) {
        this.travellers = travellers;
        this.runs = runs;
        this.ledgers = ledgers;
        this.floor = floor;
        this.clock = clock;
    }

    private static List<FrameSheet.Head> inForce(FrameStory told) {
        return told.travellers().stream()
                .map(FrameStory.Of::head)
                .filter(head -> head.state() != TravellerState.WITHDRAWN)
                .toList();
    }

    /** Windows that run, or ran out on what has not gone on, and waiting times that are not over. */
    List<Story.ClockOf> clocks(FrameStory told) {
        Map<Long, String> parts = inForce(told).stream()
                .filter(head -> head.state().open())
                .collect(Collectors.toMap(FrameSheet.Head::travellerId, FrameSheet.Head::part));
        if (parts.isEmpty()) {
            return List.of();
        }
        Instant now = clock.instant();
        Map<Long, List<FrameSheet.OperationLine>> strips = told.travellers().stream()
                .collect(Collectors.toMap(
                        one -> one.head().travellerId(),
                        one -> one.operations().stream()
                                .map(FrameStory.At::line)
                                .toList()));
        Map<Long, Set<String>> coldSets = floor.coldSetsLeft(parts.keySet());
        List<Story.ClockOf> found = new ArrayList<>();
        travellers.clocks(parts.keySet()).forEach((id, all) -> {
            Windows.of(all, strips.getOrDefault(id, List.of()), coldSets.getOrDefault(id, Set.of()), now)
                    .forEach(window -> found.add(new Story.ClockOf(
                            parts.get(id),
                            window.name(),
                            window.endsAt(),
                            false,
                            window.closed(),
                            window.closed() ? "stopped" : "in-work")));
            all.stream()
                    .filter(one -> one.waitingAt(now))
                    .forEach(one -> found.add(
                            new Story.ClockOf(parts.get(id), one.name(), one.endsAt(), true, false, "waiting")));
        });
        found.sort(Comparator.comparing(Story.ClockOf::endsAt));
        return found;
    }

    List<Story.HeatOf> of(FrameStory told) {
        return inForce(told).stream()
                .map(head -> heat(told.travellers().get(0).head().serial(), head))
                .filter(heat -> !heat.runs().isEmpty() || !heat.visits().isEmpty())
                .toList();
    }

    private Story.HeatOf heat(String serial, FrameSheet.Head head) {
        List<Story.OvenRunOf> in = runs.of(serial, head.part()).stream()
                .flatMap(run -> run.frames().stream()
                        .filter(frame -> frame.travellerId() == head.travellerId())
                        .map(frame -> run(run, frame)))
                .toList();
        Optional<HeatLedgers.Sheet> ledger =
                in.isEmpty() ? Optional.empty() : ledgers.of(serial, head.part(), head.metal(), null, null);
        return new Story.HeatOf(
                head.part(),
                in,
                ledger.map(HeatLedgers.Sheet::words).orElse(null),
                ledger.map(HeatLedgers.Sheet::visits).orElse(List.of()).stream()
                        .map(visit -> new Story.VisitOf(
                                visit.run(),
                                visit.programme(),
                                visit.at(),
                                visit.hours().usual_h(),
                                visit.byRecord(),
                                visit.ahead()))
                        .toList());
    }

    private static Story.OvenRunOf run(Run run, Run.Loaded frame) {
        return new Story.OvenRunOf(
                run.code(),
                run.programme().called(),
                run.startedAt(),
                run.state().word(),
                verdict(run.judged()),
                frame.state().word());
    }

    private static String verdict(@org.jspecify.annotations.Nullable Judged judged) {
        if (judged == null) {
            return "";
        }
        return switch (judged) {
            case CONFORMING -> "conforming";
            case UNDECIDED -> "undecided";
            case NOT_CONFORMING -> "not conforming";
        };
    }
}
