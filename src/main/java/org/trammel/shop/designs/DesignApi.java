package org.trammel.shop.designs;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.Uploads;

/** Designs for programs: the same verbs and checks as the sheets. */
@RestController
@RequestMapping("/api/v1/designs/{id}")
@Tag(
        name = "Designs",
        description =
                "Revisions of a frame's drawing. Lengths in mm, angles in °, masses in kg; nominals in the unit of"
                        + " their characteristic.")
class DesignApi {

    private final DesignReading reading;
    private final Designs designs;
    private final DrawingOffice office;
    private final DesignGate gate;

    DesignApi(DesignReading reading, Designs designs, DrawingOffice office, DesignGate gate) {
        this.reading = reading;
        this.designs = designs;
        this.office = office;
        this.gate = gate;
    }

    record DraftRequest(
            @Nullable Long version,
            String description,
            String metal,
            String kind,
            @Nullable Long routeRevisionId,
            @Nullable String testFamily,
            @Nullable List<Component> components,
            @Nullable Map<GeometryInput, BigDecimal> geometry,
            @Nullable Boolean confirm) {}

    record NominalRequest(
            BigDecimal nominal,
            @Nullable BigDecimal lowerDeviation,
            @Nullable BigDecimal upperDeviation) {}

    record NominalsRequest(
            @Nullable Long version,
            @Nullable Map<String, NominalRequest> given,
            @Nullable Set<String> dropped,
            @Nullable Boolean confirm) {}

    record ApprovalRequest(String letter, String file, String approver, LocalDate on) {}

    record AnswerRequest(
            GateCheck check, GateAnswer answer, @Nullable String decision) {}

    record SignatureRequest(long signer, Role capacity, String pin) {}

    record ReasonRequest(String reason) {}

    record NoteRequest(String note) {}

    @GetMapping
    @Operation(summary = "One revision: state, nominals, geometry inputs, components, hash of its drawing.")
    DesignSheet one(@PathVariable long id) {
        return designs.revision(id);
    }

    @GetMapping("/history")
    @Operation(summary = "Every revision of the same design, first one first.")
    List<RevisionSummary> history(@PathVariable long id) {
        return designs.revisions(designs.revision(id).designId());
    }

    @GetMapping("/characteristics")
    @Operation(summary = "The characteristic list: the route's, with the nominals and limits of this revision.")
    List<CharacteristicLine> characteristics(@PathVariable long id) {
        return reading.story(id, false).lines();
    }

    @GetMapping("/gate")
    @Operation(summary = "The checks of the design gate with their answers.")
    List<RevisionStory.CheckLine> gate(@PathVariable long id) {
        return reading.story(id, false).checks();
    }

    @PostMapping("/draft")
    @Operation(summary = "Writes everything of a draft but its nominals.")
    DesignSheet change(Act act, @PathVariable long id, @RequestBody DraftRequest r) {
        DesignDraft draft = new DesignDraft(
                r.description(),
                r.metal(),
                r.kind(),
                r.routeRevisionId(),
                r.testFamily(),
                Objects.requireNonNullElse(r.components(), List.of()),
                Objects.requireNonNullElse(r.geometry(), Map.of()),
                Boolean.TRUE.equals(r.confirm()));
        return office.change(act, id, r.version(), draft);
    }

    @PostMapping("/nominals")
    @Operation(
            summary = "Gives nominals by characteristic id, a child's with its part in front (FT/080-1); with"
                    + " deviations where the design has limits of its own.")
    DesignSheet give(Act act, @PathVariable long id, @RequestBody NominalsRequest r) {
        Map<String, Nominal> given = new HashMap<>();
        Objects.requireNonNullElse(r.given(), Map.<String, NominalRequest>of()).forEach((code, one) -> {
            boolean own = one.lowerDeviation() != null || one.upperDeviation() != null;
            given.put(code, new Nominal(one.nominal(), one.lowerDeviation(), one.upperDeviation(), own));
        });
        return office.give(
                act,
                id,
                r.version(),
                given,
                Objects.requireNonNullElse(r.dropped(), Set.of()),
                Boolean.TRUE.equals(r.confirm()));
    }

    @PostMapping(path = "/drawing", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    @Operation(summary = "Puts a drawing to a draft: a PDF or a picture, 20 MB at most.")
    DesignSheet draw(Act act, @PathVariable long id, @RequestParam MultipartFile file) throws IOException {
        return office.draw(
                act,
                id,
                Uploads.bytes(file),
                Objects.requireNonNullElse(file.getContentType(), ""),
                Objects.requireNonNullElse(file.getOriginalFilename(), "drawing"));
    }

    @PostMapping("/sending")
    @Operation(
            summary = "Sends a draft to the customer; one sent before is superseded. A drawing that was approved for"
                    + " another revision needs confirm.")
    RevisionSummary send(Act act, @PathVariable long id, @RequestParam(defaultValue = "false") boolean confirm) {
        return office.send(act, id, confirm);
    }

    @PostMapping("/approval")
    @Operation(summary = "Enters the customer's approval of the revision sent last, for the file with this SHA-256.")
    RevisionSummary approve(Act act, @PathVariable long id, @RequestBody ApprovalRequest r) {
        return gate.approve(act, id, new Approval(r.letter(), r.file(), r.approver(), r.on()));
    }

    @PostMapping("/gate")
    @Operation(summary = "Answers one check of the gate; DECIDED needs the decision in words.")
    DesignSheet answer(Act act, @PathVariable long id, @RequestBody AnswerRequest r) {
        gate.answer(act, id, r.check(), r.answer(), r.decision());
        return designs.revision(id);
    }

    @PostMapping("/signature")
    @Operation(summary = "Signs the gate as OWNER or QA_LEAD with the signer's own PIN.")
    RevisionSummary sign(Act act, @PathVariable long id, @RequestBody SignatureRequest r) {
        return gate.sign(act, id, r.signer(), r.capacity(), r.pin());
    }

    @PostMapping("/withdrawal")
    @Operation(summary = "Gives a revision up before its release.")
    RevisionSummary withdraw(Act act, @PathVariable long id, @RequestBody ReasonRequest r) {
        return office.withdraw(act, id, r.reason());
    }

    @PostMapping("/next")
    @Operation(summary = "Begins the next revision as a copy; the reason is kept.")
    RevisionSummary revise(Act act, @PathVariable long id, @RequestBody ReasonRequest r) {
        return office.revise(act, id, r.reason());
    }

    @PostMapping("/notes")
    @Operation(summary = "Leaves a note at a revision.")
    DesignSheet note(Act act, @PathVariable long id, @RequestBody NoteRequest r) {
        office.note(act, id, r.note());
        return designs.revision(id);
    }
}
