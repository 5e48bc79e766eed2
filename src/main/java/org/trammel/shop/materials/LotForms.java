package org.trammel.shop.materials;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.trammel.shop.records.Act;
import org.trammel.shop.web.Uploads;

/** Takes the forms of the sheets of lots. */
@Controller
class LotForms {

    private final Lots lots;
    private final LotRegister register;
    private final Fits fits;
    private final AfterWelds afterWelds;

    LotForms(Lots lots, LotRegister register, Fits fits, AfterWelds afterWelds) {
        this.lots = lots;
        this.register = register;
        this.fits = fits;
        this.afterWelds = afterWelds;
    }

    @PostMapping("/shop/lots")
    String receive(Act act, @RequestParam Map<String, String> fields) {
        LotForm form = new LotForm(fields);
        return sheet(register.receive(act, form.lot(form.text("code"))));
    }

    @PostMapping("/shop/lots/{code}/edit")
    String correct(
            Act act, @PathVariable String code, @RequestParam long version, @RequestParam Map<String, String> fields) {
        return sheet(register.correct(act, code, version, new LotForm(fields).lot(code)));
    }

    @PostMapping("/shop/lots/{code}/certificate")
    String certify(
            Act act,
            @PathVariable String code,
            @RequestParam String certificateType,
            @RequestParam String certificate,
            @RequestParam @Nullable MultipartFile file) {
        return sheet(register.certify(act, code, certificateType, certificate, sent(file)));
    }

    /** A browser sends an empty part without a name where no file was chosen; a file that is empty has its name. */
    private static @Nullable CertificateFile sent(@Nullable MultipartFile file) {
        if (file == null
                || file.isEmpty()
                        && Optional.ofNullable(file.getOriginalFilename())
                                .orElse("")
                                .isEmpty()) {
            return null;
        }
        try {
            return new CertificateFile(
                    Uploads.bytes(file),
                    Optional.ofNullable(file.getContentType()).orElse(""),
                    Optional.ofNullable(file.getOriginalFilename()).orElse("certificate"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @PostMapping("/shop/lots/{code}/release")
    String release(Act act, @PathVariable String code) {
        return sheet(register.release(act, code));
    }

    @PostMapping("/shop/lots/{code}/quarantine")
    String quarantine(Act act, @PathVariable String code, @RequestParam String reason) {
        return sheet(register.quarantine(act, code, reason));
    }

    @PostMapping("/shop/lots/{code}/use-up")
    String useUp(Act act, @PathVariable String code, @RequestParam String reason) {
        return sheet(register.useUp(act, code, reason));
    }

    @PostMapping("/shop/lots/{code}/block")
    String block(Act act, @PathVariable String code, @RequestParam String reason) {
        return sheet(register.block(act, code, reason));
    }

    @PostMapping("/shop/lots/{code}/issue")
    String issue(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        LotForm form = new LotForm(fields);
        String from = form.text("remnant").isEmpty() ? code : form.text("remnant");
        lots.issue(
                act,
                from,
                form.text("serial"),
                form.text("position"),
                form.orNull("operation"),
                form.figure("quantity"),
                null);
        return "redirect:/shop/lots/" + LotRegister.label(code);
    }

    @PostMapping("/frames/{serial}/made-of/{useId}/scrap")
    String scrap(Act act, @PathVariable String serial, @PathVariable long useId, @RequestParam String reason) {
        lots.scrap(act, useId, reason);
        return "redirect:/frames/" + FramePlaces.read(serial).frame().stored() + "/made-of";
    }

    @PostMapping("/frames/{serial}/made-of/{useId}/remnant")
    String putBack(
            Act act, @PathVariable String serial, @PathVariable long useId, @RequestParam Map<String, String> fields) {
        LotForm form = new LotForm(fields);
        lots.returnRemnant(act, useId, form.text("lot"), form.neededFigure("quantity"));
        return "redirect:/frames/" + FramePlaces.read(serial).frame().stored() + "/made-of";
    }

    @PostMapping("/shop/fits")
    String allow(Act act, @RequestParam Map<String, String> fields) {
        LotForm form = new LotForm(fields);
        fits.allow(
                act,
                form.text("materialClass"),
                form.text("metal"),
                form.orNull("process"),
                form.choice(Fit.AfterWeld.class, "afterWeld", "Choose one."),
                form.text("source"));
        return "redirect:/shop/fits";
    }

    @PostMapping("/shop/fits/as-welded")
    String asWelded(
            Act act, @RequestParam(defaultValue = "") String serial, @RequestParam(defaultValue = "") String reason) {
        afterWelds.sign(act, serial, reason);
        return "redirect:/shop/fits";
    }

    @PostMapping("/shop/fits/{id}/end")
    String end(Act act, @PathVariable long id, @RequestParam String reason) {
        fits.end(act, id, reason);
        return "redirect:/shop/fits";
    }

    private static String sheet(Lot lot) {
        return "redirect:/shop/lots/" + lot.code();
    }
}
