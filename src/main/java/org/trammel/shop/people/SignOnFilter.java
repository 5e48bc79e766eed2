package org.trammel.shop.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.util.Optional;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Reads the device's cookie and says who is signed on at it. */
final class SignOnFilter extends OncePerRequestFilter {

    /** Header of requests that a page sends by itself: they do not keep a sign-on open. */
    static final String QUIET = "Quiet";

    private final Doorkeeper doorkeeper;
    private final LastSeen lastSeen;
    private final Clock clock;

    SignOnFilter(Doorkeeper doorkeeper, LastSeen lastSeen, Clock clock) {
        this.doorkeeper = doorkeeper;
        this.lastSeen = lastSeen;
        this.clock = clock;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return Doors.isStatic(
                request.getRequestURI().substring(request.getContextPath().length()));
    }

    /** What failed before this filter, such as a page token, is answered at the device that sent it. */
    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (SecurityContextHolder.getContext().getAuthentication() == null) {
            Optional<AtTheDoor> door = DeviceCookie.token(request).flatMap(doorkeeper::who);
            door.ifPresent(found -> {
                request.setAttribute(AtTheDoor.ATTRIBUTE, found);
                enter(found, request);
            });
        }
        chain.doFilter(request, response);
    }

    private void enter(AtTheDoor found, HttpServletRequest request) {
        SignedOn who = found.signedOn();
        if (who == null) {
            return;
        }
        if (request.getHeader(QUIET) == null) {
            lastSeen.touch(who.deviceId(), clock.instant());
        }
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(new SignedOnToken(who));
        SecurityContextHolder.setContext(context);
    }
}
