package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** The sheets of the register of gauges. */
@Controller
class GaugePages {

    private static final int PAGE = 100;

    private final Gauges gauges;
    private final GaugeRegister register;
    private final Crew crew;
    private final Settings settings;
    private final Formats formats;
    private final DrawnErrors drawn;
    private final TooCoarse tooCoarse;

    GaugePages(
            Gauges gauges,
            GaugeRegister register,
            Crew crew,
            Settings settings,
            Formats formats,
            DrawnErrors drawn,
            TooCoarse tooCoarse) {
        this.gauges = gauges;
        this.register = register;
        this.crew = crew;
        this.settings = settings;
        this.formats = formats;
        this.drawn = drawn;
        this.tooCoarse = tooCoarse;
    }

    @GetMapping("/shop/gauges")
    String list(
            @RequestParam @Nullable String after,
            @RequestParam(defaultValue = "false") boolean retired,
            SignedOn who,
            Model model) {
        Gauge last = after == null ? null : gauges.byCode(after).orElse(null);
        List<Gauge> page = gauges.page(last, retired, PAGE);
        LocalDate today = settings.today();
        int warn = settings.whole("gauge.warn.days");
        model.addAttribute(
                "lines",
                page.stream()
                        .map(gauge -> GaugeLine.of(gauge, today, warn, measures(gauge)))
                        .toList());
        model.addAttribute("retired", retired);
        model.addAttribute(
                "next", page.size() < PAGE ? null : page.get(PAGE - 1).code());
        model.addAttribute("keeps", keeps(who));
        return "gauges/list";
    }

    @GetMapping("/shop/gauges/new")
    String fresh(Model model) {
        model.addAttribute("gauge", null);
        return form(model, Map.of());
    }

    @PostMapping("/shop/gauges")
    String register(Act act, @RequestParam Map<String, String> fields) {
        GaugeForm form = new GaugeForm(fields, "The gauge was not registered.");
        Gauge gauge = form.parts().isEmpty()
                ? register.register(act, form.text("code"), form.gauge())
                : register.setUp(act, form.text("code"), form.gauge(), form.parts());
        return sheet(gauge);
    }

    @GetMapping("/shop/gauges/{code}")
    String one(@PathVariable String code, SignedOn who, Model model) {
        Gauge gauge = find(code);
        model.addAttribute("gauge", gauge);
        model.addAttribute(
                "line", GaugeLine.of(gauge, settings.today(), settings.whole("gauge.warn.days"), measures(gauge)));
        model.addAttribute("kinds", kindNames());
        List<Calibration> calibrations = register.calibrationsOf(gauge.id());
        model.addAttribute("calibrations", calibrations);
        calibrations.stream()
                .filter(calibration -> !calibration.points().isEmpty())
                .findFirst()
                .ifPresent(calibration -> {
                    model.addAttribute("shown", calibration);
                    model.addAttribute("errors", drawn.of(gauge, calibration));
                });
        model.addAttribute("coarse", tooCoarse.of(gauge));
        model.addAttribute("rule", CalibrationPoint.RULE);
        model.addAttribute("units", units(gauge));
        model.addAttribute("failures", register.failuresOf(gauge.id()));
        model.addAttribute("names", crew.names());
        model.addAttribute("today", settings.today());
        model.addAttribute("keeps", keeps(who));
        model.addAttribute("unblocks", who.person().is(Role.QA_LEAD));
        model.addAttribute("works", who.person().mayWork());
        return "gauges/sheet";
    }

