package org.trammel.shop.chance;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.LongUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.Opening;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Carry;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Outside;
import org.trammel.shop.travellers.Revising;
import org.trammel.shop.travellers.Rework;
import org.trammel.shop.travellers.Signing;

/** Everything else somebody may try at any time, allowed or not. */
final class Mishaps {

    private static final List<String> WORDS = new ArrayList<>(java.util.Arrays.asList(null, "by chance"));

    private final World world;
    private final NextThing next;
    private final List<Attempt> carriedOut = new ArrayList<>();

    Mishaps(World world, NextThing next) {
        this.world = world;
        this.next = next;
    }

    /** Remembers what was carried out, so that it can be sent again. */
    void carriedOut(Attempt attempt) {
        carriedOut.add(attempt);
    }

    void begin() {
        carriedOut.clear();
    }

    /** The attempt a deed stands for now; empty if there is nothing to try it on. */
    Optional<Attempt> attempt(Deed deed, Seen seen) {
        Random chance = new Random(deed.seed());
        LongUnaryOperator anybody = right -> world.cast().anybody(chance);
        long by = world.cast().anybody(chance);
        Act act = world.shop().act(by);
        return switch (deed.kind()) {
            case GO_ON -> next.on(seen, chance, LongUnaryOperator.identity());
            case GO_ON_BY_ANYBODY -> next.on(seen, chance, anybody);
            case SHIP -> Optional.of(next.ship(seen, chance, LongUnaryOperator.identity()));
            case TICK_ANYTHING ->
                any(seen.steps(), chance).map(s -> next.tick(seen.operation(s.operationId()), s, anybody));
            case UNTICK ->
                any(seen.steps().stream().filter(Seen.Step::ticked).toList(), chance)
                        .map(s -> {
                            String why = Seen.any(WORDS, chance);
                            Act mine =
                                    chance.nextInt(3) == 0 ? act : world.shop().act(world.cast().lead);
                            return Attempt.of(
                                    mine,
                                    "untick",
                                    () -> world.bean(Bench.class).untick(mine, s.id(), why));
                        });
            case READ_ANYTHING -> readAnything(seen, chance);
            case CORRECT -> correct(chance, act);
            case SIGN_ANYTHING ->
                any(seen.operations(), chance).map(o -> {
                    Signer as = Seen.any(List.of(Signer.values()), chance);
                    return Attempt.of(
                            act,
                            "sign " + o.code() + " as " + as,
                            () -> world.bean(Signing.class).sign(act, o.id(), by, as));
                });
            case PASS_WITNESS ->
                any(seen.operations(), chance)
                        .map(o -> Attempt.of(
                                act,
                                "pass " + o.code(),
                                () -> world.bean(Signing.class).passWitness(act, o.id())));
            case PLACE_HOLD -> placeHold(seen, chance);
            case LIFT_HOLD -> any(seen.holds(), chance).map(h -> next.lift(h, chance, anybody));
            case FREE ->
                any(seen.holds(), chance)
                        .flatMap(h -> any(seen.operations(), chance).map(o -> {
                            long at = Optional.ofNullable(seen.whole().currentOperationId())
                                    .filter(id -> chance.nextBoolean())
                                    .orElse(o.id());
                            Act mine = chance.nextBoolean() ? act : world.shop().act(world.cast().qa);
                            return Attempt.of(
                                    mine, "free", () -> world.bean(Holds.class).free(mine, h.id(), at, "by chance"));
                        }));
            case OPEN_NONCONFORMANCE -> openNonconformance(seen, chance, act);
            case DECIDE -> decide(seen, chance, act, anybody);
            case BLAME ->
                any(seen.nonconformances(), chance).map(n -> {
                    String code = Seen.any(seen.operations(), chance).code();
                    return Attempt.of(
                            act,
                            "blame " + code,
                            () -> world.bean(Deciding.class).blame(act, n.id(), code));
                });
            case PUSH ->
                any(
                                seen.characteristics().stream()
                                        .filter(c -> c.coldSetClock() != null)
                                        .toList(),
                                chance)
                        .map(c -> next.push(c, "0.1", by));
            case REDO ->
                any(seen.operations(), chance).map(o -> {
                    String clock = Seen.any(List.of("CLEAN", "BLAST", "SET", "AGE"), chance);
                    return Attempt.of(
                            act,
                            "redo for " + clock,
                            () -> world.bean(Rework.class).redoForClock(act, o.id(), clock));
                });
            case STOP ->
                any(seen.operations(), chance)
                        .map(o -> Attempt.of(
                                act,
                                "stop " + o.code(),
                                () -> world.bean(Bench.class).stop(act, o.id(), "by chance")));
            case SEND_OUT ->
                any(
                                seen.operations().stream()
                                        .filter(o -> o.code().equals("140") || chance.nextInt(8) == 0)
                                        .toList(),
                                chance)
                        .map(o -> sendOut(o, world.shop().act(world.cast().second)));
            case MAKE_ANEW ->
                any(seen.pieces(), chance)
                        .map(p -> Attempt.of(
                                act, "make anew", () -> world.bean(Rework.class).makeAnew(act, p.id())));
            case NEWER_REVISION -> Optional.of(newerRevision(chance));
            case BLOCK_LOT -> {
                Act mine = world.shop().act(world.cast().lead);
                String lot = world.lot();
                yield Optional.of(Attempt.of(
                        mine,
                        "block the lot",
                        () -> world.bean(LotRegister.class).block(mine, lot, "by chance")));
            }
            case SEND_AGAIN, PASS_TIME ->
                deed.kind() == Deed.Kind.PASS_TIME ? Optional.of(time(seen, chance)) : any(carriedOut, chance);
        };
    }

