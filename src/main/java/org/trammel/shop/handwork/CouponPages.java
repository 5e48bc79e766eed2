package org.trammel.shop.handwork;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.statistics.ToleranceInterval;
import org.trammel.calc.units.Answer;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.ShopLimits;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.Keyed;

/** Coupons of known stock, and the window of conductivity they give. */
@Controller
@RequestMapping("/shop/coupons")
class CouponPages {

    private final Coupons coupons;
    private final Gauges gauges;
    private final Settings settings;
    private final Formats formats;
    private final Crew crew;

    CouponPages(Coupons coupons, Gauges gauges, Settings settings, Formats formats, Crew crew) {
        this.coupons = coupons;
        this.gauges = gauges;
        this.settings = settings;
        this.formats = formats;
        this.crew = crew;
    }

    /**
     * The coupons of a metal.
     *
     * @param words the interval they give in figures, or why there is none
     */
    record Stock(String metal, List<Coupon> coupons, ShopLimits.@Nullable Window window, String words) {}

    @GetMapping
    String list(SignedOn who, Model model) {
        model.addAttribute(
                "stocks",
                Coupons.METALS.stream()
                        .map(metal -> new Stock(
                                metal, coupons.of(metal), coupons.window(metal).orElse(null), words(metal)))
                        .toList());
        Map<String, String> metals = new LinkedHashMap<>();
        Coupons.METALS.forEach(metal -> metals.put(metal, formats.metal(metal)));
        model.addAttribute("metals", metals);
        Map<String, String> meters = new LinkedHashMap<>();
        meters.put("", "choose the one in your hand");
        for (Means means : gauges.usableFor("CONDUCTIVITY", "%IACS", settings.today())) {
            meters.put(means.code(), means.code() + ", " + means.what());
        }
        model.addAttribute("meters", meters);
        model.addAttribute("names", crew.names());
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "handwork/coupons";
    }

    private String words(String metal) {
        Answer<ToleranceInterval> interval = coupons.interval(metal);
        if (interval instanceof Answer.NotDeterminable<ToleranceInterval> gap) {
            return gap.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" "))
                    + " Until then the limits are those of the route.";
        }
        ToleranceInterval told = ((Answer.Determined<ToleranceInterval>) interval).value();
        return "Mean " + formats.number(java.math.BigDecimal.valueOf(told.mean()), 2) + ", deviation "
                + formats.number(java.math.BigDecimal.valueOf(told.deviation()), 2) + ", k "
                + formats.number(java.math.BigDecimal.valueOf(told.factor()), 2) + ": "
                + formats.number(settings.number("coupon.share")) + " % of such stock lies within, with "
                + formats.number(settings.number("coupon.confidence"))
                + " % confidence (tolerance interval after Howe 1969).";
    }

    @PostMapping
    String read(Act act, @RequestParam Map<String, String> fields) {
        coupons.read(
                act,
                new Coupons.Read(
                        fields.get("metal"),
                        fields.get("coupon"),
                        fields.get("knownBy"),
                        Keyed.figureOrNone("value", "The coupon was not taken.", fields.get("value")),
                        fields.get("gauge")));
        return "redirect:/shop/coupons";
    }

    @PostMapping("/{id}/take-out")
    String takeOut(Act act, @PathVariable long id, @RequestParam @Nullable String reason) {
        coupons.takeOut(act, id, reason);
        return "redirect:/shop/coupons";
    }
}