    @GetMapping("/shop/gauges/{code}/edit")
    String change(@PathVariable String code, Model model) {
        Gauge gauge = find(code);
        model.addAttribute("gauge", gauge);
        Map<String, Object> values = new HashMap<>();
        values.put("what", gauge.what());
        values.put("makerNumber", gauge.makerNumber());
        values.put("location", gauge.location());
        values.put("aid", gauge.aid());
        int i = 0;
        for (GaugeRange range : gauge.ranges()) {
            i++;
            values.put("kind" + i, range.kind());
            values.put("unit" + i, range.unit());
            values.put("lowest" + i, range.lowest());
            values.put("highest" + i, range.highest());
            values.put("resolution" + i, range.resolution());
            values.put("u" + i, range.u());
            values.put("uPercent" + i, range.uPercent());
            values.put("uSource" + i, range.uSource());
            values.put("errorPercent" + i, range.errorPercent());
        }
        return form(model, values);
    }

    private String form(Model model, Map<String, Object> values) {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("", "");
        kinds.putAll(kindNames());
        model.addAttribute("kinds", kinds);
        model.addAttribute("values", values);
        model.addAttribute("ranges", GaugeForm.RANGES);
        return "gauges/form";
    }

    @PostMapping("/shop/gauges/{code}/edit")
    String change(
            Act act, @PathVariable String code, @RequestParam long version, @RequestParam Map<String, String> fields) {
        return sheet(register.edit(act, code, version, new GaugeForm(fields, code + " was not changed.").gauge()));
    }

    @PostMapping("/shop/gauges/{code}/calibration")
    String calibrated(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        GaugeForm form = new GaugeForm(fields, "The calibration of " + code + " was not recorded.");
        return sheet(register.calibrated(act, code, form.calibration()));
    }

    @PostMapping("/shop/gauges/{code}/block")
    String block(Act act, @PathVariable String code, @RequestParam String reason) {
        return sheet(register.block(act, code, reason));
    }

    @PostMapping("/shop/gauges/{code}/unblock")
    String unblock(Act act, @PathVariable String code, @RequestParam String reason) {
        return sheet(register.unblock(act, code, reason));
    }

    @PostMapping("/shop/gauges/{code}/failure")
    String fail(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        GaugeForm form = new GaugeForm(fields, "The failure of " + code + " was not recorded.");
        return sheet(register.fail(
                act,
                code,
                new Failure(
                        form.day("foundOn"),
                        form.figure("error"),
                        form.text("unit"),
                        form.figure("errorAt"),
                        form.text("note"))));
    }

    @PostMapping("/shop/gauges/{code}/retire")
    String retire(Act act, @PathVariable String code, @RequestParam String reason) {
        return sheet(register.retire(act, code, reason));
    }

    private static String sheet(Gauge gauge) {
        return "redirect:/shop/gauges/" + gauge.code();
    }

    private Gauge find(String code) {
        return gauges.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The gauge was not found.",
                        "No gauge carries the number " + code + ".",
                        "Choose it from the register."));
    }

    private static Map<String, String> units(Gauge gauge) {
        Map<String, String> units = new LinkedHashMap<>();
        gauge.ranges().forEach(range -> units.put(range.unit(), range.unit()));
        return units;
    }

    private Map<String, String> kindNames() {
        Map<String, String> names = new LinkedHashMap<>();
        gauges.kinds().forEach(kind -> names.put(kind.code(), kind.name()));
        return names;
    }

    private static boolean keeps(SignedOn who) {
        return who.person().isAny(Role.QA_LEAD, Role.OWNER);
    }

    private String measures(Gauge gauge) {
        return gauge.ranges().stream().map(this::measures).collect(Collectors.joining("; "));
    }

    private String measures(GaugeRange range) {
        StringBuilder words = new StringBuilder();
        BigDecimal low = range.lowest();
        BigDecimal high = range.highest();
        if (low != null || high != null) {
            words.append(low == null ? "to " : formats.number(low) + " to ").append(formats.number(high));
        }
        if (range.resolution() != null) {
            words.append(words.isEmpty() ? "" : " by ").append(formats.number(range.resolution()));
        }
        return words.append(
                        words.isEmpty()
                                        || range.unit().isEmpty()
                                        || range.unit().equals("°")
                                ? ""
                                : " ")
                .append(range.unit())
                .toString();
    }
}
