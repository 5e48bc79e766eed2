package org.trammel.shop.alignment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.drift.JigUses;
import org.trammel.shop.people.Crew;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.Formats;

/** What stands under the table of a sheet: widths across tubes, whose figures were judged, a jig that nobody noted. */
@Component
class SheetNotes {

    private final JigUses jigs;
    private final Crew crew;
    private final Formats formats;

    SheetNotes(JigUses jigs, Crew crew, Formats formats) {
        this.jigs = jigs;
        this.crew = crew;
        this.formats = formats;
    }

    List<String> of(FrameSheet.Head head, SheetLine sheet) {
        List<String> notes = new ArrayList<>(Across.words(sheet, formats));
        ReductionLine newest = sheet.newest();
        if (newest != null) {
            notes.add(whose(sheet, newest));
        }
        if (jigs.of(head.travellerId()).isEmpty()) {
            notes.add(
                    "No jig is noted for this frame: what is read here stands on no drift chart until somebody notes it.");
        }
        return notes;
    }

    /** Whoever had it reduced need not have read it. */
    private String whose(SheetLine sheet, ReductionLine newest) {
        Map<Long, String> names = crew.names();
        Map<Long, Long> figures = sheet.figures().stream()
                .filter(line -> newest.used().contains(line.readingId()))
                .collect(Collectors.groupingBy(RawLine::personId, LinkedHashMap::new, Collectors.counting()));
        String read = figures.entrySet().stream()
                .map(each -> (each.getValue() == 1 ? "1 figure" : each.getValue() + " figures") + " by "
                        + names.getOrDefault(each.getKey(), "the service"))
                .collect(Collectors.joining(", "));
        return "Judged from " + read + "; reduced by " + names.getOrDefault(newest.personId(), "the service") + ".";
    }
}