    private Attempt sendOut(Seen.Op o, Act act) {
        return Attempt.of(
                act, "send out " + o.code(), () -> world.bean(Outside.class).send(act, o.id(), "somebody outside"));
    }

    private Attempt time(Seen seen, Random chance) {
        boolean window = seen.clocks().stream()
                .anyMatch(c -> c.state().equals("RUNNING")
                        && c.kind().equals("WINDOW")
                        && !c.gates().isEmpty());
        int which = window && chance.nextBoolean() ? 8 : chance.nextInt(10);
        Duration time = which < 6
                ? Duration.ofMinutes(1 + chance.nextInt(40))
                : which < 9 ? Duration.ofHours(3 + chance.nextInt(4)) : Duration.ofHours(30);
        return world.passing(time, chance.nextInt(4) > 0);
    }

    private Optional<Attempt> readAnything(Seen seen, Random chance) {
        List<Seen.Read> at = seen.characteristics().stream()
                .filter(c -> seen.pieces().stream()
                        .anyMatch(p -> p.currentOperationId() != null && p.currentOperationId() == c.operationId()))
                .toList();
        boolean atHand = !at.isEmpty() && chance.nextInt(5) > 0;
        return any(atHand ? at : seen.characteristics(), chance).map(c -> {
            String gauge = chance.nextInt(6) == 0
                    ? Seen.any(world.cast().unusable, chance)
                    : c.gaugeKind().equals("CALLIPER")
                            ? world.cast().calliper
                            : Seen.any(List.of(world.cast().fine, world.cast().coarse), chance);
            String value = (chance.nextBoolean() ? "" : "-")
                    + Seen.any(List.of("0.1", "0.2", "0.28", "0.29", "0.3", "0.31", "0.33", "0.35", "2."), chance)
                    + chance.nextInt(100);
            long by = chance.nextInt(3) == 0 ? world.cast().anybody(chance) : world.cast().aligner;
            return next.read(c, value, gauge, chance.nextInt(3) > 0, by);
        });
    }

    private Optional<Attempt> correct(Random chance, Act act) {
        List<Long> all = world.jdbc()
                .sql("select r.id from reading r join traveller t on t.id = r.traveller_id where t.serial = ?"
                        + " order by r.id")
                .param(world.frame().serial())
                .query(Long.class)
                .list();
        return any(all, chance).map(id -> {
            String gauge = Seen.any(List.of(world.cast().fine, world.cast().calliper), chance);
            BigDecimal value = new BigDecimal("0." + (100 + chance.nextInt(300)));
            return Attempt.of(
                    act,
                    "correct to " + value,
                    () -> world.bean(Readings.class)
                            .correct(act, id, new Readings.Input(List.of(value), gauge, null, true), "by chance"));
        });
    }

