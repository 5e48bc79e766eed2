package org.trammel.shop.yields;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.statistics.GateYield;
import org.trammel.calc.units.Answer;
import org.trammel.shop.inspection.PreSetReadings;
import org.trammel.shop.nonconformance.FoundAt;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.GatesSeen;

/**
 * First-pass yield of every gate. A frame passes at the first attempt where its point was signed, nothing that did not
 * conform was found at it, and nothing was pushed there. A gate that is not signed yet counts only once something was found.
 */
@Service
@Transactional(readOnly = true)
public class Yields {

    private static final String HOUR = "cost.hour";

    private final GatesSeen gates;
    private final FoundAt found;
    private final PreSetReadings pushes;
    private final Settings settings;

    Yields(GatesSeen gates, FoundAt found, PreSetReadings pushes, Settings settings) {
        this.gates = gates;
        this.found = found;
        this.pushes = pushes;
        this.settings = settings;
    }

    /** What is counted at one gate. */
    private static final class Count {

        private final String name;
        private int frames;
        private int passed;
        private int hoursKnown;
        private BigDecimal hours = BigDecimal.ZERO;

        private Count(String name) {
            this.name = name;
        }

        private double meanHours() {
            return hoursKnown == 0 ? 0 : hours.doubleValue() / hoursKnown;
        }
    }

    /** What the gates did with frames that came to them on that day or later. */
    public YieldSheet since(LocalDate day) {
        if (day.isAfter(settings.today())) {
            throw Refusal.input(
                    "since", "Nothing was counted.", day + " is still to come.", "Choose a day that has been.");
        }
        Instant moment = day.atStartOfDay(settings.zone()).toInstant();
        Map<Long, List<BigDecimal>> hours = new HashMap<>();
        Set<Long> stopped = new HashSet<>(pushes.pushedAt(moment));
        for (FoundAt.Line line : found.since(moment)) {
            stopped.add(line.operationId());
            if (line.hours() != null) {
                hours.computeIfAbsent(line.operationId(), id -> new ArrayList<>())
                        .add(line.hours());
            }
        }
        Map<String, Count> counts = new LinkedHashMap<>();
        for (GatesSeen.Line line : gates.since(moment)) {
            boolean wrong = stopped.contains(line.operationId());
            if (wrong || line.finished()) {
                Count count = counts.computeIfAbsent(line.code(), code -> new Count(line.name()));
                count.frames++;
                count.passed += wrong ? 0 : 1;
                List<BigDecimal> known = hours.getOrDefault(line.operationId(), List.of());
                count.hoursKnown += known.isEmpty() ? 0 : 1;
                count.hours = known.stream().reduce(count.hours, BigDecimal::add);
            }
        }
        return sheet(day, counts);
    }

    private YieldSheet sheet(LocalDate day, Map<String, Count> counts) {
        BigDecimal price = settings.number(HOUR);
        List<GateYield.Gate> asked = counts.entrySet().stream()
                .map(each -> new GateYield.Gate(
                        each.getKey() + " " + each.getValue().name,
                        each.getValue().passed,
                        each.getValue().frames,
                        each.getValue().meanHours()))
                .toList();
        if (!(GateYield.of(asked, price.doubleValue()) instanceof Answer.Determined<GateYield> there)) {
            return new YieldSheet(day, List.of(), null, 0, 0, price, "");
        }
        GateYield reckoned = there.value();
        List<GateLine> lines = new ArrayList<>();
        for (Map.Entry<String, Count> each : counts.entrySet()) {
            GateYield.Line line = reckoned.lines().get(lines.size());
            lines.add(new GateLine(
                    each.getKey(),
                    each.getValue().name,
                    line.firstPass(),
                    each.getValue().hoursKnown,
                    line.gate().hours(),
                    line.reworkHours(),
                    line.reworkHours() * price.doubleValue(),
                    line.share()));
        }
        return new YieldSheet(
                day, lines, reckoned.rolled(), reckoned.reworkHours(), reckoned.reworkCost(), price, reckoned.words());
    }
}
