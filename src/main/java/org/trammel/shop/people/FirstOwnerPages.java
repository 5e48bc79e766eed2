package org.trammel.shop.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Devices.Enrolled;

/** The first sheet of an empty shop: makes its first owner. */
@Controller
class FirstOwnerPages {

    private final FirstStart firstStart;
    private final SignOns signOns;

    FirstOwnerPages(FirstStart firstStart, SignOns signOns) {
        this.firstStart = firstStart;
        this.signOns = signOns;
    }

    @GetMapping("/first-owner")
    String show() {
        return firstStart.ownerMissing() ? "people/first-owner" : "redirect:/sign-on";
    }

    @PostMapping("/first-owner")
    String make(
            @RequestParam UUID actId,
            @RequestParam(defaultValue = "") String code,
            @RequestParam(defaultValue = "") String initials,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String password,
            @RequestParam(defaultValue = "") String passwordAgain,
            @RequestParam(defaultValue = "") String pin,
            @RequestParam(defaultValue = "") String pinAgain,
            HttpServletRequest request,
            HttpServletResponse response) {
        String deed = "The first owner was not made.";
        if (!password.equals(passwordAgain)) {
            throw Refusal.input("password", deed, "The two passwords differ.", "Type the same one twice.");
        }
        if (!pin.equals(pinAgain)) {
            throw Refusal.input("pin", deed, "The two PINs differ.", "Type the same one twice.");
        }
        String address = request.getRemoteAddr();
        Person owner = firstStart.make(actId, code, address, new FirstStart.Entry(initials, name, password, pin));
        Enrolled desk = signOns.atDesk(UUID.randomUUID(), null, address, owner.initials(), password, null);
        DeviceCookie.give(request, response, desk.token(), false);
        return "redirect:/set-up";
    }
}
