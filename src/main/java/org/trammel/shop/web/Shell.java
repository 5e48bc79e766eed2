package org.trammel.shop.web;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.RoleWords;
import org.trammel.shop.people.SignedOn;

/** What the title block of a page shows. Templates know it as {@code @shell}. */
@Component("shell")
class Shell {

    private static final List<Tab> TABS = List.of(
            new Tab("run", "Run of the shop", "/run"),
            new Tab("stations", "Stations", "/stations"),
            new Tab("alignment", "Alignment", "/alignment"),
            new Tab("qa", "QA desk", "/qa"),
            new Tab("nonconformances", "Nonconformances", "/nonconformances"),
            new Tab("frames", "Frames", "/frames"),
            new Tab("orders", "Orders", "/orders"),
            new Tab("routes", "Routes", "/routes"),
            new Tab("shop", "Shop", "/shop"));

    /** How many stations of a tablet the title block has room to name. */
    private static final int MOST_NAMED = 2;

    /** Scripts a page may ask for by data-behaviour. */
    private static final List<String> MODULES =
            List.of("send", "keypad", "scan", "countdown", "theme", "wipe", "camera", "lock", "print");

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
     * @param who name and roles of the person signed on; null if nobody is
     * @param second who stands by as a witness at a tablet; null if nobody does
     * @param personId for the punch; 0 if nobody is signed on
     * @param device name of the tablet; null at a desk
     */
    record Page(
            String lang,
            String theme,
            String shop,
            boolean demo,
            List<Tab> tabs,
            @Nullable String who,
            @Nullable String second,
            long personId,
            @Nullable String device,
            String place,
            String day,
            String time,
            Instant now,
            List<String> modules) {}

    /** The title block for the request this thread answers. */
    public Page page() {
        Instant now = clock.instant();
        SignedOn signedOn = SignedOnResolver.current();
        return new Page(
                "en-GB",
                theme(),
                house.name(),
                house.demo(),
                TABS,
                signedOn == null ? null : who(signedOn),
                signedOn == null || signedOn.second() == null
                        ? null
                        : signedOn.second().name(),
                signedOn == null ? 0 : signedOn.person().id(),
                signedOn == null || !signedOn.tablet() ? null : "Tablet " + signedOn.deviceName(),
                signedOn == null ? "" : place(signedOn),
                formats.day(now) + " " + now.atZone(house.zone()).getYear(),
                formats.time(now),
                now,
                MODULES);
    }

    private static String who(SignedOn signedOn) {
        Person person = signedOn.person();
        return signedOn.tablet()
                ? person.name()
                : person.roles().stream()
                        .min(Comparator.naturalOrder())
                        .map(role -> person.name() + ", " + RoleWords.of(role))
                        .orElse(person.name());
    }

    private String place(SignedOn signedOn) {
        List<String> stations = signedOn.stations();
        return stations.size() <= MOST_NAMED
                ? stations.stream().map(house::station).collect(Collectors.joining(", "))
                : house.station(stations.get(0)) + " and " + (stations.size() - 1) + " more stations";
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
