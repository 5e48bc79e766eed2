package org.trammel.shop.chance;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.LongUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.LooksAgain;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Outside;
import org.trammel.shop.travellers.Rework;
import org.trammel.shop.travellers.Shipping;
import org.trammel.shop.travellers.Signing;

/** What the route asks for next, by whom. Most of the time it leads a frame out of the shop, through every mishap. */
final class NextThing {

    private final World world;
    private final JdbcClient jdbc;

    NextThing(World world) {
        this.world = world;
        this.jdbc = world.jdbc();
    }

    /** @param who turns who may into who tries */
    Optional<Attempt> on(Seen seen, Random chance, LongUnaryOperator who) {
        for (Seen.Found found : seen.nonconformances()) {
            if (found.state().equals("OPEN") || found.state().equals("PROPOSED")) {
                return Optional.of(decide(found, chance, who));
            }
        }
        List<Seen.Held> byHand =
                seen.holds().stream().filter(h -> !h.source().startsWith("NC-")).toList();
        if (!byHand.isEmpty() && chance.nextInt(10) < 7) {
            return Optional.of(lift(Seen.any(byHand, chance), chance, who));
        }
        Optional<Seen.Piece> lost =
                seen.parts().stream().filter(p -> p.state().equals("SCRAPPED")).findFirst();
        if (lost.isPresent() && Seen.open(seen.whole())) {
            Act act = act(world.cast().qa, who);
            return Optional.of(Attempt.of(
                    act,
                    "make " + lost.get().part() + " anew",
                    () -> world.bean(Rework.class).makeAnew(act, lost.get().id())));
        }
        Optional<Seen.Piece> at = seen.next(chance);
        if (at.isPresent()) {
            return onto(seen, at.get(), chance, who);
        }
        boolean doubt = seen.holds().isEmpty() && chance.nextInt(3) == 0;
        return Optional.of(doubt ? hold(seen, chance, who) : ship(seen, chance, who));
    }

    /** Ready to be sent, and somebody remembers something. */
    private Attempt hold(Seen seen, Random chance, LongUnaryOperator who) {
        Act act = act(world.cast().worker, who);
        HoldReason reason = Seen.any(List.of(HoldReason.PAYMENT, HoldReason.SAFETY, HoldReason.GAUGE_TRACE), chance);
        return Attempt.of(
                act,
                "hold for " + reason,
                () -> world.bean(Holds.class)
                        .place(
                                act,
                                new Holds.Request(
                                        seen.whole().id(),
                                        HoldScope.FRAME,
                                        null,
                                        reason,
                                        "wait",
                                        "by hand",
                                        Set.of())));
    }

    Attempt ship(Seen seen, Random chance, LongUnaryOperator who) {
        Act act = act(world.cast().worker, who);
        String scanned = chance.nextInt(20) == 0 ? "AV26101H" : world.frame().serial();
        long whole = seen.whole().id();
        return new Attempt(
                act,
                "ship by " + act.by(),
                true,
                () -> world.bean(Shipping.class).ship(act, whole, scanned));
    }

    private Optional<Attempt> onto(Seen seen, Seen.Piece piece, Random chance, LongUnaryOperator who) {
        Seen.Op at = seen.operation(piece.currentOperationId());
        if (at.state().equals("STOPPED")) {
            Act act = act(at.code().equals("070") ? world.cast().welder : world.cast().worker, who);
            return attempt(act, "resume", () -> world.bean(Bench.class).resume(act, at.id()));
        }
        if (at.state().equals("AWAY")) {
            Act act = act(world.cast().worker, who);
            return attempt(act, "book back", () -> world.bean(Outside.class).bookBack(act, at.id(), "C-1"));
        }
        if (at.state().equals("AT_POINT")) {
            return Optional.of(sign(at, chance, who));
        }
        if (at.state().equals("WAITING")) {
            Optional<Attempt> clocked = clocked(seen, at, who);
            if (clocked.isPresent()) {
                return clocked;
            }
        }
        for (Seen.Step step : seen.stepsAt(at.id())) {
            if (!step.ticked()) {
                return Optional.of(tick(at, step, who));
            }
        }
        List<Seen.Read> unread = seen.readAt(at.id()).stream()
                .filter(c -> !List.of("CONFORMING", "INFORMATION", "CONCESSION").contains(c.state()))
                .toList();
        return unread.isEmpty() ? Optional.empty() : Optional.of(measure(unread.get(0), chance, who));
    }

    private Optional<Attempt> clocked(Seen seen, Seen.Op at, LongUnaryOperator who) {
        OffsetDateTime now = world.shop().clock().instant().atOffset(ZoneOffset.UTC);
        for (Seen.Window clock : seen.clocks()) {
            boolean gates = clock.travellerId() == at.travellerId()
                    && Arrays.asList(clock.gates().split(",")).contains(at.code());
            boolean over = clock.endsAt() != null && now.isAfter(clock.endsAt());
            boolean closed = clock.kind().equals("WINDOW")
                    && (clock.state().equals("RUN_OUT") || clock.state().equals("RUNNING") && over);
            if (gates && closed) {
                Act act = act(world.cast().qa, who);
                return attempt(
                        act,
                        "redo for " + clock.code(),
                        () -> world.bean(Rework.class).redoForClock(act, at.id(), clock.code()));
            }
            if (gates && clock.kind().equals("WAIT") && clock.state().equals("RUNNING") && !over) {
                return Optional.of(world.passing(java.time.Duration.ofHours(73), true));
            }
        }
        return Optional.empty();
    }

