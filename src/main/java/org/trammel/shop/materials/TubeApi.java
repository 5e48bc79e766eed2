package org.trammel.shop.materials;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.designs.TubePlace;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@RestController
@RequestMapping("/api/v1")
@Tag(name = "Tubes", description = "Which tube goes to which place of a frame, and the sections that lie in a lot")
class TubeApi {

    private final TubeRecords records;
    private final TubeIssues issues;
    private final LotSections sections;
    private final Lots lots;

    TubeApi(TubeRecords records, TubeIssues issues, LotSections sections, Lots lots) {
        this.records = records;
        this.issues = issues;
        this.sections = sections;
        this.lots = lots;
    }

    /** @param wrong why what was issued does not stand; null where it does, or nothing was issued */
    record Place(
            TubePlace place,
            @Nullable Issued issued,
            @Nullable String wrong) {}

    record Issued(
            long useId,
            String lot,
            @Nullable Section section,
            @Nullable String reason,
            long by,
            Instant at) {}

    @GetMapping("/tubes/{operationId}")
    @Operation(summary = "Every place of the frame that a tube goes to, and the tube that was issued to it")
    List<Place> places(@PathVariable long operationId) {
        return records.of(operationId).lines().stream()
                .map(line -> new Place(line.place(), issued(line.issued()), line.wrong()))
                .toList();
    }

    private static @Nullable Issued issued(@Nullable TubeIssued tube) {
        return tube == null
                ? null
                : new Issued(tube.useId(), tube.lot(), tube.section(), tube.reason(), tube.by(), tube.at());
    }

    /**
     * @param place code of the place
     * @param lot code of the lot or of a remnant, as scanned
     * @param reason of the QA lead, where the section is not the drawing's own, or is not on record
     */
    record NewTube(
            @Nullable String place,
            @Nullable String lot,
            @Nullable BigDecimal quantity,
            @Nullable String unit,
            @Nullable String reason) {}

    @PostMapping("/tubes/{operationId}")
    @ResponseStatus(HttpStatus.CREATED)
    @Operation(summary = "Issues a tube to a place, if its lot holds the tube that the drawing asks for there")
    List<Place> issue(Act act, @PathVariable long operationId, @RequestBody NewTube body) {
        issues.issue(
                act,
                operationId,
                new TubeIssues.Scan(
                        Objects.requireNonNullElse(body.place(), ""),
                        Objects.requireNonNullElse(body.lot(), ""),
                        body.quantity(),
                        body.unit(),
                        body.reason()));
        return places(operationId);
    }

    @GetMapping("/lots/{code}/sections")
    @Operation(summary = "The sections of tube that lie in the lot")
    List<Section> sections(@PathVariable String code) {
        return sections.of(lots.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The lot was not found.", "No lot carries the code " + code + ".", "Ask for the list of lots."))
                .id());
    }

    record Sections(@Nullable List<Section> sections) {}

    @PutMapping("/lots/{code}/sections")
    @Operation(summary = "States all sections of the lot; what was stated before no longer stands")
    List<Section> state(Act act, @PathVariable String code, @RequestBody Sections body) {
        sections.state(act, code, Objects.requireNonNullElse(body.sections(), List.of()));
        return sections(code);
    }
}
