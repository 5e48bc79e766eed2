package org.trammel.shop.materials;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** The sheets of lots: all of them, one with what it went into, a frame with what it is made of. */
@Controller
class LotPages {

    private static final int PAGE = 100;

    private final Lots lots;
    private final LotSections sections;
    private final PowderSheets sheets;
    private final Fits fits;
    private final AfterWelds afterWelds;
    private final Crew crew;
    private final Settings settings;
    private final Formats formats;

    LotPages(
            Lots lots,
            LotSections sections,
            PowderSheets sheets,
            Fits fits,
            AfterWelds afterWelds,
            Crew crew,
            Settings settings,
            Formats formats) {
        this.lots = lots;
        this.sections = sections;
        this.sheets = sheets;
        this.fits = fits;
        this.afterWelds = afterWelds;
        this.crew = crew;
        this.settings = settings;
        this.formats = formats;
    }

    @GetMapping("/shop/lots")
    String list(
            @RequestParam @Nullable Long before,
            @RequestParam @Nullable LotKind kind,
            @RequestParam @Nullable LotState state,
            SignedOn who,
            Model model) {
        List<Lot> page = lots.page(before, kind, state, PAGE);
        boolean first = before == null && kind == null && state == null;
        int warn = settings.whole("lot.warn.days");
        model.addAttribute(
                "expiring", first ? lines(lots.expiring(settings.today().plusDays(warn))) : List.of());
        model.addAttribute("lines", lines(page));
        model.addAttribute(
                "next", page.size() < PAGE ? null : page.get(PAGE - 1).id());
        model.addAttribute("kind", kind);
        model.addAttribute("state", state);
        model.addAttribute("kinds", words(LotKind.values(), LotKind::word, "all kinds"));
        model.addAttribute("states", words(LotState.values(), LotState::word, "all states"));
        model.addAttribute("works", who.person().mayWork());
        return "lots/list";
    }

    @GetMapping("/shop/lots/new")
    String fresh(Model model) {
        model.addAttribute("lot", null);
        return form(model);
    }

    @GetMapping("/shop/lots/{code}/edit")
    String correct(@PathVariable String code, Model model) {
        model.addAttribute("lot", find(code));
        return form(model);
    }

    private String form(Model model) {
        Map<String, String> classes = new LinkedHashMap<>();
        classes.put("", "not needed for this kind");
        fits.classes().forEach(known -> classes.put(known.code(), known.kind().word() + ": " + known.name()));
        model.addAttribute("classes", classes);
        model.addAttribute("kinds", words(LotKind.values(), LotKind::word, null));
        model.addAttribute("metals", metals("not a tube or fitting"));
        model.addAttribute("families", words(MetalFamily.values(), MetalFamily::word, "any metal"));
        model.addAttribute("today", settings.today());
        return "lots/form";
    }

    @GetMapping("/shop/lots/{code}")
    String one(@PathVariable String code, SignedOn who, Model model) {
        Lot lot = find(code);
        LocalDate today = settings.today();
        model.addAttribute("lot", lot);
        model.addAttribute("today", today);
        model.addAttribute("line", LotLine.of(lot, today, settings.whole("lot.warn.days")));
        model.addAttribute("wentInto", lots.wentInto(lot.code()));
        model.addAttribute("remnants", lots.remnants(lot.code()));
        model.addAttribute("sections", words(lot));
        model.addAttribute("metal", Fits.named(lot.metal()));
        boolean cures = lot.kind() == LotKind.POWDER || lot.kind() == LotKind.PAINT;
        model.addAttribute("cures", cures);
        model.addAttribute("powder", cures ? sheets.of(lot.code()).orElse(null) : null);
        model.addAttribute(
                "entersSheet",
                cures
                        && who.person().mayWork()
                        && (lot.state() == LotState.QUARANTINED || who.person().is(Role.QA_LEAD)));
        model.addAttribute("names", crew.names());
        model.addAttribute("works", who.person().mayWork());
        model.addAttribute("releases", who.person().is(Role.QA_LEAD));
        model.addAttribute("blocks", who.person().isAny(Role.QA_LEAD, Role.OWNER));
        model.addAttribute("certificateTypes", Map.of("3.1", "3.1", "batch", "batch", "none", "maker's sheet"));
        return "lots/sheet";
    }

    @GetMapping("/frames/{serial}/made-of")
    String madeOf(@PathVariable String serial, SignedOn who, Model model) {
        model.addAttribute("serial", FramePlaces.read(serial).frame().stored());
        model.addAttribute("works", who.person().mayWork());
        return "lots/frame";
    }

    @GetMapping("/shop/fits")
    String table(SignedOn who, Model model) {
        model.addAttribute(
                "classes", fits.classes().stream().collect(Collectors.toMap(MaterialClass::code, Function.identity())));
        model.addAttribute("fits", fits.inForce());
        model.addAttribute("asWelded", afterWelds.signed());
        model.addAttribute("metals", metals(null));
        model.addAttribute("names", crew.names());
        Map<String, String> choices = new LinkedHashMap<>();
        fits.classes().forEach(known -> choices.put(known.code(), known.kind().word() + ": " + known.name()));
        model.addAttribute("choices", choices);
        Map<String, String> processes = new LinkedHashMap<>();
        processes.put("", "any");
        processes.put("TIG", "TIG");
        processes.put("BRAZE", "brazing");
        model.addAttribute("processes", processes);
        model.addAttribute("afterWelds", words(Fit.AfterWeld.values(), Fit.AfterWeld::word, null));
        model.addAttribute("keeps", who.person().is(Role.QA_LEAD));
        return "lots/fits";
    }

    /** The sections of a tube in words; null for what has none. */
    private @Nullable List<String> words(Lot lot) {
        return lot.kind().metallic()
                ? sections.of(lot.id()).stream()
                        .map(section -> section.words(formats))
                        .toList()
                : null;
    }

    private List<LotLine> lines(List<Lot> page) {
        LocalDate today = settings.today();
        int warn = settings.whole("lot.warn.days");
        return page.stream().map(lot -> LotLine.of(lot, today, warn)).toList();
    }

    private Lot find(String code) {
        return lots.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The lot was not found.", "No lot carries the code " + code + ".", "Choose it from the list."));
    }

    private static Map<String, String> metals(@Nullable String none) {
        Map<String, String> metals = new LinkedHashMap<>();
        if (none != null) {
            metals.put("", none);
        }
        Stream.of("AL6061", "AL7005", "STEEL", "TI").forEach(metal -> metals.put(metal, Fits.named(metal)));
        return metals;
    }

    private static <E extends Enum<E>> Map<String, String> words(
            E[] values, Function<E, String> word, @Nullable String none) {
        Map<String, String> words = new LinkedHashMap<>();
        if (none != null) {
            words.put("", none);
        }
        Arrays.stream(values).forEach(value -> words.put(value.name(), word.apply(value)));
        return words;
    }
}
