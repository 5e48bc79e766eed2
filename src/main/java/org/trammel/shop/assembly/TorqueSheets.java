package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.assembly.TorqueSheet.State;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Reads what is to be torqued at an operation of a frame, and how far it is. */
@Service
@Transactional(readOnly = true)
public class TorqueSheets {

    private final FrameComponents components;
    private final TorqueRepository torques;
    private final AgainRepository agains;
    private final WitnessRepository witnesses;
    private final Travellers travellers;
    private final BuildRulesBook book;
    private final RideRepository rides;

    TorqueSheets(
            FrameComponents components,
            TorqueRepository torques,
            AgainRepository agains,
            WitnessRepository witnesses,
            Travellers travellers,
            BuildRulesBook book,
            RideRepository rides) {
        this.components = components;
        this.torques = torques;
        this.agains = agains;
        this.witnesses = witnesses;
        this.travellers = travellers;
        this.book = book;
        this.rides = rides;
    }

    /** Whether anything of a frame is torqued at an operation. */
    public boolean at(String serial, String part, String operation) {
        return components.any(serial)
                && components.of(serial, part).stream()
                        .map(FramePart::component)
                        .anyMatch(one -> !one.at(operation).isEmpty()
                                || one.leastInsertion_mm() != null
                                        && one.operation().equals(operation));
    }

    /** What is to be torqued or witnessed next at an operation, in a few words; empty where nothing is outstanding. */
    public Optional<String> next(String serial, String part, String operation, long operationId) {
        if (!components.any(serial)) {
            return Optional.empty();
        }
        TorqueSheet sheet = of(operationId, operation, components.of(serial, part));
        List<TorqueSheet.Line> open = sheet.outstanding();
        if (open.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(open.stream()
                .filter(line -> line.state() != State.TO_WITNESS)
                .findFirst()
                .map(line -> "Torque " + (sheet.done() + sheet.toWitness().size() + 1) + " of "
                        + sheet.lines().size() + ": " + line.fastener().name())
                .orElse(open.size() + (open.size() == 1 ? " torque waits" : " torques wait") + " for a witness"));
    }

    /** The sheet of an operation; without lines where the frame has no component that is torqued there. */
    public TorqueSheet of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        return of(
                operationId,
                travellers.operation(operationId).line().code(),
                components.of(head.serial(), head.part()));
    }

    /** The same, for whoever knows the code of the operation and the list of the frame. */
    TorqueSheet of(long operationId, String code, List<FramePart> list) {
        List<FramePart> here = list.stream()
                .filter(part -> !part.component().at(code).isEmpty())
                .toList();
        if (here.isEmpty()) {
            return new TorqueSheet(operationId, false, false, List.of());
        }
        boolean afterRide =
                here.stream().noneMatch(part -> part.component().operation().equals(code));
        boolean again =
                here.stream().anyMatch(part -> !part.component().operation().equals(code));
        Ride ride = again ? ride(operationId, code) : new Ride(false, null);
        Records records = records(operationId, ride);
        return new TorqueSheet(
                operationId,
                afterRide,
                ride.asked() && ride.goodAt() == null,
                here.stream()
                        .flatMap(part -> part.component().at(code).stream()
                                .map(fastener -> line(part, fastener, list, records, code)))
                        .toList());
    }

    /**
     * The ride that bolts are torqued after.
     *
     * @param goodAt when the newest good one was; null while there is none
     */
    private record Ride(boolean asked, @Nullable Instant goodAt) {

        /** Whether a bolt was torqued before it, and says nothing of what the ride did to it. */
        boolean comesAfter(Bolt bolt) {
            return goodAt == null ? asked : bolt.at().isBefore(goodAt);
        }
    }

    private Ride ride(long operationId, String code) {
        Instant goodAt = rides.findByOperationIdOrderById(operationId).stream()
                .filter(row -> row.ridden().good())
                .map(RideRow::at)
                .reduce((before, after) -> after)
                .orElse(null);
        boolean asked = goodAt != null
                || book.inForce().filter(rules -> rules.rides(code)).isPresent()
                        && book.inForce(
                                        code,
                                        travellers.operation(operationId).line().startedAt())
                                .isPresent();
        return new Ride(asked, goodAt);
    }

    private record Records(
            Ride ride,
            Map<TorqueRow.Key, List<Bolt>> bolts,
            Map<TorqueRow.Key, Integer> rounds,
            Map<TorqueRow.Key, WitnessRow> witnesses) {}

    private Records records(long operationId, Ride ride) {
        Map<TorqueRow.Key, List<Bolt>> bolts = new HashMap<>();
        torques.findByOperationIdOrderById(operationId)
                .forEach(row -> bolts.computeIfAbsent(row.key(), key -> new java.util.ArrayList<>())
                        .add(row.bolt()));
        Map<TorqueRow.Key, Integer> rounds = new HashMap<>();
        agains.findByOperationIdOrderById(operationId).forEach(row -> rounds.merge(row.key(), 1, Integer::sum));
        Map<TorqueRow.Key, WitnessRow> seen = new HashMap<>();
        witnesses.findByOperationIdOrderById(operationId).forEach(row -> seen.put(row.key(), row));
        return new Records(ride, bolts, rounds, seen);
    }

