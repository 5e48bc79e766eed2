package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.CutPiece;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Formats;

/** Makes the templates a revision's tubes are cut by, or says why there are none. */
@Component
class Templates {

    private static final String UNDONE = "No template was made.";

    /** Instead of an end: both on one paper. */
    private static final String STRIP = "strip";

    private final FramePage frames;
    private final TemplateSheets sheets;
    private final PaperSizes papers;
    private final Formats formats;
    private final ObjectProvider<FrameSerials> serials;

    Templates(
            FramePage frames,
            TemplateSheets sheets,
            PaperSizes papers,
            Formats formats,
            ObjectProvider<FrameSerials> serials) {
        this.frames = frames;
        this.sheets = sheets;
        this.papers = papers;
        this.formats = formats;
        this.serials = serials;
    }

    /** A file and its name. */
    record Made(String name, byte[] content) {}

    /**
     * What can be asked for.
     *
     * @param tubes by name, the empty one for all
     * @param ends how both ends of a tube are laid on paper, by name
     * @param papers by name
     * @param usual name of the one in the shop's region
     */
    record Choice(
            Map<String, String> tubes,
            Map<String, String> ends,
            Map<String, String> papers,
            String usual,
            boolean mayBePrinted) {}

    Choice choice(DesignSheet sheet) {
        Map<String, String> tubes = new LinkedHashMap<>();
        tubes.put("", "all that are mitred");
        if (frames.computed(sheet).cuts() instanceof Answer.Determined<CutList> there) {
            there.value().pieces().stream()
                    .filter(piece -> !JointTemplate.of(piece).isEmpty())
                    .map(CutPiece::tube)
                    .forEach(tube -> tubes.put(tube.name(), tube.word()));
        }
        Map<String, String> ends = new LinkedHashMap<>();
        ends.put("", "each on its own paper");
        ends.put(STRIP, "both ends of a tube on one strip");
        return new Choice(tubes, ends, PaperSizes.names(), papers.usual().name(), !givenUp(sheet));
    }

    private static boolean givenUp(DesignSheet sheet) {
        return sheet.state() == DesignState.WITHDRAWN || sheet.state() == DesignState.SUPERSEDED;
    }

    /**
     * The templates of a tube, or of all.
     *
     * @param tube name of a tube; null for all of them
     * @param end 1 or 2; null for both, each on its own paper; strip for both on one
     * @param paper name of a paper; null for the usual one
     */
    Made of(DesignSheet sheet, @Nullable String tube, @Nullable String end, @Nullable String paper) {
        Paper chosen = papers.of(paper, UNDONE);
        FrameTube one = tube(tube);
        boolean both = end == null || end.isBlank();
        boolean strip = STRIP.equals(end);
        if (!both && !strip && !end.equals("1") && !end.equals("2")) {
            throw Refusal.input(
                    "end",
                    UNDONE,
                    "A tube has no end “" + end + "”.",
                    "Ask for end 1, end 2, for a strip of both, or leave it out.");
        }
        refuseIfGivenUp(sheet);
        CutList list = cutList(sheet);
        if (strip) {
            return strips(sheet, list, one, chosen);
        }
        List<JointTemplate> templates = list.pieces().stream()
                .filter(piece -> one == null || piece.tube() == one)
                .flatMap(piece -> JointTemplate.of(piece).stream())
                .filter(template -> both || template.second() == end.equals("2"))
                .toList();
        if (templates.isEmpty()) {
            throw Refusal.missing(
                    UNDONE, whyNone(list, one, both ? "" : end), "Look at the cut list which ends are mitred.");
        }
        return new Made(file(sheet, one, "templates"), sheets.file(frame(sheet), templates, chosen));
    }

    private Made strips(DesignSheet sheet, CutList list, @Nullable FrameTube tube, Paper paper) {
        List<TubeStrip> strips = list.pieces().stream()
                .filter(piece -> tube == null || piece.tube() == tube)
                .flatMap(piece -> TubeStrip.of(piece).stream())
                .toList();
        if (strips.isEmpty()) {
            throw Refusal.missing(
                    UNDONE,
                    tube == null
                            ? "No tube of this frame is mitred at both ends."
                            : "The " + tube.word() + " is not mitred at both ends.",
                    "Ask for the papers of its ends, one by one.");
        }
        return new Made(file(sheet, tube, "strips"), sheets.strips(frame(sheet), strips, paper));
    }

    private static String file(DesignSheet sheet, @Nullable FrameTube tube, String otherwise) {
        return sheet.drawnFor() + "-" + sheet.letter() + "-"
                + (tube == null ? otherwise : tube.word().replace(' ', '-')) + ".pdf";
    }

    private TemplateSheets.Frame frame(DesignSheet sheet) {
        FrameSerials known = serials.getIfAvailable();
        String name = known == null
                ? sheet.drawnFor()
                : known.serialOf(sheet.drawnFor()).map(formats::serial).orElse(sheet.drawnFor());
        return new TemplateSheets.Frame(
                name,
                sheet.letter(),
                sheet.metal(),
                sheet.state().word(),
                sheet.state() == DesignState.RELEASED ? "" : "not released");
    }

    private static @Nullable FrameTube tube(@Nullable String typed) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        return Arrays.stream(FrameTube.values())
                .filter(each -> each.name().equals(typed.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "tube",
                        UNDONE,
                        "A frame has no tube “" + typed + "”.",
                        "Choose one of "
                                + Arrays.stream(FrameTube.values())
                                        .map(Enum::name)
                                        .collect(Collectors.joining(", "))
                                + "."));
    }

    /** Paper outlives the screen: nothing is printed that nobody may cut by any more. */
    private static void refuseIfGivenUp(DesignSheet sheet) {
        if (givenUp(sheet)) {
            throw Refusal.state(
                    UNDONE,
                    "Revision " + sheet.letter() + " of " + sheet.drawnFor() + " is "
                            + sheet.state().word() + ".",
                    "Print the templates of the revision that is in force.");
        }
    }

    private CutList cutList(DesignSheet sheet) {
        Answer<CutList> cuts = frames.computed(sheet).cuts();
        if (cuts instanceof Answer.Determined<CutList> there) {
            return there.value();
        }
        throw Refusal.state(
                UNDONE,
                formats.sentence(((Answer.NotDeterminable<CutList>) cuts)
                        .gaps().stream()
                                .map(Answer.Gap::words)
                                .distinct()
                                .limit(3)
                                .collect(Collectors.joining(" "))),
                "Complete the inputs of a draft; the drawing's sheet names all that is missing.");
    }

    private String whyNone(CutList list, @Nullable FrameTube tube, String end) {
        List<String> notCut = list.notCut().stream()
                .filter(gap ->
                        tube == null || gap.words().toLowerCase(Locale.ROOT).contains(tube.word()))
                .map(Answer.Gap::words)
                .map(formats::sentence)
                .toList();
        if (!notCut.isEmpty()) {
            return String.join(" ", notCut);
        }
        if (tube == null) {
            return "No end of this frame's tubes is mitred.";
        }
        boolean there = list.pieces().stream().map(CutPiece::tube).anyMatch(each -> each == tube);
        return there
                ? "The " + tube.word() + "'s "
                        + (end.equals("1") ? "first end" : end.equals("2") ? "second end" : "ends")
                        + (end.isEmpty() ? " are" : " is") + " not mitred on a round mate."
                : "This frame's cut list has no " + tube.word() + ".";
    }
}
