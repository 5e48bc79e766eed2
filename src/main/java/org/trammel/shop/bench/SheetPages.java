package org.trammel.shop.bench;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.alignment.PushAdvices;
import org.trammel.shop.alignment.TableCharacteristics;
import org.trammel.shop.assembly.BuildSheets;
import org.trammel.shop.assembly.TorqueSheets;
import org.trammel.shop.coats.CoatSheets;
import org.trammel.shop.cuts.CutSheets;
import org.trammel.shop.handwork.ProofSheet;
import org.trammel.shop.handwork.ProofSheets;
import org.trammel.shop.materials.TubeSheets;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.ConfirmationOverrides;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.welding.WeldSheets;

/** The sheets of one frame at a station. What they change is sent to the forms. */
@Controller
@RequestMapping("/station/{tag}")
class SheetPages {

    /** As they are offered: danger to people first, then as they are named. */
    private static final List<HoldReason> REASONS = Stream.of(HoldReason.values())
            .sorted(Comparator.comparing(reason -> reason != HoldReason.SAFETY))
            .toList();

    private final Tags tags;
    private final FrameViews frames;
    private final ReadingViews readings;
    private final SignViews signing;
    private final ConfirmationOverrides overrides;
    private final LastGauge lastGauge;
    private final TableCharacteristics table;
    private final PushAdvices pushes;
    private final CoatSheets coats;
    private final TorqueSheets torques;
    private final BuildSheets builds;
    private final WeldSheets welds;
    private final ProofSheets proofs;
    private final TubeSheets tubes;
    private final CutSheets cuts;

    SheetPages(
            Tags tags,
            FrameViews frames,
            ReadingViews readings,
            SignViews signing,
            ConfirmationOverrides overrides,
            LastGauge lastGauge,
            TableCharacteristics table,
            PushAdvices pushes,
            CoatSheets coats,
            TorqueSheets torques,
            BuildSheets builds,
            WeldSheets welds,
            ProofSheets proofs,
            TubeSheets tubes,
            CutSheets cuts) {
        this.tags = tags;
        this.frames = frames;
        this.readings = readings;
        this.signing = signing;
        this.overrides = overrides;
        this.lastGauge = lastGauge;
        this.table = table;
        this.pushes = pushes;
        this.coats = coats;
        this.torques = torques;
        this.builds = builds;
        this.welds = welds;
        this.proofs = proofs;
        this.tubes = tubes;
        this.cuts = cuts;
    }

    /** What the address of the sheet may ask for. */
    record Query(
            @Nullable Long step,
            @Nullable Long read,
            @Nullable Boolean again,
            @Nullable Long correct,
            @Nullable String gauge,
            @Nullable Boolean here,
            @Nullable String scanned,
            @Nullable String old) {

        boolean told() {
            return scanned != null || old != null;
        }
    }

    @GetMapping
    String frame(@PathVariable String tag, Query query, SignedOn who, HttpServletRequest request, Model model) {
        FrameSheet sheet = tags.sheet(tag);
        FrameView view = query.read() == null
                ? frames.of(sheet, who, new FrameViews.Asked(query.step(), null, Boolean.TRUE.equals(query.here())))
                : null;
        model.addAttribute("coat", coat(sheet));
        model.addAttribute("cuts", cuts.at(sheet).orElse(null));
        model.addAttribute("torques", torques(sheet));
        model.addAttribute("builds", builds(sheet));
        model.addAttribute("weld", weld(sheet));
        model.addAttribute("tubes", tubes.at(sheet).orElse(null));
        Long characteristic = query.read() != null ? query.read() : query.told() ? null : nextToRead(view);
        if (characteristic == null) {
            model.addAttribute("view", view);
            model.addAttribute("met", met(sheet, query));
            model.addAttribute("proof", proof(sheet, view));
            model.addAttribute("unconfirmed", unconfirmed(sheet, view, who));
            return "bench/frame";
        }
        String gauge = query.gauge() == null ? lastGauge.in(request, sheet.at(), characteristic) : query.gauge();
        ReadingView reading = readings.of(
                sheet,
                who,
                new ReadingViews.Asked(characteristic, Boolean.TRUE.equals(query.again()), query.correct(), gauge),
                view);
        model.addAttribute("reading", reading);
        model.addAttribute("view", reading.frame());
        model.addAttribute("table", onTheTable(sheet, characteristic));
        return "bench/reading";
    }

