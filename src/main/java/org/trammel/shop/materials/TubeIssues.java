package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.TubePlace;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.web.Formats;

/** Issues tubes to the places of a frame, one by one: the lot that was scanned must hold the tube the drawing asks for. */
@Service
public class TubeIssues {

    private final TubeRecords records;
    private final TubeIssueRepository issues;
    private final Lots lots;
    private final LotSections sections;
    private final Tempers tempers;
    private final HasCome hasCome;
    private final Crew crew;
    private final Formats formats;
    private final ActLog log;

    TubeIssues(
            TubeRecords records,
            TubeIssueRepository issues,
            Lots lots,
            LotSections sections,
            Tempers tempers,
            HasCome hasCome,
            Crew crew,
            Formats formats,
            ActLog log) {
        this.records = records;
        this.issues = issues;
        this.lots = lots;
        this.sections = sections;
        this.tempers = tempers;
        this.hasCome = hasCome;
        this.crew = crew;
        this.formats = formats;
        this.log = log;
    }

    /**
     * What was scanned for a place.
     *
     * @param place its code
     * @param lot code of the lot or of a remnant
     * @param quantity how much is taken; null where it is not measured
     * @param unit null for the lot's own
     * @param reason why a section that is not the drawing's own is taken, by the QA lead; null if it is
     */
    public record Scan(
            String place,
            String lot,
            @Nullable BigDecimal quantity,
            @Nullable String unit,
            @Nullable String reason) {}

    /** Codes of the places to which no tube was issued yet. */
    @Transactional(readOnly = true)
    public List<String> open(long operationId) {
        return records.of(operationId).lines().stream()
                .filter(line -> line.issued() == null)
                .map(line -> line.place().code())
                .toList();
    }

    /** The section that the drawing gives a place; null where it gives none, or only the outside. */
    @Transactional(readOnly = true)
    public @Nullable Section asked(long operationId, String code) {
        TubePlace place =
                line(records.of(operationId), code, "There is no such place.").place();
        return Section.of(place.outside_mm(), place.wall_mm(), place.middle_mm(), place.other_mm());
    }

    /** Issues a tube to a place of the frame, at the operation where it stands. */
    @Transactional
    public void issue(Act act, long operationId, Scan scan) {
        if (!hasCome.opens(act, "issue-tube", "operation:" + operationId, List.of(operationId))) {
            return;
        }
        TubeSheet sheet = records.of(operationId);
        TubeSheet.Line line = line(sheet, scan.place(), "The tube was not issued.");
        String not = "The " + line.place().called() + " was not issued.";
        refuseUnlessAtHand(sheet, not);
        if (line.issued() != null) {
            throw Refusal.state(
                    not,
                    line.issued().lot() + " was issued as " + line.place().called() + " already.",
                    "Scan the next tube. If this one is not used, scrap it first and say why.");
        }
        Destination to = new Destination(
                sheet.head().serial(),
                sheet.head().part(),
                sheet.head().metal(),
                null,
                sheet.line().code(),
                line.place().called());
        LotKind asked = line.place().fitting() ? null : LotKind.TUBE;
        Lot lot = lots.issuable(scan.lot(), LotKind.TUBE, to);
        refuseUnlessKind(lot, line.place(), not);
        Section section = section(act, lot, line.place(), scan.reason(), not);
        String reason = records.fit(line.place(), section) == SectionFit.SAME
                ? null
                : TypedText.line("reason", "Reason", not, scan.reason(), 400);
        long use = lots.issue(act, scan.lot(), to, asked, scan.quantity(), scan.unit());
        issues.saveAndFlush(new TubeIssueRow(use, operationId, line.place().code(), section, reason, act.by()));
        log.event(
                Lots.chain(to.serial()),
                "tube-issued",
                Map.of(
                        "use",
                        use,
                        "place",
                        line.place().code(),
                        "section",
                        section == null ? "" : section.words(formats),
                        "decided",
                        reason != null));
        hasCome.to(act, operationId);
    }