    private static TorqueSheet.Line line(
            FramePart part, Fastener fastener, List<FramePart> list, Records records, String code) {
        TorqueRow.Key key = new TorqueRow.Key(part.id(), fastener.id());
        int round = records.rounds().getOrDefault(key, 0) + 1;
        List<Bolt> all = records.bolts().getOrDefault(key, List.of());
        List<Bolt> now = all.stream().filter(bolt -> bolt.round() == round).toList();
        boolean fitting = part.component().operation().equals(code);
        Clamped clamped = clamped(fastener, list);
        BigDecimal most = clamped.most_Nm() == null
                ? fastener.most_Nm()
                : clamped.most_Nm().min(fastener.most_Nm());
        boolean lowered = most.compareTo(fastener.most_Nm()) < 0;
        BigDecimal target =
                now.isEmpty() ? fastener.target_Nm() : now.get(now.size() - 1).target_Nm();
        // What was loosened is built up as if it were fitted, wherever that is done.
        boolean anew = fitting || round > 1;
        List<Integer> passes = anew ? fastener.passes() : List.of(100);
        WitnessRow witness = records.witnesses().get(key);
        boolean seen = witness != null && witness.round() == round;
        boolean before = !fitting && now.stream().anyMatch(records.ride()::comesAfter)
                || now.stream().anyMatch(clamped::cameAfter);
        State state =
                before ? State.AGAIN : state(fastener, now, passes.size(), most, !anew || !fastener.witness() || seen);
        return new TorqueSheet.Line(
                part,
                fastener,
                most,
                target,
                lowered ? clamped.words() : null,
                clamped.caution(),
                round,
                now,
                all.stream().filter(bolt -> bolt.round() < round).toList(),
                state,
                state == State.WAITING || state == State.IN_WORK ? next(fastener, passes, now.size(), target) : null,
                seen && witness != null ? witness.personId() : null,
                seen && witness != null ? witness.at() : null);
    }

    private static State state(Fastener fastener, List<Bolt> now, int passes, BigDecimal most, boolean looked) {
        if (fastener.least_Nm().compareTo(most) >= 0) {
            return State.CLASHES;
        }
        if (now.stream().anyMatch(bolt -> !bolt.conforming())) {
            return State.AGAIN;
        }
        if (now.isEmpty()) {
            return State.WAITING;
        }
        if (now.size() < passes * fastener.bolts()) {
            return State.IN_WORK;
        }
        // A part given since may clamp less than these bolts were set to.
        boolean within = now.stream().allMatch(bolt -> bolt.most_Nm().compareTo(most) <= 0);
        return !within ? State.AGAIN : looked ? State.DONE : State.TO_WITNESS;
    }

    private static TorqueSheet.Next next(Fastener fastener, List<Integer> passes, int done, BigDecimal target_Nm) {
        int pass = done / fastener.bolts();
        boolean last = pass == passes.size() - 1;
        return new TorqueSheet.Next(
                pass + 1,
                passes.size(),
                fastener.order().get(done % fastener.bolts()),
                last ? target_Nm : share(target_Nm, passes.get(pass)),
                last);
    }

    static BigDecimal share(BigDecimal target_Nm, int percent) {
        return target_Nm.multiply(BigDecimal.valueOf(percent, 2)).setScale(1, RoundingMode.HALF_UP);
    }

    /**
     * What the parts that a fastener clamps allow.
     *
     * @param since when the newest of them was given; null while there is none
     */
    private record Clamped(
            @Nullable BigDecimal most_Nm,
            String words,
            @Nullable String caution,
            @Nullable Instant since) {

        /** Whether a bolt was torqued before one of them was there. */
        boolean cameAfter(Bolt bolt) {
            return since != null && bolt.at().isBefore(since);
        }
    }

    private static Clamped clamped(Fastener fastener, List<FramePart> list) {
        BigDecimal most = null;
        String words = "";
        String caution = null;
        Instant since = null;
        for (FramePart part : list) {
            Component component = part.component();
            if (component.kind() != fastener.clamps()) {
                continue;
            }
            since = since == null || part.givenAt().isAfter(since) ? part.givenAt() : since;
            BigDecimal own = component.clampedMost_Nm();
            if (own != null && (most == null || own.compareTo(most) < 0)) {
                most = own;
                words = part.called() + " is clamped with at most " + NewFastener.plain(own) + " N·m by its own sheet ("
                        + component.called() + ").";
            }
            if (component.carbon()) {
                caution = "Carbon " + component.kind().word() + ": its own sheet decides, not the aluminium torque"
                        + (own == null ? "; that sheet gives no clamping torque here." : ".");
            }
        }
        return new Clamped(most, words, caution, since);
    }
}
