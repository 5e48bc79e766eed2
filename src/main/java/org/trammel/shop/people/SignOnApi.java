package org.trammel.shop.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.stations.Devices.Enrolled;

/**
 * Signing on for programs. The answer's cookie {@code trammel-device} names the device from then on; every request that
 * changes something repeats the cookie {@code XSRF-TOKEN} in the header {@code X-XSRF-TOKEN}.
 */
@RestController
@RequestMapping("/api/v1/sign-on")
class SignOnApi {

    private final SignOns signOns;
    private final Clock clock;

    SignOnApi(SignOns signOns, Clock clock) {
        this.signOns = signOns;
        this.clock = clock;
    }

    /** Who is signed on at this device; nulls if nobody is. */
    record State(
            @Nullable Person person,
            @Nullable Person second,
            @Nullable String device,
            boolean tablet,
            List<String> stations,
            @Nullable Instant locksAt,
            long locksInSeconds) {

        static final State NOBODY = new State(null, null, null, false, List.of(), null, 0);

        static State of(SignedOn who, Instant now) {
            return new State(
                    who.person(),
                    who.second(),
                    who.deviceName(),
                    who.tablet(),
                    who.stations(),
                    who.locksAt(),
                    Math.max(0, Duration.between(now, who.locksAt()).toSeconds()));
        }
    }

    /** Says who is signed on, and hands out the token that requests which change something must repeat. */
    @GetMapping
    State state(@Nullable SignedOn who, CsrfToken token) {
        token.getToken();
        return who == null ? State.NOBODY : State.of(who, clock.instant());
    }

    @PostMapping
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void signOn(
            @RequestAttribute(name = AtTheDoor.ATTRIBUTE, required = false) @Nullable AtTheDoor door,
            @RequestBody SignOnForm form,
            HttpServletRequest request,
            HttpServletResponse response) {
        if (door != null && door.tablet()) {
            signOns.atTablet(
                    form.id(),
                    door.deviceId(),
                    form.personOrRefused(),
                    form.said(form.pin()),
                    form.placed(),
                    form.ownPin());
            return;
        }
        Enrolled desk = signOns.atDesk(
                form.id(),
                DeviceCookie.token(request).orElse(null),
                request.getRemoteAddr(),
                form.said(form.initials()),
                form.said(form.password()),
                form.ownPassword());
        DeviceCookie.give(request, response, desk.token(), false);
    }

    /** Changes doer and second over. */
    @PostMapping("/swap")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void swap(SignedOn who) {
        signOns.swap(UUID.randomUUID(), who);
    }

    /** Signs off one place, or everybody if none is named. */
    @DeleteMapping
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void signOff(SignedOn who, @RequestParam @Nullable Place place) {
        signOns.signOff(UUID.randomUUID(), who, place);
    }

    /** Keeps the device open while somebody keys something; says when it locks. */
    @PostMapping("/ping")
    ResponseEntity<State> ping(@Nullable SignedOn who) {
        return who == null
                ? ResponseEntity.status(HttpStatus.UNAUTHORIZED).build()
                : ResponseEntity.ok(State.of(who, clock.instant()));
    }
}