    private static TubeSheet.Line line(TubeSheet sheet, String code, String not) {
        return sheet.lines().stream()
                .filter(line -> line.place().code().equalsIgnoreCase(code.strip()))
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "place",
                        not,
                        "This frame has no place " + (code.isBlank() ? "without a name" : "“" + code.strip() + "”")
                                + "; it has "
                                + sheet.lines().stream()
                                        .map(line -> line.place().code())
                                        .collect(Collectors.joining(", "))
                                + ".",
                        "Choose one of them."));
    }

    private static void refuseUnlessAtHand(TubeSheet sheet, String not) {
        Long current = sheet.head().currentOperationId();
        if (!sheet.head().state().open()
                || current == null
                || current != sheet.line().operationId()) {
            throw Refusal.state(
                    not,
                    "The frame does not stand at operation " + sheet.line().code() + ": "
                            + (sheet.head().currentCode() == null
                                            || !sheet.head().state().open()
                                    ? "it is " + sheet.head().state().word() + "."
                                    : "it stands at " + sheet.head().currentCode() + "."),
                    "Open the frame again to see where it stands.");
        }
    }

    private void refuseUnlessKind(Lot lot, TubePlace place, String not) {
        if (lot.kind() != LotKind.TUBE && !place.fitting()) {
            throw Refusal.input(
                    "lot",
                    not,
                    lot.code() + " is a " + lot.kind().word() + ", and the " + place.called() + " is cut from a tube.",
                    "Scan the label of the tube.");
        }
        if (lot.kind() == LotKind.TUBE) {
            tempers.against(lot.metal(), lot.grade()).ifPresent(why -> {
                throw Refusal.input(
                        "lot",
                        not,
                        "Of " + lot.code() + " " + why + ".",
                        "Put it on the quarantine rack and take a tube of the right temper.");
            });
        }
    }

    private @Nullable Section section(Act act, Lot lot, TubePlace place, @Nullable String reason, String not) {
        List<Section> has = sections.of(lot.id());
        Section nearest = records.nearest(place, has);
        String asks = "the drawing asks for " + records.asked(place) + " as " + place.called() + ".";
        if (nearest == null) {
            if (records.fit(place, null) == SectionFit.OTHER) {
                throw Refusal.input(
                        "lot",
                        not,
                        "The section of " + lot.code() + " is not on record, and " + asks,
                        "Let the QA lead state its sections on the sheet of the lot, or scan another tube.");
            }
            if (records.fit(place, null) == SectionFit.UNDECIDED) {
                refuseUnlessDecided(
                        act,
                        reason,
                        "Whether " + lot.code() + " is that one is undecided: its section is not on record, and "
                                + asks,
                        not);
            }
            return null;
        }
        SectionFit fit = records.fit(place, nearest);
        if (fit == SectionFit.OTHER) {
            throw Refusal.input(
                    "lot",
                    not,
                    lot.code() + " holds "
                            + has.stream().map(one -> one.words(formats)).collect(Collectors.joining(", ")) + "; "
                            + asks,
                    "Take the tube of that section and scan its label.");
        }
        if (fit == SectionFit.NEAR) {
            refuseUnlessDecided(
                    act,
                    reason,
                    lot.code() + " holds " + nearest.words(formats)
                            + ", which is within the tolerance but not the drawing's own; " + asks,
                    not);
        }
        return nearest;
    }

    private void refuseUnlessDecided(Act act, @Nullable String reason, String why, String not) {
        if (!crew.byId(act.by()).is(Role.QA_LEAD)) {
            throw Refusal.person(
                    not, why, "Call the QA lead, who takes it with a reason, or scan a tube of that section.");
        }
        if (reason == null || reason.isBlank()) {
            throw Refusal.ask("reason", not, why, "Say why it is taken all the same, or scan another tube.");
        }
    }
}
