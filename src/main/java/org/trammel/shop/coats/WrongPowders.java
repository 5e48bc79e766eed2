package org.trammel.shop.coats;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.Lot;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/**
 * Finds what is wrong of powders that are on a frame already, by what is known of their lots today. A powder that was only
 * scanned is on nothing; one that was stripped since is gone.
 */
@Component
class WrongPowders {

    private final SprayRepository sprays;
    private final StripRepository strips;
    private final Finishes finishes;
    private final CoatColours colours;
    private final Lots lots;
    private final Travellers travellers;
    private final Settings settings;
    private final Formats formats;

    WrongPowders(
            SprayRepository sprays,
            StripRepository strips,
            Finishes finishes,
            CoatColours colours,
            Lots lots,
            Travellers travellers,
            Settings settings,
            Formats formats) {
        this.sprays = sprays;
        this.strips = strips;
        this.finishes = finishes;
        this.colours = colours;
        this.lots = lots;
        this.travellers = travellers;
        this.settings = settings;
        this.formats = formats;
    }

    /** @param words what is wrong, the same as long as the same is known */
    record Wrong(String operation, String lot, String words) {}

    /** Travellers, open today, of frames and parts that a lot was scanned for at some time. */
    List<FrameSheet.Head> bearing(String lot) {
        Map<Long, FrameSheet.Head> heads = new LinkedHashMap<>();
        sprays.findByLotOrderById(lot).stream()
                .map(row -> travellers.headOf(row.operationId()))
                .flatMap(old -> travellers.heads(old.serial()).stream()
                        .filter(head ->
                                head.part().equals(old.part()) && head.state().open()))
                .forEach(head -> heads.putIfAbsent(head.travellerId(), head));
        return List.copyOf(heads.values());
    }

    /** What is wrong of all coats that are on a frame or a part of one, whichever traveller they were sprayed by. */
    List<Wrong> on(String serial, String part) {
        List<Long> piece = travellers.heads(serial).stream()
                .filter(head -> head.part().equals(part))
                .map(FrameSheet.Head::travellerId)
                .toList();
        Map<Long, FrameSheet.OperationLine> lines = new LinkedHashMap<>();
        travellers.strips(piece).values().stream()
                .flatMap(List::stream)
                .forEach(line -> lines.put(line.operationId(), line));
        Map<Long, SprayRow> newest = new LinkedHashMap<>();
        sprays.findByOperationIdInOrderById(lines.keySet()).forEach(row -> newest.put(row.operationId(), row));
        List<Wrong> wrong = new ArrayList<>();
        newest.forEach((operation, row) -> {
            SurfaceRecord.Spray spray = row.spray();
            if (sprayed(operation) && !stripped(lines.keySet().stream(), spray)) {
                wrong.addAll(of(lines.get(operation), spray));
            }
        });
        return wrong;
    }

    private boolean sprayed(long operation) {
        return travellers.operation(operation).steps().stream().anyMatch(step -> step.irreversible() && step.ticked());
    }

    private boolean stripped(Stream<Long> operations, SurfaceRecord.Spray spray) {
        return operations
                .flatMap(id -> strips.findByOperationIdOrderById(id).stream())
                .anyMatch(row -> row.strip().at().isAfter(spray.at()));
    }

    private List<Wrong> of(FrameSheet.OperationLine line, SurfaceRecord.Spray spray) {
        FrameSheet.Head head = travellers.headOf(line.operationId());
        List<Wrong> wrong = new ArrayList<>();
        finishes.guarding(line.code(), head.metal(), line.startedAt())
                .flatMap(finish -> colours.other(head.travellerId(), line.code(), finish, spray.lot()))
                .ifPresent(words -> wrong.add(new Wrong(line.code(), spray.lot(), words)));
        LocalDate last = lots.byCode(spray.lot()).map(Lot::expiresOn).orElse(null);
        LocalDate day = settings.dayOf(spray.at());
        if (last != null && day.isAfter(last)) {
            wrong.add(new Wrong(
                    line.code(),
                    spray.lot(),
                    spray.lot() + " was to be used until " + formats.date(last) + "; it was sprayed on "
                            + formats.date(day) + "."));
        }
        return wrong;
    }
}