    private Optional<Attempt> placeHold(Seen seen, Random chance) {
        Act act = world.shop().act(chance.nextInt(4) == 0 ? world.cast().anybody(chance) : world.cast().worker);
        return any(seen.pieces(), chance)
                .flatMap(p -> any(seen.operations(), chance).map(o -> {
                    HoldScope scope = Seen.any(List.of(HoldScope.values()), chance);
                    Long at = Optional.ofNullable(p.currentOperationId())
                            .filter(id -> chance.nextBoolean())
                            .orElse(o.id());
                    HoldReason reason = Seen.any(List.of(HoldReason.values()), chance);
                    Set<Long> causers = new HashSet<>();
                    if (chance.nextInt(3) == 0) {
                        causers.add(world.cast().qa);
                    }
                    return Attempt.of(
                            act,
                            "hold " + scope + " for " + reason,
                            () -> world.bean(Holds.class)
                                    .place(
                                            act,
                                            new Holds.Request(
                                                    p.id(),
                                                    scope,
                                                    scope == HoldScope.OPERATION ? at : null,
                                                    reason,
                                                    "by chance",
                                                    "by hand",
                                                    causers)));
                }));
    }

    private Optional<Attempt> openNonconformance(Seen seen, Random chance, Act act) {
        return any(seen.operations(), chance).map(o -> {
            Long about = seen.readAt(o.id()).stream()
                    .map(Seen.Read::id)
                    .filter(id -> chance.nextBoolean())
                    .findFirst()
                    .orElse(null);
            String fault = chance.nextBoolean()
                    ? null
                    : Seen.any(seen.operations(), chance).code();
            return Attempt.of(
                    act,
                    "open at " + o.code(),
                    () -> world.bean(Opening.class).byHand(act, o.travellerId(), o.id(), about, fault, "by chance"));
        });
    }

    private Optional<Attempt> decide(Seen seen, Random chance, Act act, LongUnaryOperator anybody) {
        return any(seen.nonconformances(), chance).map(n -> {
            if (chance.nextInt(3) == 0) {
                return next.decide(n, chance, anybody);
            }
            Deciding deciding = world.bean(Deciding.class);
            Decision decision = Seen.any(List.of(Decision.values()), chance);
            if (decision == Decision.SCRAP && chance.nextInt(4) > 0) {
                decision = Decision.CLEARED;
            }
            String from = Seen.any(seen.operations(), chance).code();
            Proposal proposal = NextThing.proposal(decision, from, chance);
            return switch (chance.nextInt(3)) {
                case 0 -> Attempt.of(act, "agree", () -> deciding.agree(act, n.id(), n.decisionNumber()));
                case 1 -> Attempt.of(act, "close", () -> deciding.close(act, n.id(), "by chance"));
                default -> Attempt.of(act, "propose " + decision, () -> deciding.propose(act, n.id(), proposal));
            };
        });
    }

    private Attempt newerRevision(Random chance) {
        Act act = world.shop().act(chance.nextInt(5) == 0 ? world.cast().anybody(chance) : world.cast().qa);
        Revising revising = world.bean(Revising.class);
        long order = world.frame().orderId();
        boolean allSaid = chance.nextInt(6) > 0;
        boolean careful = chance.nextBoolean();
        Revising.Agreed agreed = chance.nextBoolean()
                ? null
                : new Revising.Agreed(
                        world.cast().owner, "Rider One, by letter", "this frame", java.time.LocalDate.of(2027, 12, 31));
        Map<Long, Revising.Said> said = new HashMap<>();
        for (Revising.Finished f : revising.finished(order)) {
            if (allSaid || chance.nextBoolean()) {
                Carry verdict = careful ? Carry.STILL_VALID : Seen.any(List.of(Carry.values()), chance);
                said.put(f.operationId(), new Revising.Said(verdict, "by chance"));
            }
        }
        long drawing = world.nextDrawing();
        return Attempt.of(
                act, "newer revision", () -> revising.supersede(act, order, drawing, world.route(), said, agreed));
    }

    private static <T> Optional<T> any(List<? extends @Nullable T> all, Random chance) {
        return all.isEmpty() ? Optional.empty() : Optional.ofNullable(all.get(chance.nextInt(all.size())));
    }
}
