package org.trammel.shop.web;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.TestClock;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.RouteView.Progress;
import org.trammel.shop.web.RouteView.Stop;

/** Pages of a test that use every part of the sheet. */
@TestComponent
@Controller
class Samples {

    static final ScaleView TWIST = ScaleView.limits(exact("-0.30"), exact("0.30"), exact("0"), "°", 2)
            .guarded(exact("0.033"))
            .bySides();

    @GetMapping("/samples/desk")
    String desk(Model model) {
        model.addAttribute(
                "families",
                List.of(
                        List.of("waiting", "in-work", "done", "hold", "stopped"),
                        List.of("conforming", "undecided", "not-conforming", "caution"),
                        List.of("clear", "tight", "late", "sent", "kept"),
                        List.of("rework", "repair", "concession", "scrap")));
        model.addAttribute("scribes", Map.of("AV26101H", "UT-D", "AV26104B", "UTDT"));
        model.addAttribute("codes", List.of("AL6061", "STEEL", "TI"));
        model.addAttribute("wall", exact("0.9"));
        model.addAttribute("metals", Map.of("steel", "steel 25CrMo4", "titanium", "titanium 3Al-2.5V"));
        model.addAttribute(
                "scales",
                List.of(
                        TWIST,
                        TWIST.reading(exact("-0.053"), "conforming"),
                        TWIST.guarded(exact("0.093")).reading(exact("-0.331"), "undecided"),
                        TWIST.reading(exact("-0.344"), "not-conforming"),
                        TWIST.reading(exact("-4.1"), "not-conforming"),
                        ScaleView.limits(exact("148.00"), exact("148.50"), exact("148.00"), "mm", 2)
                                .guarded(exact("0.025"))
                                .reading(exact("148.22"), "conforming"),
                        ScaleView.limits(null, exact("0.30"), null, "mm", 2).reading(exact("0.12"), "conforming"),
                        ScaleView.limits(exact("95"), null, null, "HB", 0).reading(exact("97"), "conforming")));
        model.addAttribute("route", route());
        return "web-test/desk";
    }

    @GetMapping("/samples/station")
    String station(Model model) {
        model.addAttribute("sided", true);
        model.addAttribute("until", TestClock.START.plus(Duration.ofMinutes(130)));
        model.addAttribute("route", route());
        model.addAttribute("scale", TWIST.reading(exact("-0.344"), "not-conforming"));
        return "web-test/station";
    }

    @GetMapping("/samples/weld")
    String weld(Model model) {
        model.addAttribute("route", route());
        model.addAttribute("used", Duration.ofMinutes(35));
        model.addAttribute("allowed", Duration.ofHours(3));
        return "web-test/weld";
    }

    @GetMapping("/samples/key")
    String key() {
        return "web-test/key";
    }

    @PostMapping("/samples/key")
    String keyed(@RequestParam String value) {
        if (value.equals("refuse")) {
            throw Refusal.input("value", "The reading was not recorded.", "It is not a number.", "Key it again.");
        }
        return "redirect:/samples/key?done";
    }

    static RouteView route() {
        return new RouteView(List.of(
                new Stop("Saw & mitre", Progress.DONE, 1, null, false),
                new Stop("Prep & clean", Progress.DONE, 1, null, false),
                new Stop("Jig & weld", Progress.DONE, 1, "tack check", true),
                new Stop("Alignment table", Progress.IN_WORK, 0.5, "A2", false),
                new Stop("Heat treat", Progress.TO_COME, 0, "load release", false),
                new Stop("Ream, face, bore", Progress.TO_COME, 0, null, false),
                new Stop("Blast & pretreat", Progress.TO_COME, 0, null, false),
                new Stop("Coat & cure", Progress.TO_COME, 0, null, false),
                new Stop("Assembly, final check", Progress.TO_COME, 0, "final release", false)));
    }

    static BigDecimal exact(String figure) {
        return new BigDecimal(figure);
    }
}
