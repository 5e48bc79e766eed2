package org.trammel.shop.web;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** What the title block of a page shows. Templates know it as {@code @shell}. */
@Component("shell")
class Shell {

    private static final List<Tab> TABS = List.of(
            new Tab("run", "Run of the shop", "/"),
            new Tab("stations", "Stations", "/stations"),
            new Tab("qa", "QA desk", "/qa"),
            new Tab("nonconformances", "Nonconformances", "/nonconformances"),
            new Tab("frames", "Frames", "/frames"),
            new Tab("orders", "Orders", "/orders"),
            new Tab("routes", "Routes", "/routes"),
            new Tab("shop", "Shop", "/shop"));

    private final House house;
    private final Formats formats;
    private final Clock clock;

    Shell(House house, Formats formats, Clock clock) {
        this.house = house;
        this.formats = formats;
        this.clock = clock;
    }

    /** A cell of the title block that opens another sheet. */
    record Tab(String code, String name, String path) {}

    /**
     * @param who names of those signed on; null if nobody is
     * @param device name of the tablet; null at a desk
     */
    record Page(
            String lang,
            String theme,
            String shop,
            boolean demo,
            List<Tab> tabs,
            @Nullable String who,
            @Nullable String device,
            String place,
            String day,
            String time) {}

    /** The title block for the request this thread answers. */
    public Page page() {
        Instant now = clock.instant();
        Authentication signedOn = SecurityContextHolder.getContext().getAuthentication();
        boolean nobody = signedOn == null || signedOn instanceof AnonymousAuthenticationToken;
        return new Page(
                "en-GB",
                theme(),
                house.name(),
                house.demo(),
                TABS,
                nobody ? null : signedOn.getName(),
                null,
                "",
                formats.day(now) + " " + now.atZone(house.zone()).getYear(),
                formats.time(now));
    }

    private static String theme() {
        if (RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes attributes) {
            HttpServletRequest request = attributes.getRequest();
            for (Cookie cookie : request.getCookies() == null ? new Cookie[0] : request.getCookies()) {
                if (cookie.getName().equals(ThemePages.COOKIE)
                        && cookie.getValue().equals(ThemePages.NIGHT)) {
                    return ThemePages.NIGHT;
                }
            }
        }
        return ThemePages.PAPER;
    }
}
