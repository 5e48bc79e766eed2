package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.statistics.PushProposal;
import org.trammel.calc.units.Answer;
import org.trammel.shop.designs.DrawnFrames;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.Pushes;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/**
 * Proposes how far to push a frame that is to be set straight: from what pushes on tubes of one metal and section did
 * before, begun from below; beside it what bending alone says.
 */
@Service
public class PushAdvices {

    private static final Set<Deviation> REAR = Set.of(
            Deviation.REAR_AXLE_OFFSET,
            Deviation.AXLE_WIDTH,
            Deviation.DROPOUTS_FORE_AFT,
            Deviation.DROPOUTS_UP_DOWN,
            Deviation.CHAINSTAY_DIFFERENCE,
            Deviation.REAR_YAW);

    private final TableCharacteristics characteristics;
    private final PushesNoted noted;
    private final Pushes pushes;
    private final ColdSets coldSets;
    private final Readings readings;
    private final Travellers travellers;
    private final DrawnFrames drawings;
    private final BendingFloor bending;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    PushAdvices(
            TableCharacteristics characteristics,
            PushesNoted noted,
            Pushes pushes,
            ColdSets coldSets,
            Readings readings,
            Travellers travellers,
            DrawnFrames drawings,
            BendingFloor bending,
            Settings settings,
            Formats formats,
            Clock clock) {
        this.characteristics = characteristics;
        this.noted = noted;
        this.pushes = pushes;
        this.coldSets = coldSets;
        this.readings = readings;
        this.travellers = travellers;
        this.drawings = drawings;
        this.bending = bending;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    /**
     * What to push for a characteristic.
     *
     * @return empty where it is not measured on the table, or is not to be set right
     */
    @Transactional(readOnly = true)
    public Optional<PushAdvice> of(FrameSheet.Head head, FrameSheet.CharacteristicLine line) {
        if (line.coldSetClock() == null
                || line.state() != CharacteristicState.NOT_CONFORMING
                        && line.state() != CharacteristicState.UNDECIDED) {
            return Optional.empty();
        }
        ReadingLine last = TableRows.last(readings.of(List.of(line.characteristicId())), line);
        return last == null
                ? Optional.empty()
                : characteristics.of(List.of(line)).stream()
                        .findFirst()
                        .map(one -> advice(head, line, one.deviations().get(0), last));
    }

    private PushAdvice advice(
            FrameSheet.Head head, FrameSheet.CharacteristicLine line, Deviation what, ReadingLine last) {
        BigDecimal nominal = last.nominal() == null ? BigDecimal.ZERO : last.nominal();
        BigDecimal off = last.value().subtract(nominal).abs();
        double set_mm = mm(off, line.unit());
        DrawnFrames.Section tube = tube(head, what);
        List<PushProposal.Push> history = tube == null ? List.of() : history(line.code(), head.metal(), what, tube);
        Answer<PushProposal> proposed = set_mm > 0
                ? PushProposal.of(history, set_mm, mm(left(line, off), line.unit()))
                : Answer.none("set", "There is nothing to take out.");
        return new PushAdvice(
                formats.with(off, line.decimals(), line.unit())
                        + (line.unit().equals("°")
                                ? ", which is " + formats.with(set_mm, 1, "mm") + " at the bar, "
                                        + formats.with(bar(), 0, "mm") + " from the axis"
                                : ""),
                proposed instanceof Answer.Determined<PushProposal> there ? first(there.value()) : null,
                proposed instanceof Answer.NotDeterminable<PushProposal> none
                        ? why(history, what, tube, head.metal(), none)
                        : "",
                bending.floor(head.metal(), what, tube, set_mm),
                PushesNoted.METALS.contains(head.metal()) ? settings.text("cold-set.note." + head.metal()) : "",
                history.stream()
                        .map(push -> new PushAdvice.Told(push.push_mm(), push.set_mm()))
                        .toList());
    }

    private static PushAdvice.First first(PushProposal proposal) {
        return new PushAdvice.First(
                proposal.firstPush_mm(),
                proposal.firstSet_mm(),
                proposal.push_mm(),
                proposal.next_mm().low(),
                proposal.next_mm().high());
    }

    private String why(
            List<PushProposal.Push> history,
            Deviation what,
            DrawnFrames.@Nullable Section tube,
            String metal,
            Answer.NotDeterminable<PushProposal> none) {
        if (tube == null) {
            return "The drawing gives no outside and wall of the "
                    + (REAR.contains(what) ? "chainstay" : "down tube")
                    + ", and pushes on other tubes tell nothing of it: push in small steps and measure after each.";
        }
        String of = "pushes for " + what.words() + " on " + formats.metal(metal) + " with a " + tube.tube() + " of "
                + bending.section(tube);
        if (history.isEmpty()) {
            return "The shop has no " + of + " yet: push in small steps and measure after each.";
        }
        return none.gaps().stream()
                        .map(Answer.Gap::words)
                        .map(formats::sentence)
                        .collect(Collectors.joining(" ")) + " Told from " + history.size() + " " + of
                + ". Push in small steps and measure after each.";
    }

    private DrawnFrames.@Nullable Section tube(FrameSheet.Head head, Deviation what) {
        Long revision = head.designRevisionId();
        return revision == null
                ? null
                : (REAR.contains(what) ? drawings.chainstay(revision) : drawings.downTube(revision)).orElse(null);
    }

    /**
     * Pushes for the same characteristic of the routes only, which one operation asks for: as welded, freshly quenched or
     * aged, a tube of one metal comes back by several times as much.
     */
    private List<PushProposal.Push> history(String code, String metal, Deviation what, DrawnFrames.Section tube) {
        List<PushProposal.Push> all = new ArrayList<>(noted.all().stream()
                .filter(one -> one.of(what, metal, tube.outside_mm(), tube.wall_mm()))
                .map(one -> new PushProposal.Push(
                        one.push_mm().doubleValue(), one.set_mm().doubleValue()))
                .toList());
        Map<Long, Boolean> same = new HashMap<>();
        for (Pushes.Done done : pushes.of(names(what), metal)) {
            if (done.set().signum() >= 0
                    && done.code().equals(code)
                    && same.computeIfAbsent(done.travellerId(), id -> same(travellers.head(id), what, tube))) {
                all.add(new PushProposal.Push(done.push_mm().doubleValue(), mm(done.set(), done.unit())));
            }
        }
        return all;
    }

    private boolean same(FrameSheet.Head head, Deviation what, DrawnFrames.Section tube) {
        DrawnFrames.Section theirs = tube(head, what);
        return theirs != null
                && theirs.outside_mm().compareTo(tube.outside_mm()) == 0
                && theirs.wall_mm().compareTo(tube.wall_mm()) == 0;
    }

    /** Names under which the deviation stands on the routes. */
    private List<String> names(Deviation what) {
        return characteristics.inForce().stream()
                .filter(one -> !one.deviations().isEmpty() && one.deviations().get(0) == what)
                .map(TableCharacteristic::name)
                .toList();
    }

    private BigDecimal left(FrameSheet.CharacteristicLine line, BigDecimal off) {
        ColdSets.Room room = coldSets.room(line.characteristicId(), clock.instant());
        BigDecimal most = room.amount();
        return most == null ? off : most.subtract(room.amountUsed());
    }

    private BigDecimal bar() {
        return settings.number("cold-set.bar");
    }

    /** An angle is told where the bar is pushed. */
    private double mm(BigDecimal set, String unit) {
        return unit.equals("°")
                ? bar().doubleValue() * Math.tan(Math.toRadians(set.doubleValue()))
                : set.setScale(6, RoundingMode.HALF_EVEN).doubleValue();
    }
}
