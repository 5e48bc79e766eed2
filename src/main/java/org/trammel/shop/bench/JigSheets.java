package org.trammel.shop.bench;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/**
 * Lays out the sheet by which a jig is set: the drawing's numbers of what is read back blind. From the first reading back to
 * the second it is closed, so that the second person reads the jig and not the sheet.
 */
@Component
class JigSheets {

    private final Travellers travellers;
    private final Evidence evidence;
    private final Stations stations;
    private final Settings settings;
    private final Words words;
    private final Formats formats;

    JigSheets(
            Travellers travellers,
            Evidence evidence,
            Stations stations,
            Settings settings,
            Words words,
            Formats formats) {
        this.travellers = travellers;
        this.evidence = evidence;
        this.stations = stations;
        this.settings = settings;
        this.words = words;
        this.formats = formats;
    }

    /** Whether a jig is set at the operation, by a sheet that is open now. */
    static boolean setsUp(FrameSheet.@Nullable OperationSheetOfFrame at) {
        return at != null
                && at.characteristics().stream().anyMatch(FrameSheet.CharacteristicLine::blind)
                && at.characteristics().stream().noneMatch(JigSheets::readOnce);
    }

    private static boolean readOnce(FrameSheet.CharacteristicLine c) {
        return c.blind() && c.state() == CharacteristicState.FIRST_READ;
    }

    JigSheet of(FrameSheet sheet) {
        FrameSheet.Head head = sheet.head();
        String not = "No sheet for a jig is shown for " + head.mark() + ".";
        FrameSheet.OperationSheetOfFrame at = travellers.whole(head.travellerId()).stream()
                .filter(operation -> operation.characteristics().stream()
                        .anyMatch(c -> evidence.wanted(c.characteristicId()).readBack()))
                .reduce((first, later) -> later)
                .orElseThrow(() ->
                        Refusal.missing(not, "Nothing on its route is read back from a jig.", "Go back to the frame."));
        if (at.characteristics().stream().anyMatch(JigSheets::readOnce)) {
            throw Refusal.state(
                    not,
                    "The jig was read back once, and a second person reads it now without knowing the numbers.",
                    "Read the jig. When both have read it, the sheet opens again.");
        }
        return new JigSheet(
                head,
                Words.called(at.line()) + " " + at.line().name(),
                at.characteristics().stream()
                        .map(c -> evidence.wanted(c.characteristicId()))
                        .filter(wanted -> wanted.readBack() && wanted.nominal() != null)
                        .map(this::number)
                        .toList(),
                at.steps().stream()
                        .filter(step -> !step.irreversible() && step.lotKind() == null)
                        .map(step ->
                                step.instruction().isEmpty() ? step.text() : step.text() + ": " + step.instruction())
                        .toList(),
                stations.jigs().stream()
                        .filter(jig -> jig.stationCode().equals(at.line().station()))
                        .map(jig -> new JigSheet.OfStation(jig, jig.overdue(settings.today())))
                        .toList());
    }

    private JigSheet.Number number(Evidence.Wanted wanted) {
        return new JigSheet.Number(
                wanted.code(),
                wanted.name(),
                formats.with(Objects.requireNonNull(wanted.nominal()), wanted.decimals(), wanted.unit()),
                words.limits(
                        wanted.nominal(), wanted.lowerLimit(), wanted.upperLimit(), wanted.unit(), wanted.decimals()));
    }
}
