package org.trammel.shop.bench;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestPart;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Outside;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Rework;
import org.trammel.shop.travellers.Travellers;

/** The work on a frame for programs: the same verbs and checks as the station sheet. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Work", description = "Ticks, signatures, work broken off, sent out and done over.")
class WorkApi {

    private static final String NOT_SIGNED = "Not signed.";
    private static final String NOT_OVERRIDDEN = "The confirmation was not overridden.";

    private final Bench bench;
    private final Rework rework;
    private final Outside outside;
    private final SignedPoints points;
    private final Remarks remarks;
    private final Travellers travellers;

    WorkApi(Bench bench, Rework rework, Outside outside, SignedPoints points, Remarks remarks, Travellers travellers) {
        this.bench = bench;
        this.rework = rework;
        this.outside = outside;
        this.points = points;
        this.remarks = remarks;
        this.travellers = travellers;
    }

    record Ticks(
            @Schema(description = "ids of steps; several only where the operation is done for frames together")
            @Nullable
            List<Long> steps,

            @Schema(description = "code of the lot, where the step asks for one") @Nullable
            String lot,

            @Schema(description = "why a step is ticked before an earlier one") @Nullable
            String reason) {}

    record Untick(
            long step,

            @Schema(description = "needed once the free minutes are over") @Nullable
            String reason) {}

    record Reason(@Nullable String reason) {}

    record Signed(
            @Schema(description = "id of who signs; need not be who is signed on")
            long signer,

            @Nullable Signer as,

            @Schema(description = "the signer's own PIN", accessMode = Schema.AccessMode.WRITE_ONLY) @Nullable
            String pin) {}

    record Overridden(
            @Schema(description = "id of the welder whose six-month confirmation has run out")
            long welder,

            @Schema(description = "what the operation asks for, such as WELD:AL:141") @Nullable
            String qualification,

            @Schema(description = "id of the QA lead who signs, never the welder")
            long signer,

            @Schema(description = "kept on the frame's record and printed with it") @Nullable
            String reason,

            @Schema(description = "the signer's own PIN", accessMode = Schema.AccessMode.WRITE_ONLY) @Nullable
            String pin) {}

    record Sent(@Nullable String recipient) {}

    record CameBack(@Nullable String certificate) {}

    record Closed(
            @Schema(description = "code of the clock whose window has closed") @Nullable
            String clock) {}

    @PostMapping("/ticks")
    @Operation(summary = "Ticks a step, or the same step of several frames; all or none")
    void tick(Act act, @RequestBody Ticks ticks) {
        bench.tick(act, ticks.steps() == null ? List.of() : ticks.steps(), ticks.lot(), ticks.reason());
    }

    @PostMapping("/unticks")
    @Operation(summary = "Takes a tick back by a record of its own")
    void untick(Act act, @RequestBody Untick untick) {
        bench.untick(act, untick.step(), untick.reason());
    }

    @PostMapping(path = "/steps/{id}/photos", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    @Operation(summary = "Adds a photograph to a step, JPEG or PNG, 20 MB at most")
    void photo(Act act, @PathVariable long id, @RequestPart MultipartFile file) throws IOException {
        remarks.photo(act, id, HoldForms.sent(file));
    }

    @PostMapping("/operations/{id}/stop")
    @Operation(summary = "Breaks the work off; a reason is needed")
    FrameSheet.OperationSheetOfFrame stop(Act act, @PathVariable long id, @RequestBody Reason reason) {
        bench.stop(act, id, reason.reason() == null ? "" : reason.reason());
        return travellers.operation(id);
    }

    @PostMapping("/operations/{id}/resume")
    @Operation(summary = "Takes the work up again")
    FrameSheet.OperationSheetOfFrame resume(Act act, @PathVariable long id) {
        bench.resume(act, id);
        return travellers.operation(id);
    }

    @PostMapping("/operations/{id}/signatures")
    @Operation(
            summary = "Signs a hold or witness point",
            description =
                    "With the signer's own PIN at this moment; wrong ones are counted. A second person never took part in the work.")
    FrameSheet.OperationSheetOfFrame sign(Act act, SignedOn who, @PathVariable long id, @RequestBody Signed signed) {
        points.sign(
                act,
                id,
                signed.signer(),
                Needed.in("as", NOT_SIGNED, signed.as()),
                Needed.in("pin", NOT_SIGNED, signed.pin()),
                who.deviceId());
        return travellers.operation(id);
    }

    @PostMapping("/operations/{id}/confirmation-overrides")
    @Operation(
            summary = "Lets a welder do one operation although the six-month confirmation has run out",
            description =
                    "By the QA lead with their own PIN, never for themself; a qualification that expired, was taken"
                            + " back or was never held is not overridden.")
    FrameSheet.OperationSheetOfFrame override(
            Act act, SignedOn who, @PathVariable long id, @RequestBody Overridden given) {
        points.override(
                act,
                new SignedPoints.Letting(
                        id,
                        given.welder(),
                        Needed.in("qualification", NOT_OVERRIDDEN, given.qualification()),
                        given.signer(),
                        given.reason()),
                Needed.in("pin", NOT_OVERRIDDEN, given.pin()),
                who.deviceId());
        return travellers.operation(id);
    }

    @PostMapping("/operations/{id}/unattended")
    @Operation(summary = "Passes a witness point to which nobody came in the waiting time")
    FrameSheet.OperationSheetOfFrame pass(Act act, @PathVariable long id) {
        points.pass(act, id);
        return travellers.operation(id);
    }

    @PostMapping("/operations/{id}/consignments")
    @Operation(summary = "Sends the frame out for this operation")
    FrameSheet.OperationSheetOfFrame send(Act act, @PathVariable long id, @RequestBody Sent sent) {
        outside.send(act, id, sent.recipient() == null ? "" : sent.recipient());
        return travellers.operation(id);
    }

    @PostMapping("/operations/{id}/consignments/return")
    @Operation(summary = "Books the frame back with the number of its certificate")
    FrameSheet.OperationSheetOfFrame bookBack(Act act, @PathVariable long id, @RequestBody CameBack back) {
        outside.bookBack(act, id, back.certificate() == null ? "" : back.certificate());
        return travellers.operation(id);
    }

    @PostMapping("/operations/{id}/redo")
    @Operation(summary = "Does the operations since a closed clock's start once more, before this operation")
    void redo(Act act, @PathVariable long id, @RequestBody Closed closed) {
        rework.redoForClock(act, id, Needed.in("clock", "Nothing is done again.", closed.clock()));
    }
}
