package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.statistics.GaugeStudy;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Formats;

/** The sheets of a gauge's studies. */
@Controller
@RequestMapping("/shop/gauges/{code}/studies")
class StudyPages {

    private final GaugeStudies studies;
    private final Gauges gauges;
    private final Formats formats;

    StudyPages(GaugeStudies studies, Gauges gauges, Formats formats) {
        this.studies = studies;
        this.gauges = gauges;
        this.formats = formats;
    }

    @GetMapping
    String list(@PathVariable String code, SignedOn who, Model model) {
        Gauge gauge = gauge(code);
        model.addAttribute("gauge", gauge);
        model.addAttribute("studies", studies.of(gauge));
        model.addAttribute("keeps", who.person().isAny(Role.QA_LEAD, Role.OWNER));
        return "gauges/studies";
    }

    @GetMapping("/new")
    String fresh(
            @PathVariable String code,
            @RequestParam(defaultValue = "10") String parts,
            @RequestParam(defaultValue = "3") String appraisers,
            @RequestParam(defaultValue = "2") String trials,
            Model model) {
        Gauge gauge = gauge(code);
        StudyForm form = new StudyForm(Map.of("parts", parts, "appraisers", appraisers, "trials", trials));
        model.addAttribute("gauge", gauge);
        model.addAttribute("parts", form.count("parts", StudyForm.MOST_PARTS));
        model.addAttribute("appraisers", form.count("appraisers", StudyForm.MOST_APPRAISERS));
        model.addAttribute("trials", form.count("trials", StudyForm.MOST_TRIALS));
        Map<String, String> units = new LinkedHashMap<>();
        gauge.ranges().forEach(range -> units.put(range.unit(), range.unit()));
        model.addAttribute("units", units);
        return "gauges/study-form";
    }

    @PostMapping
    String enter(Act act, @PathVariable String code, @RequestParam Map<String, String> fields) {
        long id = studies.enter(act, code, new StudyForm(fields).study());
        return "redirect:/shop/gauges/" + gauge(code).code() + "/studies/" + id;
    }

    /** A source of spread in a row of the table, by each method; empty where a method has no answer. */
    record Row(String word, Cells byVariances, Cells byRanges) {}

    /** Figures of a source by one method. */
    record Cells(String deviation, String variance, String ofVariance, String ofSpread, String ofTolerance) {

        static final Cells EMPTY = new Cells("", "", "", "", "");
    }

    @GetMapping("/{id}")
    String one(@PathVariable String code, @PathVariable long id, SignedOn who, Model model) {
        boolean qa = who.person().is(Role.QA_LEAD);
        Study study = studies.one(code, id, qa);
        Map<String, Map<String, List<BigDecimal>>> table = GaugeStudies.table(study.readings());
        model.addAttribute("study", study);
        model.addAttribute("table", table);
        model.addAttribute(
                "appraisers", new TreeSet<>(table.values().iterator().next().keySet()));
        model.addAttribute("rows", rows(study));
        model.addAttribute("byVariances", words(study.byVariances()));
        model.addAttribute("byRanges", words(study.byRanges()));
        model.addAttribute("analysis", analysis(study.byVariances()));
        model.addAttribute(
                "beyond",
                study.byRanges() == null || study.byRanges().ranges() == null
                        ? List.of()
                        : study.byRanges().ranges().beyond().stream()
                                .map(formats::sentence)
                                .toList());
        model.addAttribute(
                "places",
                study.readings().stream()
                        .mapToInt(reading -> Math.max(reading.value().scale(), 0))
                        .max()
                        .orElse(0));
        model.addAttribute("named", qa);
        return "gauges/study";
    }

    private @Nullable String words(@Nullable GaugeStudy study) {
        return study == null ? null : formats.sentence(study.words());
    }

    private List<Row> rows(Study study) {
        List<Row> rows = new ArrayList<>();
        for (GaugeStudy.Source source : GaugeStudy.Source.values()) {
            rows.add(new Row(word(source), cells(study.byVariances(), source), cells(study.byRanges(), source)));
        }
        return rows;
    }

    private static String word(GaugeStudy.Source source) {
        return switch (source) {
            case REPEATABILITY -> "repeatability: one appraiser, one part, again";
            case REPRODUCIBILITY -> "reproducibility: between appraisers";
            case GAUGE -> "the gauge: both together";
            case PARTS -> "between parts";
            case TOTAL -> "total";
        };
    }

    private Cells cells(@Nullable GaugeStudy study, GaugeStudy.Source source) {
        if (study == null) {
            return Cells.EMPTY;
        }
        GaugeStudy.Component c = study.of(source);
        return new Cells(
                figure(c.deviation()),
                figure(c.deviation() * c.deviation()),
                share(c.ofVariance()),
                share(c.ofSpread()),
                c.ofTolerance() == null ? "" : share(c.ofTolerance()));
    }

    /** A row of the analysis of variance. */
    record Analysed(String word, String squares, int freedom, String meanSquare, String ratio, String probability) {}

    private List<Analysed> analysis(@Nullable GaugeStudy study) {
        GaugeStudy.Variances v = study == null ? null : study.variances();
        if (v == null) {
            return List.of();
        }
        return List.of(
                analysed("parts", v.parts()),
                analysed("appraisers", v.appraisers()),
                analysed(
                        v.pooled() ? "their interaction, pooled with the repeats" : "their interaction",
                        v.interaction()),
                analysed("repeats", v.repeatability()));
    }

    private Analysed analysed(String word, GaugeStudy.Line line) {
        return new Analysed(
                word,
                figure(line.sumOfSquares()),
                line.degreesOfFreedom(),
                figure(line.meanSquare()),
                line.f() == null ? "" : figure(line.f()),
                line.probability() == null
                        ? ""
                        : formats.sentence(String.format(Locale.ROOT, "%.3f", line.probability())));
    }

    /** Four digits that count. */
    private String figure(double value) {
        BigDecimal exact = new BigDecimal(value).round(new MathContext(4));
        return formats.number(exact.signum() == 0 ? BigDecimal.ZERO : exact);
    }

    private String share(double part) {
        return formats.number(100 * part, 1) + " %";
    }

    private Gauge gauge(String code) {
        return gauges.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The gauge was not found.",
                        "No gauge carries the number " + code + ".",
                        "Choose it from the register."));
    }
}
