package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.Cookie;
import java.time.Clock;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;

/** What fails before anybody is let in, such as a page token, is answered at the device that sent it. */
class FaultAtADeviceTest {

    private static final String TOKEN = "0123456789abcdef".repeat(4);

    @Test
    void theSheetOfAFaultKnowsTheTabletItIsShownAt() throws Exception {
        Person worker = new Person(7, "HS", "Hanneke Sorrel", EnumSet.of(Role.STATION_WORKER), true);
        SignedOn who = new SignedOn(worker, null, 3, "T2", true, List.of("3"), Instant.MAX);
        Doorkeeper doorkeeper = mock(Doorkeeper.class);
        when(doorkeeper.who(TOKEN)).thenReturn(Optional.of(new AtTheDoor(3, "T2", true, List.of("3"), who, null)));
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/error");
        request.setDispatcherType(DispatcherType.ERROR);
        request.setAttribute(RequestDispatcher.ERROR_REQUEST_URI, "/station/AV261019/tick");
        request.setCookies(new Cookie(DeviceCookie.NAME, TOKEN));
        AtomicReference<Authentication> seen = new AtomicReference<>();
        SecurityContextHolder.clearContext();
        new SignOnFilter(doorkeeper, mock(LastSeen.class), Clock.systemUTC())
                .doFilter(
                        request,
                        new MockHttpServletResponse(),
                        (asked, answer) ->
                                seen.set(SecurityContextHolder.getContext().getAuthentication()));
        SecurityContextHolder.clearContext();
        assertThat(seen.get()).isNotNull();
        assertThat(seen.get().getPrincipal()).isEqualTo(who);
    }
}
