package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.calc.drawing.ArmSheet;
import org.trammel.calc.drawing.DrawnSheet;
import org.trammel.calc.drawing.NumbersSheet;
import org.trammel.calc.drawing.PlanSheet;
import org.trammel.calc.drawing.SideSheet;
import org.trammel.calc.drawing.TitleBlock;
import org.trammel.calc.geometry.ArmPlan;
import org.trammel.calc.geometry.ArmUpper;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.RearPlan;
import org.trammel.calc.geometry.RearView;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.units.Answer;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.DrawnLetters;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.PdfFile;
import org.trammel.shop.web.SheetPrint;

/** Draws the sheets of a revision: from the drive side, the rear end from above, and its numbers. */
@Component
class DesignSheets {

    private static final List<NumbersSheet.Column> CUTS = List.of(
            new NumbersSheet.Column("Tube", 26, false),
            new NumbersSheet.Column("Number", 15, true),
            new NumbersSheet.Column("Outside × wall", 28, true),
            new NumbersSheet.Column("Axis", 18, true),
            new NumbersSheet.Column("Blank", 20, true),
            new NumbersSheet.Column("First end", 68, false),
            new NumbersSheet.Column("Second end", 68, false),
            new NumbersSheet.Column("Phase", 16, true));

    private final Settings settings;
    private final Formats formats;
    private final DrawnLetters letters;
    private final ObjectProvider<FrameSerials> serials;

    DesignSheets(Settings settings, Formats formats, DrawnLetters letters, ObjectProvider<FrameSerials> serials) {
        this.settings = settings;
        this.formats = formats;
        this.letters = letters;
        this.serials = serials;
    }

    /**
     * The sheets in their order; without one whose view cannot be computed.
     *
     * @param frame what follows from the revision's inputs
     * @param figures main dimensions
     * @param tubes the cut list
     */
    List<DrawnSheet> of(
            RevisionStory story,
            ComputedFrame frame,
            List<FramePage.Figure> figures,
            List<FramePage.Tube> tubes,
            Paper paper) {
        TitleBlock block = block(story);
        if (!(frame.side() instanceof Answer.Determined<SideView> side)) {
            return List.of();
        }
        Answer<RearView> above = frame.rear();
        int views = above instanceof Answer.Determined<RearView> ? 2 : 1;
        int all = views + (tubes.isEmpty() ? 0 : 1);
        List<DrawnSheet> sheets = new ArrayList<>();
        if (above instanceof Answer.Determined<RearView> rear) {
            sheets.add(SideSheet.of(side.value(), true, block, letters, paper, all));
            sheets.add(above(rear.value(), frame, story.sheet(), block, paper, all));
        } else {
            sheets.add(SideSheet.alone(side.value(), notAbove(above), block, letters, paper, all));
        }
        if (!tubes.isEmpty()) {
            sheets.add(NumbersSheet.of(
                    figures.stream()
                            .map(figure -> new NumbersSheet.Figure(
                                    figure.label(), formats.with(figure.amount(), 1, figure.unit())))
                            .toList(),
                    cuts(tubes),
                    block,
                    letters,
                    paper,
                    all,
                    all));
        }
        return sheets;
    }

    private DrawnSheet above(
            RearView rear, ComputedFrame frame, DesignSheet sheet, TitleBlock block, Paper paper, int all) {
        if (!(rear instanceof ArmPlan arm)) {
            return PlanSheet.of((RearPlan) rear, block, letters, paper, 2, all);
        }
        RearInputs in = new RearInputs(new GivenInputs(sheet.geometry()));
        Answer<ArmUpper> upper = frame.geometry().then(in::upper);
        List<String> missing = Stream.concat(
                        notShown(upper), in.notShown().stream().map(formats::sentence))
                .toList();
        return ArmSheet.of(
                arm,
                upper instanceof Answer.Determined<ArmUpper> known ? known.value() : null,
                missing,
                block,
                letters,
                paper,
                2,
                all);
    }

