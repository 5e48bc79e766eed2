package org.trammel.shop.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.SignOnFailure.Secret;
import org.trammel.shop.records.Act;
import org.trammel.shop.stations.Devices;
import org.trammel.shop.stations.Devices.Enrolled;

/** Where the code is typed that makes a tablet one of the shop's. */
@Controller
class EnrolPages {

    private final Devices devices;
    private final Guesses guesses;
    private final Clock clock;

    EnrolPages(Devices devices, Guesses guesses, Clock clock) {
        this.devices = devices;
        this.guesses = guesses;
        this.clock = clock;
    }

    @GetMapping("/enrol")
    String show() {
        return "people/enrol";
    }

    @PostMapping("/enrol")
    String enrol(
            @RequestParam(defaultValue = "") String code, HttpServletRequest request, HttpServletResponse response) {
        Guess guess = Guess.code(Secret.ENROLMENT, request.getRemoteAddr(), "The tablet was not enrolled.");
        guesses.count(guess);
        Act act = new Act(UUID.randomUUID(), Act.SERVICE, null, clock.instant(), null);
        Optional<Enrolled> enrolled = devices.enrol(act, code);
        if (enrolled.isEmpty()) {
            throw guesses.wrong(guess);
        }
        guesses.right(guess);
        DeviceCookie.give(request, response, enrolled.get().token(), true);
        return "redirect:/sign-on";
    }
}
