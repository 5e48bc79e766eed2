package org.trammel.shop.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Devices.Enrolled;

/** The sheet to sign on at: names and keypad on a tablet, initials and password at a desk. */
@Controller
class SignOnPages {

    /** Lines that fit the tablet; the last of them opens the rest. */
    private static final int LINES = 8;

    private final SignOns signOns;
    private final CrewLists lists;
    private final PersonRepository people;
    private final FirstStart firstStart;

    SignOnPages(SignOns signOns, CrewLists lists, PersonRepository people, FirstStart firstStart) {
        this.signOns = signOns;
        this.lists = lists;
        this.people = people;
        this.firstStart = firstStart;
    }

    @GetMapping("/sign-on")
    String show(
            @RequestAttribute(name = AtTheDoor.ATTRIBUTE, required = false) @Nullable AtTheDoor door,
            @RequestParam @Nullable Long person,
            @RequestParam @Nullable String code,
            @RequestParam(defaultValue = "DOER") Place place,
            @RequestParam(defaultValue = "") String next,
            @RequestParam(defaultValue = "false") boolean all,
            RedirectAttributes flash,
            Model model) {
        model.addAttribute("next", Doors.inside(next, ""));
        if (door == null || !door.tablet()) {
            boolean empty = door == null && firstStart.ownerMissing();
            return empty ? "redirect:/first-owner" : "people/sign-on-desk";
        }
        Long chosen;
        try {
            chosen = chosen(person, code, door);
        } catch (Refusal nobody) {
            // The names stay on the glass: the way on is to tap one of them.
            flash.addFlashAttribute("unread", new Unread(nobody.what(), nobody.why(), nobody.instead()));
            flash.addAttribute("place", place);
            flash.addAttribute("next", Doors.inside(next, ""));
            return "redirect:/sign-on";
        }
        List<CrewLists.Line> crew = crew(door, place, chosen);
        int lines = door.signedOn() == null ? LINES : LINES - 1;
        boolean fold = !all && crew.size() > lines;
        model.addAttribute("door", door);
        model.addAttribute("place", place);
        model.addAttribute("crew", fold ? crew.subList(0, lines - 1) : crew);
        model.addAttribute("more", fold ? crew.size() - lines + 1 : 0);
        model.addAttribute(
                "chosen",
                crew.stream()
                        .filter(line -> chosen != null && line.person().id() == chosen)
                        .findFirst()
                        .orElse(null));
        model.addAttribute(
                "given",
                Optional.ofNullable(chosen)
                        .flatMap(people::findById)
                        .map(PersonRow::pinOneTime)
                        .orElse(false));
        return "people/sign-on-tablet";
    }

    /** Why a badge chose nobody, shown above the names. */
    public record Unread(String what, String why, String instead) {}

    @PostMapping("/sign-on")
    String signOn(
            @RequestAttribute(name = AtTheDoor.ATTRIBUTE, required = false) @Nullable AtTheDoor door,
            SignOnForm form,
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
            DeviceCookie.token(request).ifPresent(token -> DeviceCookie.give(request, response, token, true));
            return "redirect:" + Doors.inside(form.said(form.next()), "/station");
        }
        Enrolled desk = signOns.atDesk(
                form.id(),
                DeviceCookie.token(request).orElse(null),
                request.getRemoteAddr(),
                form.said(form.initials()),
                form.said(form.password()),
                form.ownPassword());
        DeviceCookie.give(request, response, desk.token(), false);
        return "redirect:" + Doors.inside(form.said(form.next()), "/");
    }

    @PostMapping("/sign-on/swap")
    String swap(SignedOn who, @RequestParam UUID actId, @RequestParam(defaultValue = "") String next) {
        signOns.swap(actId, who);
        return "redirect:" + Doors.inside(next, "/station");
    }

    @PostMapping("/sign-off")
    String signOff(SignedOn who, @RequestParam UUID actId, @RequestParam @Nullable Place place) {
        signOns.signOff(actId, who, place);
        return "redirect:/sign-on";
    }

    /** The crew, those first who were last here, the chosen one where the eye is; the second is never the doer. */
    private List<CrewLists.Line> crew(AtTheDoor door, Place place, @Nullable Long chosen) {
        SignedOn on = door.signedOn();
        List<CrewLists.Line> crew = new ArrayList<>(lists.atTablet(door.deviceId()));
        crew.removeIf(line -> place == Place.SECOND
                && on != null
                && on.person().id() == line.person().id());
        for (int i = LINES - 2; chosen != null && i < crew.size(); i++) {
            if (crew.get(i).person().id() == chosen) {
                crew.add(0, crew.remove(i));
                break;
            }
        }
        return crew;
    }

    private @Nullable Long chosen(@Nullable Long person, @Nullable String code, AtTheDoor door) {
        if (code != null && !code.isBlank()) {
            return people.findByBadge(code.strip().toUpperCase(Locale.ROOT))
                    .filter(PersonRow::active)
                    .map(PersonRow::id)
                    .orElseThrow(() -> Refusal.input(
                            "code",
                            "Nobody was chosen.",
                            "The badge is nobody's, or was replaced by a newer one.",
                            "Tap your name instead."));
        }
        Person last = door.lastDoer();
        return person == null && last != null ? Long.valueOf(last.id()) : person;
    }
}