    private Stream<String> notShown(Answer<ArmUpper> upper) {
        return upper instanceof Answer.NotDeterminable<ArmUpper> none
                ? Stream.of(formats.sentence("The upper members are not drawn. "
                        + none.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" "))))
                : Stream.empty();
    }

    private List<String> notAbove(Answer<RearView> above) {
        return above instanceof Answer.NotDeterminable<RearView> none
                ? Stream.concat(
                                Stream.of("The rear end is not drawn from above:"),
                                none.gaps().stream().map(Answer.Gap::words).map(formats::sentence))
                        .toList()
                : List.of();
    }

    /** The sheets as a file to print. */
    byte[] file(DesignSheet of, List<DrawnSheet> sheets) {
        String title = "Drawing of " + name(of.drawnFor()) + ", revision " + of.letter();
        try (PdfFile file = new PdfFile(title, settings.text("shop.name"), settings.locale())) {
            sheets.forEach(sheet -> SheetPrint.add(file, sheet));
            return file.content();
        }
    }

    private TitleBlock block(RevisionStory story) {
        DesignSheet sheet = story.sheet();
        RevisionSummary revision = story.revision();
        return new TitleBlock(
                settings.text("shop.name"),
                sheet.description(),
                name(sheet.drawnFor()),
                sheet.letter(),
                FrameWords.metal(sheet.metal()),
                sheet.state().word(),
                by(story, revision.begunBy()) + formats.date(settings.dayOf(revision.begunAt())),
                checked(story),
                revision.approvedOn() == null || revision.approvedBy() == null
                        ? ""
                        : formats.date(revision.approvedOn()) + ", entered by "
                                + story.names().getOrDefault(revision.approvedBy(), ""),
                notForWork(sheet.state()));
    }

    private String name(String drawnFor) {
        FrameSerials known = serials.getIfAvailable();
        return known == null
                ? drawnFor
                : known.serialOf(drawnFor).map(formats::serial).orElse(drawnFor);
    }

    private static String by(RevisionStory story, long person) {
        String name = story.names().getOrDefault(person, "");
        return name.isEmpty() ? "" : name + ", ";
    }

    private String checked(RevisionStory story) {
        return story.signatures().isEmpty()
                ? ""
                : story.signatures().stream()
                                .map(RevisionStory.SignatureLine::by)
                                .distinct()
                                .collect(Collectors.joining(", "))
                        + ", "
                        + formats.date(settings.dayOf(story.signatures()
                                .get(story.signatures().size() - 1)
                                .at()));
    }

    /** Paper outlives the screen: it says itself that nobody may work by it. */
    private static String notForWork(DesignState state) {
        return state == DesignState.RELEASED
                ? ""
                : switch (state) {
                    case SUPERSEDED, WITHDRAWN -> state.word() + ": not for work";
                    default -> "not released: not for work";
                };
    }

    private NumbersSheet.Table cuts(List<FramePage.Tube> tubes) {
        List<List<String>> rows = tubes.stream()
                .map(tube -> List.of(
                        tube.name(),
                        String.valueOf(tube.count()),
                        tube.section(),
                        formats.number(tube.axis_mm(), 1),
                        formats.number(tube.blank_mm(), 1),
                        end(tube.one()),
                        end(tube.two()),
                        tube.phase_deg() == null ? "" : formats.with(tube.phase_deg(), 1, "°")))
                .toList();
        List<String> notes = new ArrayList<>(List.of(
                "Blank: axis length less the shortest setback at each end, with the trim at each mitred end. A first piece"
                        + " is cut from scrap and tried on its mate."));
        tubes.forEach(tube -> {
            tube.notes().forEach(note -> notes.add(upper(tube.name()) + ": " + note));
            tube.cautions().forEach(caution -> notes.add(upper(tube.name()) + ": " + caution));
        });
        return new NumbersSheet.Table("Cut list, lengths in mm", CUTS, rows, notes);
    }

    private static String upper(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private String end(FramePage.End end) {
        String setback = end.mitred()
                ? "\nsetback " + formats.number(end.least_mm(), 1) + " to " + formats.number(end.most_mm(), 1)
                : "";
        return end.what() + (end.saw().isEmpty() ? "" : ": " + end.saw()) + setback;
    }
}
