package org.trammel.shop.handwork;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.dew.DewMargins;
import org.trammel.shop.dew.DewPurpose;
import org.trammel.shop.web.Formats;

/** Tells the story of a frame what its ticks rest on, each thing in a sentence. */
@Service
@Transactional(readOnly = true)
public class HandHistory {

    private final ToolUseRepository uses;
    private final DewMargins margins;
    private final SerialReadRepository reads;
    private final MisreadRepository misreads;
    private final WaterBreakRepository waters;
    private final Formats formats;

    HandHistory(
            ToolUseRepository uses,
            DewMargins margins,
            SerialReadRepository reads,
            MisreadRepository misreads,
            WaterBreakRepository waters,
            Formats formats) {
        this.uses = uses;
        this.margins = margins;
        this.reads = reads;
        this.misreads = misreads;
        this.waters = waters;
        this.formats = formats;
    }

    /**
     * Something that was recorded.
     *
     * @param kind of the mark beside it
     */
    public record Told(long operationId, Instant at, String kind, String what, long by) {}

    /** What was recorded at operations, by a fixed number of statements however many they are. */
    public List<Told> of(Collection<Long> all) {
        List<Told> told = new ArrayList<>();
        margins.all(all, DewPurpose.ARC).forEach(one -> told.add(air(one.operationId(), one.margin())));
        Set<Long> operations = all.isEmpty() ? Set.of() : uses.recorded(all);
        if (operations.isEmpty()) {
            return told;
        }
        uses.findByOperationIdInOrderById(operations).forEach(row -> {
            HandRecord.Used used = row.used();
            told.add(new Told(
                    row.operationId(),
                    used.at(),
                    "",
                    "touched by " + used.kind().word() + " " + used.tool(),
                    used.by()));
        });
        waters.findByOperationIdInOrderById(operations).forEach(row -> {
            HandRecord.Water water = row.water();
            told.add(new Told(
                    row.operationId(),
                    water.at(),
                    water.held() ? "conforming" : "not-conforming",
                    (water.held() ? "water film holds: " : "water film broke, to be cleaned again: ") + water.parts(),
                    water.by()));
        });
        reads.findByOperationIdInOrderById(operations).forEach(row -> {
            HandRecord.SerialRead read = row.read();
            told.add(new Told(row.operationId(), read.at(), "done", "serial read back from the metal", read.by()));
        });
        misreads.findByOperationIdInOrderById(operations).forEach(row -> {
            HandRecord.Misread misread = row.misread();
            told.add(new Told(
                    row.operationId(),
                    misread.at(),
                    "not-conforming",
                    "serial read as " + misread.readAs() + ", which is not that of this frame",
                    misread.by()));
        });
        return told;
    }

    private Told air(long operation, DewMargin air) {
        return new Told(
                operation,
                air.at(),
                air.enough() ? "conforming" : "not-conforming",
                "metal at " + formats.number(air.metal_degC().stripTrailingZeros()) + " °C" + air.coldest() + ", "
                        + formats.number(air.margin_K(), 2) + " K over the " + air.pointWords(),
                air.by());
    }
}
