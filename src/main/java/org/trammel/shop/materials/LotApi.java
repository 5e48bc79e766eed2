package org.trammel.shop.materials;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@RestController
@RequestMapping("/api/v1")
@Tag(name = "Lots", description = "Lots from certificate to frame position, and both directions of trace")
class LotApi {

    private final Lots lots;
    private final LotRegister register;
    private final Fits fits;
    private final AfterWelds afterWelds;

    LotApi(Lots lots, LotRegister register, Fits fits, AfterWelds afterWelds) {
        this.lots = lots;
        this.register = register;
        this.fits = fits;
        this.afterWelds = afterWelds;
    }

    @GetMapping("/lots")
    @Operation(summary = "Lots, newest first, a page at a time")
    List<Lot> page(
            @RequestParam @Nullable Long before,
            @RequestParam @Nullable LotKind kind,
            @RequestParam @Nullable LotState state,
            @RequestParam(defaultValue = "100") int limit) {
        return lots.page(before, kind, state, limit);
    }

    @GetMapping("/lots/{code}")
    Lot one(@PathVariable String code) {
        return lots.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The lot was not found.",
                        "No lot carries the code " + code + ".",
                        "Ask for the list of lots."));
    }

    @GetMapping("/lots/{code}/went-into")
    @Operation(summary = "Every place the lot went into, children and scrapped pieces too")
    List<WentInto> wentInto(@PathVariable String code) {
        return lots.wentInto(one(code).code());
    }

    @GetMapping("/lots/{code}/remnants")
    List<Remnant> remnants(@PathVariable String code) {
        return lots.remnants(one(code).code());
    }

    @GetMapping("/frames/{serial}/made-of")
    @Operation(summary = "Everything the frame and its parts are or were made of, scrapped pieces too")
    List<MadeOf> madeOf(@PathVariable String serial) {
        return lots.madeOf(FramePlaces.read(serial).frame().stored());
    }

    /** The fields are those of a lot; text fields may be left out. */
    record Receipt(
            String code,
            LotKind kind,
            String what,
            @Nullable String metal,
            @Nullable String materialClass,
            @Nullable String grade,
            @Nullable String heat,
            @Nullable MetalFamily reservedFor,
            @Nullable String supplier,
            LocalDate receivedOn,
            @Nullable LocalDate expiresOn,
            @Nullable BigDecimal quantity,
            @Nullable String unit,
            @Nullable Long version) {

        NewLot lot() {
            return new NewLot(
                    code,
                    kind,
                    what,
                    metal,
                    materialClass,
                    orEmpty(grade),
                    orEmpty(heat),
                    reservedFor,
                    orEmpty(supplier),
                    receivedOn,
                    expiresOn,
                    quantity,
                    orEmpty(unit));
        }

        private static String orEmpty(@Nullable String text) {
            return text == null ? "" : text;
        }
    }

    @PostMapping("/lots")
    @ResponseStatus(HttpStatus.CREATED)
    Lot receive(Act act, @RequestBody Receipt body) {
        return register.receive(act, body.lot());
    }

    @PutMapping("/lots/{code}")
    @Operation(summary = "Corrects a lot that is still quarantined; version as it was read")
    Lot correct(Act act, @PathVariable String code, @RequestBody Receipt body) {
        return register.correct(act, code, body.version() == null ? -1 : body.version(), body.lot());
    }

    record NewCertificate(String type, String number) {}

    @PostMapping("/lots/{code}/certificate")
    Lot certify(Act act, @PathVariable String code, @RequestBody NewCertificate body) {
        return register.certify(act, code, body.type(), body.number(), null);
    }

    @PostMapping("/lots/{code}/release")
    Lot release(Act act, @PathVariable String code) {
        return register.release(act, code);
    }

    record Because(String reason) {}

    @PostMapping("/lots/{code}/quarantine")
    Lot quarantine(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.quarantine(act, code, body.reason());
    }

    @PostMapping("/lots/{code}/use-up")
    Lot useUp(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.useUp(act, code, body.reason());
    }

    @PostMapping("/lots/{code}/block")
    @Operation(summary = "Blocks the lot and holds every frame in the shop that it went into")
    Lot block(Act act, @PathVariable String code, @RequestBody Because body) {
        return register.block(act, code, body.reason());
    }

    /** @param remnant number of the remnant it is taken from; none for the lot itself */
    record Issue(
            String serial,
            String position,
            @Nullable String operation,
            @Nullable Integer remnant,
            @Nullable BigDecimal quantity,
            @Nullable String unit) {}

    record Issued(long useId) {}

    @PostMapping("/lots/{code}/issue")
    @Operation(summary = "Issues a piece of the lot to a place in a frame")
    @ResponseStatus(HttpStatus.CREATED)
    Issued issue(Act act, @PathVariable String code, @RequestBody Issue body) {
        String from = body.remnant() == null ? code : code + "/R" + body.remnant();
        return new Issued(
                lots.issue(act, from, body.serial(), body.position(), body.operation(), body.quantity(), body.unit()));
    }

    @PostMapping("/lot-uses/{useId}/scrap")
    void scrap(Act act, @PathVariable long useId, @RequestBody Because body) {
        lots.scrap(act, useId, body.reason());
    }

    record Left(String lot, BigDecimal quantity) {}

    @PostMapping("/lot-uses/{useId}/remnants")
    @Operation(summary = "Puts back what is left of a piece; lot as scanned, which must be the piece's own")
    @ResponseStatus(HttpStatus.CREATED)
    Remnant putBack(Act act, @PathVariable long useId, @RequestBody Left body) {
        return lots.returnRemnant(act, useId, body.lot(), body.quantity());
    }

    @GetMapping("/material-classes")
    List<MaterialClass> classes() {
        return fits.classes();
    }

    @GetMapping("/material-fits")
    @Operation(summary = "What may meet which metal")
    List<Fit> fits() {
        return fits.inForce();
    }

    record NewFit(
            String materialClass, String metal, @Nullable String process, Fit.AfterWeld afterWeld, String source) {}

    @PostMapping("/material-fits")
    @ResponseStatus(HttpStatus.CREATED)
    Fit allow(Act act, @RequestBody NewFit body) {
        return fits.allow(act, body.materialClass(), body.metal(), body.process(), body.afterWeld(), body.source());
    }

    @GetMapping("/used-as-welded")
    @Operation(summary = "Frames whose welds are used as they are, as the QA lead signed")
    List<AfterWelds.AsWelded> asWelded() {
        return afterWelds.signed();
    }

    record AsWelded(String serial, String reason) {}

    @PostMapping("/used-as-welded")
    @ResponseStatus(HttpStatus.CREATED)
    AfterWelds.AsWelded signAsWelded(Act act, @RequestBody AsWelded body) {
        return afterWelds.sign(act, body.serial(), body.reason());
    }

    @PostMapping("/material-fits/{id}/end")
    void end(Act act, @PathVariable long id, @RequestBody Because body) {
        fits.end(act, id, body.reason());
    }
}
