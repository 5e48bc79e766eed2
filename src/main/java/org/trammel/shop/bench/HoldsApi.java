package org.trammel.shop.bench;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Shipping;
import org.trammel.shop.travellers.Travellers;

/** Holds, calls, notes and shipping for programs. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Holds, calls, notes, shipping", description = "What is said beside the work, and the last gate.")
class HoldsApi {

    private static final String NOT_PLACED = "The hold was not placed.";

    private final Holds holds;
    private final Remarks remarks;
    private final Shipping shipping;
    private final Travellers travellers;

    HoldsApi(Holds holds, Remarks remarks, Shipping shipping, Travellers travellers) {
        this.holds = holds;
        this.remarks = remarks;
        this.shipping = shipping;
        this.travellers = travellers;
    }

    record Placed(
            long traveller,

            @Schema(description = "FRAME, PART or OPERATION; FRAME if left out") @Nullable
            HoldScope scope,

            @Schema(description = "id of the operation, for a hold of one") @Nullable
            Long operation,

            @Nullable HoldReason reason,
            @Nullable String words) {}

    record Hold(long holdId) {}

    record Words(@Nullable String words) {}

    record Freed(long operation, @Nullable String reason) {}

    record Lifted(
            @Schema(description = "false if somebody else must still agree")
            boolean lifted) {}

    record Remark(
            @Nullable Long traveller,
            @Nullable Long operation,
            @Nullable String words) {}

    record Shipment(
            @Schema(description = "serial read from the frame in the box") @Nullable
            String scanned) {}

    @GetMapping("/holds")
    @Operation(summary = "Every open hold of the shop, longest first")
    List<FrameSheet.HoldLine> open() {
        return travellers.openHolds();
    }

    @PostMapping("/holds")
    @Operation(summary = "Places a hold; the id is 0 if the act was sent a second time")
    Hold place(Act act, @RequestBody Placed placed) {
        return new Hold(holds.place(
                act,
                new Holds.Request(
                        placed.traveller(),
                        placed.scope() == null ? HoldScope.FRAME : placed.scope(),
                        placed.operation(),
                        Needed.in("reason", NOT_PLACED, placed.reason()),
                        Needed.in("words", NOT_PLACED, placed.words()),
                        HoldForms.BY_HAND,
                        Set.of())));
    }

    @PostMapping("/holds/{id}/lift")
    @Operation(summary = "Lifts a hold, or agrees to it where several must; never by whoever caused it")
    Lifted lift(Act act, @PathVariable long id, @RequestBody Words words) {
        return new Lifted(holds.lift(act, id, words.words() == null ? "" : words.words()));
    }

    @PostMapping("/holds/{id}/free")
    @Operation(summary = "Lets one reversible operation go on under a hold that stays; by the QA lead")
    void free(Act act, @PathVariable long id, @RequestBody Freed freed) {
        holds.free(act, id, freed.operation(), freed.reason() == null ? "" : freed.reason());
    }

    @GetMapping("/calls")
    @Operation(summary = "Calls nobody has answered")
    List<Travellers.CallLine> calls() {
        return travellers.openCalls();
    }

    @PostMapping("/calls")
    @Operation(summary = "Asks for somebody to look, at a frame or at the station")
    void call(Act act, @RequestBody Remark call) {
        remarks.call(act, call.traveller(), call.operation(), call.words() == null ? "" : call.words());
    }

    @PostMapping("/calls/{id}/answer")
    @Operation(summary = "Answers a call")
    void answer(Act act, @PathVariable long id, @RequestBody Words words) {
        remarks.answer(act, id, words.words() == null ? "" : words.words());
    }

    @PostMapping("/travellers/{id}/notes")
    @Operation(summary = "Leaves a note: different on this one")
    void note(Act act, @PathVariable long id, @RequestBody Remark note) {
        remarks.note(act, id, note.operation(), note.words() == null ? "" : note.words());
    }

    @PostMapping("/travellers/{id}/shipment")
    @Operation(summary = "Ships a frame; every gate is checked once more over the whole of it")
    FrameSheet.Head ship(Act act, @PathVariable long id, @RequestBody Shipment shipment) {
        shipping.ship(act, id, shipment.scanned() == null ? "" : shipment.scanned());
        return travellers.head(id);
    }
}