    Attempt tick(Seen.Op at, Seen.Step step, LongUnaryOperator who) {
        Act act = act(at.code().equals("070") ? world.cast().welder : world.cast().worker, who);
        String lot = step.lotKind() == null ? null : world.lot();
        return Attempt.of(
                act,
                "tick " + at.part() + " " + at.code(),
                () -> world.bean(Bench.class).tick(act, List.of(step.id()), lot, null));
    }

    private Attempt measure(Seen.Read read, Random chance, LongUnaryOperator who) {
        if (read.state().equals("NOT_CONFORMING") && read.coldSetClock() != null && chance.nextInt(3) > 0) {
            return push(read, "0.2", who.applyAsLong(world.cast().aligner));
        }
        long reader = read.state().equals("FIRST_READ") ? world.cast().second : world.cast().aligner;
        boolean slip = chance.nextInt(4) == 0;
        String gauge = read.gaugeKind().equals("CALLIPER")
                ? world.cast().calliper
                : slip ? world.cast().coarse : world.cast().fine;
        String value = (slip ? Seen.any(List.of("0.28", "0.29", "0.32", "-0.4", "-0.28"), chance) : "0.1")
                + chance.nextInt(1000);
        return read(read, value, gauge, chance.nextBoolean(), who.applyAsLong(reader));
    }

    Attempt push(Seen.Read read, String amount, long by) {
        Act act = world.shop().act(by);
        return Attempt.of(
                act,
                "push " + read.code(),
                () -> world.bean(ColdSets.class).push(act, read.id(), new BigDecimal(amount), null));
    }

    Attempt read(Seen.Read read, String value, String gauge, boolean confirmed, long by) {
        Act act = world.shop().act(by);
        return Attempt.of(
                act,
                "read " + read.code() + " " + value,
                () -> world.bean(Readings.class)
                        .read(
                                act,
                                read.id(),
                                new Readings.Input(List.of(new BigDecimal(value)), gauge, null, confirmed)));
    }

    /** Whoever took no part signs what is still asked for. */
    private Attempt sign(Seen.Op at, Random chance, LongUnaryOperator who) {
        List<Signer> wanted = new ArrayList<>(
                Arrays.stream(at.signers().split(",")).map(Signer::valueOf).toList());
        jdbc.sql("select signer from signature s join operation o on o.id = s.operation_id where o.id = ?"
                        + " and (o.void_signature_id is null or s.id > o.void_signature_id)")
                .param(at.id())
                .query(String.class)
                .list()
                .forEach(signed -> wanted.remove(Signer.valueOf(signed)));
        Signer as = wanted.isEmpty() ? Signer.SECOND : wanted.get(0);
        long right = switch (as) {
            case QA -> chance.nextBoolean() ? world.cast().qa : world.cast().lead;
            case OWNER -> world.cast().owner;
            default -> Seen.any(List.of(world.cast().second, world.cast().welder, world.cast().lead), chance);
        };
        Act act = act(right, who);
        return Attempt.of(
                act,
                "sign " + at.code() + " as " + as,
                () -> world.bean(Signing.class).sign(act, at.id(), act.by(), as));
    }

    Attempt lift(Seen.Held hold, Random chance, LongUnaryOperator who) {
        long right =
                Seen.any(List.of(world.cast().qa, world.cast().lead, world.cast().owner, world.cast().worker), chance);
        Act act = act(right, who);
        return Attempt.of(
                act, "lift " + hold.reason(), () -> world.bean(Holds.class).lift(act, hold.id(), "looked at"));
    }

    Attempt decide(Seen.Found found, Random chance, LongUnaryOperator who) {
        Deciding deciding = world.bean(Deciding.class);
        if (found.state().equals("PROPOSED") && chance.nextInt(4) > 0) {
            Act act = act(Seen.any(List.of(world.cast().owner, world.cast().lead, world.cast().both), chance), who);
            return Attempt.of(act, "agree", () -> deciding.agree(act, found.id(), found.decisionNumber()));
        }
        Act act = act(chance.nextBoolean() ? world.cast().qa : world.cast().lead, who);
        boolean settled = found.characteristicId() == null
                || found.read() != null && List.of("CONFORMING", "INFORMATION").contains(found.read());
        Decision decision = settled
                ? Decision.CLEARED
                : Seen.any(List.of(Decision.REWORK, Decision.REWORK, Decision.CONCESSION, Decision.REPAIR), chance);
        if (found.characteristicId() == null && chance.nextBoolean()) {
            Act look = act(Seen.any(List.of(world.cast().owner, world.cast().lead, world.cast().both), chance), who);
            return Attempt.of(
                    look, "look again", () -> world.bean(LooksAgain.class).look(look, found.id(), "nothing is there"));
        }
        if (chance.nextInt(25) == 0) {
            decision = Decision.SCRAP;
        }
        Proposal proposal = proposal(decision, found.operationCode(), chance);
        return Attempt.of(act, "propose " + decision, () -> deciding.propose(act, found.id(), proposal));
    }

    static Proposal proposal(Decision decision, @Nullable String from, Random chance) {
        return new Proposal(
                decision,
                "by chance",
                from,
                "this frame",
                LocalDate.of(2026, 12, 31),
                false,
                null,
                chance.nextInt(4) == 0,
                null,
                null,
                Set.of());
    }

    private Act act(long right, LongUnaryOperator who) {
        return world.shop().act(who.applyAsLong(right));
    }

    private static Optional<Attempt> attempt(Act act, String words, Runnable call) {
        return Optional.of(Attempt.of(act, words, call));
    }
}
