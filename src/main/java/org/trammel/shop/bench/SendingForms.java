package org.trammel.shop.bench;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.Outside;
import org.trammel.shop.travellers.Shipping;

/** Frames that leave: to somebody outside and back, and to the customer. */
@Controller
@RequestMapping("/station/{tag}")
class SendingForms {

    private final Outside outside;
    private final Shipping shipping;

    SendingForms(Outside outside, Shipping shipping) {
        this.outside = outside;
        this.shipping = shipping;
    }

    @PostMapping("/send-out")
    RedirectView sendOut(
            Act act,
            @PathVariable String tag,
            @RequestParam long operation,
            @RequestParam(defaultValue = "") String recipient) {
        outside.send(act, operation, recipient);
        return Back.toFrame(tag);
    }

    @PostMapping("/book-back")
    RedirectView bookBack(
            Act act,
            @PathVariable String tag,
            @RequestParam long operation,
            @RequestParam(defaultValue = "") String certificate) {
        outside.bookBack(act, operation, certificate);
        return Back.toFrame(tag);
    }

    @PostMapping("/ship")
    RedirectView ship(
            Act act,
            @PathVariable String tag,
            @RequestParam long traveller,
            @RequestParam(defaultValue = "") String scanned,
            RedirectAttributes flash) {
        shipping.ship(act, traveller, scanned);
        flash.addFlashAttribute("done", "Shipped.");
        return Back.toFrame(tag);
    }
}
