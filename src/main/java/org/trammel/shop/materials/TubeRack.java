package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** Bars and remnants of tube by lot: laid on the rack, sawn. */
@Service
public class TubeRack {

    private static final int MOST = 500;
    private static final int MOST_ALIKE = 10_000;
    private static final BigDecimal LONGEST_MM = BigDecimal.valueOf(20_000);
    private static final BigDecimal WIDEST_MM = BigDecimal.valueOf(500);

    private final TubeBarRepository bars;
    private final LotRepository lots;
    private final Crew crew;
    private final ActLog log;

    TubeRack(TubeBarRepository bars, LotRepository lots, Crew crew, ActLog log) {
        this.bars = bars;
        this.lots = lots;
        this.crew = crew;
        this.log = log;
    }

    /** What lies on the rack, by metal and section; 500 rows at most. */
    @Transactional(readOnly = true)
    public List<Bars> bars() {
        return bars.onRack(Limit.of(MOST));
    }

    /** Lays bars of a lot of tube on the rack. */
    @Transactional
    public void lay(Act act, String lot, NewBars entry) {
        String not = "No bar was laid on the rack.";
        String code = LotRegister.label(lot);
        if (!log.opens(act, "lay-bars", "lot:" + code, Chains.SHOP)) {
            return;
        }
        requireAtWork(act, not);
        LotRow row = lots.lock(code).orElseThrow(() -> Lots.unknown(code));
        if (row.lot().kind() != LotKind.TUBE) {
            throw Refusal.input(
                    "lot",
                    not,
                    code + " is a " + row.lot().kind().word() + ", not a tube.",
                    "Read the code on the bar.");
        }
        read(entry, not);
        TubeBarRow kept = bars.saveAndFlush(new TubeBarRow(row.id(), entry, false, act));
        log.event(Chains.SHOP, "bars-laid", facts(kept, code, entry));
    }

    /**
     * Books one bar as sawn. What is left goes back to the rack as a remnant of the same lot.
     *
     * @param left_mm 0 if nothing goes back
     */
    @Transactional
    public void cut(Act act, long barsId, BigDecimal left_mm) {
        String not = "No bar was booked as sawn.";
        String code = bars.lotOf(barsId)
                .orElseThrow(() -> Refusal.missing(not, "The rack has no such bar.", "Look at the rack as it is now."));
        if (!log.opens(act, "saw-bar", "lot:" + code, Chains.SHOP)) {
            return;
        }
        requireAtWork(act, not);
        LotRow lot = lots.lock(code).orElseThrow(() -> Lots.unknown(code));
        if (lot.state() != LotState.RELEASED) {
            throw Refusal.state(
                    not, code + " is " + lot.state().word() + ".", "Take a bar of a released lot; ask the QA lead.");
        }
        TubeBarRow row = bars.lock(barsId).orElseThrow();
        NewBars left = row.cut(left_mm);
        bars.saveAndFlush(row);
        if (left_mm.signum() > 0) {
            bars.saveAndFlush(new TubeBarRow(row.lotId(), left, true, act));
        }
        log.event(Chains.SHOP, "bar-sawn", facts(row, code, left));
    }

    private static void read(NewBars entry, String not) {
        figure("outside", entry.outside_mm(), WIDEST_MM, not);
        figure("wall", entry.wall_mm(), WIDEST_MM, not);
        figure("length", entry.length_mm(), LONGEST_MM, not);
        if (entry.wall_mm().multiply(BigDecimal.valueOf(2)).compareTo(entry.outside_mm()) >= 0) {
            throw Refusal.input(
                    "wall",
                    not,
                    "A wall of " + entry.wall_mm().toPlainString() + " mm leaves no bore in a tube of "
                            + entry.outside_mm().toPlainString() + " mm.",
                    "Enter outside and wall as they are written on the bar.");
        }
        if (entry.count() < 1 || entry.count() > MOST_ALIKE) {
            throw Refusal.input(
                    "count", not, "A count is from 1 to " + MOST_ALIKE + ".", "Count the bars and enter how many.");
        }
    }

    private static void figure(String field, BigDecimal figure_mm, BigDecimal most, String not) {
        if (figure_mm.signum() <= 0
                || figure_mm.compareTo(most) > 0
                || figure_mm.stripTrailingZeros().scale() > 3) {
            throw Refusal.input(
                    field,
                    not,
                    "The " + field + " is above 0 and at most " + most.toPlainString()
                            + " mm, with three decimals at most.",
                    "Measure it and enter it in millimetres.");
        }
    }

    private void requireAtWork(Act act, String not) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(
                    not, "Only people at work in the shop handle bars.", "Let somebody of the crew do it.");
        }
    }

    private static Map<String, Object> facts(TubeBarRow row, String lot, NewBars bars) {
        return Map.of(
                "bars",
                row.id(),
                "lot",
                lot,
                "outside",
                bars.outside_mm().toPlainString(),
                "wall",
                bars.wall_mm().toPlainString(),
                "length",
                bars.length_mm().toPlainString(),
                "count",
                bars.count());
    }
}
