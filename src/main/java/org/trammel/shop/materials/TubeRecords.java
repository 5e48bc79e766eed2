package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.TubePlace;
import org.trammel.shop.designs.TubePlaces;
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
    private final Travellers travellers;
    private final Settings settings;
    private final Formats formats;

    TubeRecords(
            TubePlaces places, TubeIssueRepository issues, Travellers travellers, Settings settings, Formats formats) {
        this.places = places;
        this.issues = issues;
        this.travellers = travellers;
        this.settings = settings;
        this.formats = formats;
    }

    TubeSheet of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        Map<String, TubeIssued> standing = issues.standing(head.serial(), head.part()).stream()
                .collect(Collectors.toMap(TubeIssued::place, Function.identity(), (first, last) -> last));
        List<FrameSheet.OperationSheetOfFrame> whole = travellers.whole(head.travellerId());
        List<FrameSheet.CharacteristicLine> read =
                whole.stream().flatMap(one -> one.characteristics().stream()).toList();
        return new TubeSheet(
                head,
                whole.stream()
                        .map(FrameSheet.OperationSheetOfFrame::line)
                        .filter(line -> line.operationId() == operationId)
                        .findFirst()
                        .orElseThrow(),
                places.of(head.designRevisionId(), head.kind()).stream()
                        .map(place -> withNominals(place, read))
                        .map(place -> line(place, standing.get(place.code())))
                        .toList());
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

    private TubeSheet.Line line(TubePlace place, @Nullable TubeIssued issued) {
        return new TubeSheet.Line(place, issued, issued == null ? null : wrong(place, issued));
    }

    private @Nullable String wrong(TubePlace place, TubeIssued issued) {
        if (issued.state() == LotState.QUARANTINED || issued.state() == LotState.BLOCKED) {
            return issued.lot() + " is " + issued.state().word() + ".";
        }
        SectionFit fit = fit(place, issued.section());
        return fit == SectionFit.OTHER || fit == SectionFit.NEAR && issued.reason() == null
                ? "It was taken as "
                        + (issued.section() == null
                                ? "tube of no stated section"
                                : issued.section().words(formats))
                        + ", and the drawing asks for " + asked(place) + "."
                : null;
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
