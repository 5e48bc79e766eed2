package org.trammel.shop.cuts;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.web.Formats;

/** Tells the story of a frame what its tubes measured, each in a sentence. */
@Service
@Transactional(readOnly = true)
public class CutHistory {

    private final CutRecords records;
    private final Formats formats;

    CutHistory(CutRecords records, Formats formats) {
        this.records = records;
        this.formats = formats;
    }

    /** A tube that was measured. */
    public record Told(long operationId, Instant at, String what, long by) {}

    public List<Told> of(Collection<Long> operationIds) {
        return records.of(operationIds).stream()
                .map(one -> new Told(
                        one.operationId(),
                        one.cut().at(),
                        words(one.cut()),
                        one.cut().by()))
                .toList();
    }

    private String words(Cut cut) {
        String ends = cut.ends().stream()
                .map(end -> "at the " + end.mate() + " " + formats.number(end.angle_deg(), 1) + "° with " + end.saw()
                        + ", worst gap " + formats.number(end.worst_mm(), 2) + " mm")
                .collect(Collectors.joining("; "));
        return cut.called() + " cut to " + formats.number(cut.blank_mm(), 1) + " mm of "
                + formats.number(cut.wanted_mm(), 1) + (ends.isEmpty() ? "" : "; " + ends);
    }
}
