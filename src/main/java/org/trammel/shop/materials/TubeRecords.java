package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.TubePlace;
import org.trammel.shop.designs.TubePlaces;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/** Reads which tube stands at which place of a frame, judged by the drawing as it is now. */
@Component
@Transactional(readOnly = true)
class TubeRecords {

    private final TubePlaces places;
    private final TubeIssueRepository issues;
    private final LotSectionRepository sections;
    private final Tempers tempers;
    private final Travellers travellers;
    private final Settings settings;
    private final Formats formats;

    TubeRecords(
            TubePlaces places,
            TubeIssueRepository issues,
            LotSectionRepository sections,
            Tempers tempers,
            Travellers travellers,
            Settings settings,
            Formats formats) {
        this.places = places;
        this.issues = issues;
        this.sections = sections;
        this.tempers = tempers;
        this.travellers = travellers;
        this.settings = settings;
        this.formats = formats;
    }

    TubeSheet of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        List<FrameSheet.OperationSheetOfFrame> whole = travellers.whole(head.travellerId());
        return new TubeSheet(
                head,
                whole.stream()
                        .map(FrameSheet.OperationSheetOfFrame::line)
                        .filter(line -> line.operationId() == operationId)
                        .findFirst()
                        .orElseThrow(),
                lines(head, whole, true));
    }

    /** Why each tube of a frame, or of a part of it, is not what its place asks for, by the id of its use; its lot set aside or not. */
    Map<Long, String> doubts(FrameSheet.Head head) {
        Map<Long, String> doubts = new LinkedHashMap<>();
        for (TubeSheet.Line line : lines(head)) {
            if (line.issued() != null && line.wrong() != null) {
                doubts.put(line.issued().useId(), line.place().called() + ": " + line.wrong());
            }
        }
        return doubts;
    }

    /** The places of a frame, or of a part of it; a lot that is set aside is not told. */
    List<TubeSheet.Line> lines(FrameSheet.Head head) {
        return lines(head, travellers.whole(head.travellerId()), false);
    }

    private List<TubeSheet.Line> lines(
            FrameSheet.Head head, List<FrameSheet.OperationSheetOfFrame> whole, boolean aside) {
        Map<String, TubeIssued> standing = issues.standing(head.serial(), head.part()).stream()
                .collect(Collectors.toMap(TubeIssued::place, Function.identity(), (first, last) -> last));
        Set<Long> lots = standing.values().stream().map(TubeIssued::lotId).collect(Collectors.toSet());
        Map<Long, List<Section>> now = lots.isEmpty()
                ? Map.of()
                : sections.newest(lots).stream()
                        .collect(Collectors.groupingBy(
                                LotSectionRow::lotId, Collectors.mapping(LotSectionRow::section, Collectors.toList())));
        List<FrameSheet.CharacteristicLine> read =
                whole.stream().flatMap(one -> one.characteristics().stream()).toList();
        return places.of(head.designRevisionId(), head.kind()).stream()
                .map(place -> withNominals(place, read))
                .map(place -> {
                    TubeIssued issued = standing.get(place.code());
                    return issued == null
                            ? new TubeSheet.Line(place, null, null)
                            : new TubeSheet.Line(
                                    place,
                                    issued,
                                    aside && setAside(issued)
                                            ? issued.lot() + " is "
                                                    + issued.state().word() + "."
                                            : wrong(
                                                    head.metal(),
                                                    place,
                                                    issued,
                                                    now.getOrDefault(issued.lotId(), List.of())));
                })
                .toList();
    }

    private static boolean setAside(TubeIssued issued) {
        return issued.state() == LotState.QUARANTINED || issued.state() == LotState.BLOCKED;
    }

    /** A drawing whose numbers are typed says of a tube what its characteristics say, wherever they are read. */
    private static TubePlace withNominals(TubePlace place, List<FrameSheet.CharacteristicLine> characteristics) {
        String called =
                Character.toUpperCase(place.called().charAt(0)) + place.called().substring(1);
        String name = place.code().startsWith("CHAINSTAY") ? "Chainstay" : called;
        BigDecimal outside = nominal(characteristics, name + " outside diameter");
        return place.outside_mm() != null || outside == null
                ? place
                : new TubePlace(
                        place.code(),
                        place.called(),
                        place.fitting(),
                        outside,
                        nominal(characteristics, name + " wall"),
                        null,
                        null);
    }

    private static @Nullable BigDecimal nominal(List<FrameSheet.CharacteristicLine> characteristics, String name) {
        return characteristics.stream()
                .filter(one -> one.name().equals(name) && one.unit().equals("mm") && one.nominal() != null)
                .map(FrameSheet.CharacteristicLine::nominal)
                .findFirst()
                .orElse(null);
    }

    /** Judged by what the lot says now: it may have been corrected since the tube was issued from it. */
    private @Nullable String wrong(String metal, TubePlace place, TubeIssued issued, List<Section> now) {
        if (issued.kind() != LotKind.TUBE && !(issued.kind() == LotKind.FITTING && place.fitting())) {
            return issued.lot() + " is a " + issued.kind().word() + ".";
        }
        if (!metal.equals(issued.metal())) {
            return issued.lot() + " is " + Fits.named(issued.metal()) + ", and the frame is " + Fits.named(metal) + ".";
        }
        Optional<String> temper =
                issued.kind() == LotKind.TUBE ? tempers.against(issued.metal(), issued.grade()) : Optional.empty();
        return temper.map(why -> "Of " + issued.lot() + " " + why + ".")
                .orElseGet(() -> wrongSection(place, issued, now));
    }

    private @Nullable String wrongSection(TubePlace place, TubeIssued issued, List<Section> now) {
        Section taken = issued.section();
        boolean corrected = !now.isEmpty() && (taken == null || !now.contains(taken));
        SectionFit fit = fit(place, corrected ? nearest(place, now) : taken);
        if (fit == SectionFit.SAME || !corrected && fit != SectionFit.OTHER && issued.reason() != null) {
            return null;
        }
        String asks = ", and the drawing asks for " + asked(place) + ".";
        if (corrected) {
            return issued.lot() + " holds "
                    + now.stream().map(one -> one.words(formats)).collect(Collectors.joining(", ")) + " by now"
                    + (taken == null ? "" : "; it was taken as " + taken.words(formats)) + asks;
        }
        return taken == null
                ? "The section of " + issued.lot() + " is not on record" + asks
                : "It was taken as " + taken.words(formats) + asks;
    }

    /** The section of a lot that is the drawing's own for a place; a lot that is not is refused, and nobody decides here. */
    @Nullable
    Section fitting(FrameSheet.Head head, String code, Lot lot) {
        TubePlace place = lines(head).stream()
                .map(TubeSheet.Line::place)
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow();
        List<Section> now = sections.newest(List.of(lot.id())).stream()
                .map(LotSectionRow::section)
                .toList();
        Optional<String> temper =
                lot.kind() == LotKind.TUBE ? tempers.against(lot.metal(), lot.grade()) : Optional.empty();
        Section nearest = nearest(place, now);
        if (temper.isPresent()
                || lot.kind() != LotKind.TUBE && !place.fitting()
                || fit(place, nearest) != SectionFit.SAME) {
            throw Refusal.input(
                    "lot",
                    "The " + place.called() + " was not issued.",
                    temper.map(why -> "Of " + lot.code() + " " + why + ".")
                            .orElseGet(() -> lot.code() + " is a " + lot.kind().word() + " and holds "
                                    + (now.isEmpty()
                                            ? "no section that is on record"
                                            : now.stream()
                                                    .map(one -> one.words(formats))
                                                    .collect(Collectors.joining(", ")))
                                    + "; the drawing asks for " + asked(place) + " as " + place.called() + "."),
                    "Take a tube of that section whose lot says so.");
        }
        return nearest;
    }

    SectionFit fit(TubePlace place, @Nullable Section section) {
        return SectionFit.of(place, section, outside_mm(), wall_mm());
    }

    /** The section of a lot to take for a place; null where none is stated. */
    @Nullable
    Section nearest(TubePlace place, List<Section> sections) {
        return SectionFit.nearest(place, sections, outside_mm(), wall_mm()).orElse(null);
    }

    private BigDecimal outside_mm() {
        return settings.number("tube.outside_tolerance");
    }

    private BigDecimal wall_mm() {
        return settings.number("tube.wall_tolerance");
    }

    /** What the drawing asks for at a place, in words. */
    String asked(TubePlace place) {
        Section drawn = Section.of(place.outside_mm(), place.wall_mm(), place.middle_mm(), place.other_mm());
        return drawn != null
                ? drawn.words(formats) + (place.middle_mm() == null ? "" : ", butted")
                : place.outside_mm() == null ? "no section" : formats.number(place.outside_mm()) + " mm outside";
    }
}
