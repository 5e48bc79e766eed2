package org.trammel.shop.handwork;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.TubeBlanks;
import org.trammel.shop.dew.DewGauges;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.dew.DewMargins;
import org.trammel.shop.dew.DewPurpose;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;

/** Tells the sheet of a frame what form a step needs beside its tick. */
@Service
@Transactional(readOnly = true)
public class ProofSheets {

    private final HandRecords records;
    private final HandGuard guard;
    private final DewGauges gauges;
    private final Tools tools;
    private final ToolUseRepository uses;
    private final DewMargins margins;
    private final TubeBlanks blanks;

    ProofSheets(
            HandRecords records,
            HandGuard guard,
            DewGauges gauges,
            Tools tools,
            ToolUseRepository uses,
            DewMargins margins,
            TubeBlanks blanks) {
        this.blanks = blanks;
        this.records = records;
        this.guard = guard;
        this.gauges = gauges;
        this.tools = tools;
        this.uses = uses;
        this.margins = margins;
    }

    /** What is asked for beside the tick; empty where that is nothing, or stands already. */
    public Optional<ProofSheet> of(
            FrameSheet.Head head, FrameSheet.OperationLine line, FrameSheet.@Nullable StepLine step) {
        Proof proof = step == null ? null : step.proof();
        if (proof == null
                || guard.lacking(new HandTurn.At(head, line, Set.of(proof)), "", proof)
                        .isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                switch (proof) {
                    case CLEANED, BRUSHED ->
                        new ProofSheet(line.operationId(), proof, kinds(head, line, proof), null, List.of());
                    case WARM_DRY -> new ProofSheet(line.operationId(), proof, List.of(), air(), List.of());
                    case WATER_BREAK ->
                        new ProofSheet(line.operationId(), proof, List.of(), null, parts(head.designRevisionId()));
                    // The serial; what is recorded elsewhere is never lacking here.
                    default -> new ProofSheet(line.operationId(), proof, List.of(), null, List.of());
                });
    }

    private List<ProofSheet.Kind> kinds(FrameSheet.Head head, FrameSheet.OperationLine line, Proof proof) {
        MetalFamily family = MetalFamily.of(head.metal());
        HandRecord record = records.of(line.operationId(), Set.of(proof));
        List<String> last = uses.lastAt(line.station());
        List<Tool> fit = tools.all().stream()
                .filter(tool -> tool.family() == family && tool.retiredOn() == null && !tool.chlorinated())
                .sorted(Comparator.comparing(
                        tool -> last.contains(tool.code()) ? last.indexOf(tool.code()) : last.size()))
                .toList();
        return ToolKind.askedBy(proof).stream()
                .filter(kinds -> !record.touchedBy(kinds))
                .map(kinds -> new ProofSheet.Kind(
                        kinds.stream().map(ToolKind::word).collect(Collectors.joining(" or ")),
                        fit.stream()
                                .filter(tool -> kinds.contains(tool.kind()))
                                .map(tool -> new ProofSheet.Choice(tool.code(), tool.what()))
                                .toList()))
                .filter(kind -> !kind.tools().isEmpty())
                .toList();
    }

    /** Of a drawing that gives no cut list it is said of all of them at once. */
    List<String> parts(@Nullable Long revisionId) {
        List<String> words = revisionId == null
                ? List.of()
                : blanks.of(List.of(revisionId)).stream()
                        .map(blank -> blank.count() > 1 ? blank.tube() + "s" : blank.tube())
                        .toList();
        return words.isEmpty() ? List.of("every part") : words;
    }

    private ProofSheet.AirAsked air() {
        Optional<DewMargin> last = margins.last(DewPurpose.ARC);
        Map<String, String> ofAir = gauges.usableOnAir();
        Map<String, String> ofMetal = gauges.usableOnMetal();
        return new ProofSheet.AirAsked(
                ofAir,
                ofMetal,
                last.map(DewMargin::airGauge).filter(ofAir::containsKey).orElseGet(() -> only(ofAir)),
                last.map(DewMargin::metalGauge).filter(ofMetal::containsKey).orElseGet(() -> only(ofMetal)));
    }

    /** The one there is, beside the words that ask to choose; empty where there are several. */
    private static String only(Map<String, String> usable) {
        return usable.size() == 2
                ? usable.keySet().stream()
                        .filter(code -> !code.isEmpty())
                        .findFirst()
                        .orElse("")
                : "";
    }
}