    /** The operation at hand, where the alignment table measures the characteristic. */
    private @Nullable Long onTheTable(FrameSheet sheet, long characteristicId) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at != null
                        && table.of(at.characteristics()).stream()
                                .anyMatch(one -> one.line().characteristicId() == characteristicId)
                ? at.line().operationId()
                : null;
    }

    /** The operation at hand, where its surface or coat is recorded. */
    private @Nullable Long coat(FrameSheet sheet) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at != null && coats.at(at.line().code(), sheet.head().metal())
                ? at.line().operationId()
                : null;
    }

    /** The operation at hand, where the components of the frame are torqued. */
    private @Nullable Long torques(FrameSheet sheet) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at != null
                        && torques.at(
                                sheet.head().serial(),
                                sheet.head().part(),
                                at.line().code())
                ? at.line().operationId()
                : null;
    }

    /** The operation at hand, where parts are joined or the bicycle is ridden or packed. */
    private @Nullable Long builds(FrameSheet sheet) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at != null && builds.at(at.line().code()) ? at.line().operationId() : null;
    }

    /** The operation at hand, where its welds are recorded. */
    private @Nullable Long weld(FrameSheet sheet) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at != null && welds.at(sheet.head(), at.line().code())
                ? at.line().operationId()
                : null;
    }

    /** A confirmation of the person signed on that has run out, where the next thing asks for it. */
    private ConfirmationOverrides.@Nullable Lapsed unconfirmed(
            FrameSheet sheet, @Nullable FrameView view, SignedOn who) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at == null
                        || view == null
                        || !view.plate().is("STEP") && !view.plate().is("BARRED")
                ? null
                : overrides.lapsed(who.person().id(), at);
    }

    /** What the step at hand asks for beside its tick. */
    private @Nullable ProofSheet proof(FrameSheet sheet, @Nullable FrameView view) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at == null || view == null || !view.plate().is("STEP")
                ? null
                : proofs.of(sheet.head(), at.line(), view.plate().step()).orElse(null);
    }

    private static @Nullable Long nextToRead(@Nullable FrameView view) {
        if (view == null || view.at() == null || !view.plate().is("READING")) {
            return null;
        }
        return view.at().characteristics().stream()
                .filter(c -> !c.state().settled())
                .map(FrameSheet.CharacteristicLine::characteristicId)
                .findFirst()
                .orElse(null);
    }

    /** What a scanned tag met on this sheet; null if nothing was scanned. */
    record Met(
            String scanned,
            String scannedMark,
            boolean same,
            @Nullable String old) {}

    private static @Nullable Met met(FrameSheet sheet, Query query) {
        if (!query.told()) {
            return null;
        }
        FrameSheet.Head head = sheet.head();
        String scanned = query.scanned() == null ? head.tag() : query.scanned();
        String old = query.old() == null || query.old().equals(head.letter()) ? null : query.old();
        return new Met(scanned, Tags.mark(scanned), scanned.equals(head.tag()), old);
    }

    private static List<HoldReason> reasons(SignedOn who) {
        return REASONS.stream()
                .filter(reason -> who.person().maySign() || !reason.saysWhatWasFound())
                .toList();
    }

    /** A reading that nothing at hand can decide is taken along, so that a nonconformance is about it. */
    @GetMapping("/stop")
    String stop(@PathVariable String tag, @RequestParam @Nullable Long characteristic, SignedOn who, Model model) {
        show(tag, who, model);
        model.addAttribute("reasons", reasons(who));
        model.addAttribute("about", about(tag, characteristic));
        return "bench/stop";
    }

    @GetMapping("/note")
    String note(@PathVariable String tag, SignedOn who, Model model) {
        show(tag, who, model);
        return "bench/note";
    }

    /** A photograph of the operation at hand, large. */
    @GetMapping("/picture")
    String picture(@PathVariable String tag, @RequestParam String of, SignedOn who, Model model) {
        FrameSheet sheet = tags.sheet(tag);
        FrameView view = frames.of(sheet, who, new FrameViews.Asked(null, null, true));
        model.addAttribute("view", view);
        model.addAttribute(
                "picture",
                view.pictures().stream()
                        .filter(picture -> picture.sha256().equals(of))
                        .findFirst()
                        .orElseThrow(() -> Refusal.missing(
                                "The photograph is not shown.",
                                "It does not belong to the operation at hand of "
                                        + sheet.head().mark() + ".",
                                "Look for it in the frame's story.")));
        return "bench/picture";
    }

    @GetMapping("/holds")
    String holds(@PathVariable String tag, SignedOn who, Model model) {
        show(tag, who, model);
        return "bench/holds";
    }

    @GetMapping("/send-out")
    String sendOut(@PathVariable String tag, SignedOn who, Model model) {
        show(tag, who, model);
        return "bench/send-out";
    }

    @GetMapping("/untick")
    String untick(@PathVariable String tag, @RequestParam long step, SignedOn who, Model model) {
        FrameView view = frames.of(tags.sheet(tag), who, new FrameViews.Asked(null, null, true));
        FrameView.Past past = view.past();
        if (past == null || past.stepId() != step) {
            // The page names the tick made last; it must never send another one.
            throw Refusal.stale(
                    "Nothing is taken back.",
                    past == null
                            ? "No tick of " + view.head().mark() + " can be taken back here."
                            : "The tick made last on " + view.head().mark() + " is another one: " + past.words() + ".",
                    "Open the frame again; the tick made last is offered there.");
        }
        model.addAttribute("view", view);
        model.addAttribute("stepId", step);
        return "bench/untick";
    }

    @GetMapping("/sign")
    String sign(@PathVariable String tag, @RequestParam @Nullable Signer as, SignedOn who, Model model) {
        SignView sign = signing.of(tags.sheet(tag), who, as);
        model.addAttribute("sign", sign);
        model.addAttribute("view", sign.frame());
        return "bench/sign";
    }

    @GetMapping("/cold-set")
    String coldSet(@PathVariable String tag, @RequestParam long characteristic, SignedOn who, Model model) {
        ReadingView reading =
                readings.of(tags.sheet(tag), who, new ReadingViews.Asked(characteristic, false, null, null), null);
        model.addAttribute("reading", reading);
        model.addAttribute("view", reading.frame());
        model.addAttribute(
                "advice",
                pushes.of(reading.frame().head(), reading.characteristic()).orElse(null));
        return "bench/cold-set";
    }

    private void show(String tag, SignedOn who, Model model) {
        model.addAttribute("view", frames.of(tags.sheet(tag), who, new FrameViews.Asked(null, null, true)));
    }

    private FrameSheet.@Nullable CharacteristicLine about(String tag, @Nullable Long characteristic) {
        FrameSheet.OperationSheetOfFrame at =
                characteristic == null ? null : tags.sheet(tag).at();
        return at == null
                ? null
                : at.characteristics().stream()
                        .filter(c -> c.characteristicId() == characteristic)
                        .findFirst()
                        .orElse(null);
    }
}
