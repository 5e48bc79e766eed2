package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.scheduling.Blank;
import org.trammel.calc.scheduling.CutPlan;
import org.trammel.calc.scheduling.Nesting;
import org.trammel.calc.scheduling.Saw;
import org.trammel.calc.scheduling.TubeKind;
import org.trammel.calc.scheduling.TubeStock;
import org.trammel.calc.units.Answer;
import org.trammel.shop.designs.TubeBlank;
import org.trammel.shop.designs.TubeBlanks;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;

/** Lays what the frames in the shop want of the saw into what lies on the rack. Changes nothing. */
@Service
public class SawPlans {

    /** More frames do not wait for one saw; the oldest are laid. */
    private static final int MOST_FRAMES = 40;

    private final Travellers travellers;
    private final TubeBlanks designs;
    private final TubeRack rack;
    private final Settings settings;

    SawPlans(Travellers travellers, TubeBlanks designs, TubeRack rack, Settings settings) {
        this.travellers = travellers;
        this.designs = designs;
        this.rack = rack;
        this.settings = settings;
    }

    /** The plan as it stands now: the frame released first is cut first. */
    @Transactional(readOnly = true)
    public SawPlan now() {
        List<FrameSheet.Head> waiting = waiting();
        Map<Long, List<TubeBlank>> tubes =
                designs
                        .of(waiting.stream()
                                .map(FrameSheet.Head::designRevisionId)
                                .collect(Collectors.toSet()))
                        .stream()
                        .collect(Collectors.groupingBy(TubeBlank::revisionId));
        Map<TubeKind, List<Blank>> wanted = new LinkedHashMap<>();
        List<SawPlan.Want> butted = new ArrayList<>();
        List<String> undrawn = new ArrayList<>();
        for (int turn = 0; turn < waiting.size(); turn++) {
            FrameSheet.Head head = waiting.get(turn);
            List<TubeBlank> its = tubes.getOrDefault(head.designRevisionId(), List.of());
            if (its.isEmpty()) {
                undrawn.add(head.mark());
            }
            for (TubeBlank tube : its) {
                TubeKind kind = new TubeKind(section(tube.outside_mm(), tube.wall_mm()), head.metal());
                for (int i = 0; i < tube.count(); i++) {
                    if (tube.butted()) {
                        butted.add(new SawPlan.Want(head.mark(), tube.tube(), kind, tube.length_mm()));
                    } else {
                        wanted.computeIfAbsent(kind, none -> new ArrayList<>())
                                .add(new Blank(tube.tube(), head.mark(), kind, tube.length_mm(), turn));
                    }
                }
            }
        }
        return new SawPlan(laid(wanted), butted, undrawn);
    }

    /** Each frame once, whichever of its parts goes to the saw, until the operation that saws is past. */
    private List<FrameSheet.Head> waiting() {
        List<FrameSheet.Head> inShop = travellers.inShop().stream()
                .filter(head -> head.state().open() && head.designRevisionId() != null)
                .sorted(Comparator.comparing(FrameSheet.Head::releasedAt).thenComparing(FrameSheet.Head::travellerId))
                .toList();
        Map<Long, List<FrameSheet.OperationLine>> strips = travellers.strips(
                inShop.stream().map(FrameSheet.Head::travellerId).toList());
        String saws = settings.text("saw.operation").strip();
        Set<String> seen = new HashSet<>();
        return inShop.stream()
                .filter(head -> strips.getOrDefault(head.travellerId(), List.of()).stream()
                        .anyMatch(operation -> operation.code().equals(saws)
                                && operation.state() != OperationState.DONE
                                && operation.state() != OperationState.REPEATED))
                .filter(head -> seen.add(head.serial()))
                .limit(MOST_FRAMES)
                .toList();
    }

    private List<SawPlan.Kind> laid(Map<TubeKind, List<Blank>> wanted) {
        LocalDate today = settings.today();
        List<TubeStock> stock = rack.bars().stream()
                .filter(bars -> bars.open(today) && bars.metal() != null)
                .map(bars -> new TubeStock(
                        new TubeKind(
                                section(
                                        bars.outside_mm().doubleValue(),
                                        bars.wall_mm().doubleValue()),
                                Objects.requireNonNull(bars.metal())),
                        bars.lot(),
                        bars.length_mm().doubleValue(),
                        bars.count(),
                        bars.remnant()))
                .toList();
        Saw saw = new Saw(
                settings.number("saw.kerf").doubleValue(),
                settings.number("saw.keep_from").doubleValue());
        return wanted.entrySet().stream()
                .sorted(Comparator.comparing(one -> one.getKey().toString()))
                .map(one -> laid(one.getKey(), one.getValue(), stock, saw))
                .toList();
    }

    private static SawPlan.Kind laid(TubeKind kind, List<Blank> blanks, List<TubeStock> stock, Saw saw) {
        List<TubeStock> its =
                stock.stream().filter(bars -> bars.kind().equals(kind)).toList();
        if (its.isEmpty()) {
            return SawPlan.Kind.unplanned(
                    kind, blanks.size(), List.of(SawPlan.Kind.none(kind.section(), kind.alloy())));
        }
        Answer<CutPlan> plan = Nesting.of(blanks, its, saw);
        if (plan instanceof Answer.Determined<CutPlan> there) {
            return SawPlan.Kind.planned(kind, blanks.size(), there.value());
        }
        return SawPlan.Kind.unplanned(
                kind,
                blanks.size(),
                ((Answer.NotDeterminable<CutPlan>) plan)
                        .gaps().stream().map(Answer.Gap::words).toList());
    }

    /** Outside and wall, so that the drawing and the rack mean the same by the same figures. */
    static String section(double outside_mm, double wall_mm) {
        return figure(outside_mm) + " × " + figure(wall_mm);
    }

    private static String figure(double length_mm) {
        return BigDecimal.valueOf(length_mm).stripTrailingZeros().toPlainString();
    }
}
