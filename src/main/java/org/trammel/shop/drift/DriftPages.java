package org.trammel.shop.drift;

import java.util.Arrays;
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
import org.trammel.calc.statistics.BaseDoubts;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.CumulativeSumSetting;
import org.trammel.calc.statistics.WeightedMeanSetting;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.stations.Jig;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.web.Formats;

/** The drift charts. */
@Controller
@RequestMapping("/qa/drift")
class DriftPages {

    private final DriftCharts charts;
    private final DriftBook book;
    private final DrawnCharts drawn;
    private final ShiftTraces traces;
    private final WithoutJig withoutJig;
    private final EarlierWelders welders;
    private final Stations stations;
    private final Crew crew;
    private final Formats formats;

    DriftPages(
            DriftCharts charts,
            DriftBook book,
            DrawnCharts drawn,
            ShiftTraces traces,
            WithoutJig withoutJig,
            EarlierWelders welders,
            Stations stations,
            Crew crew,
            Formats formats) {
        this.charts = charts;
        this.book = book;
        this.drawn = drawn;
        this.traces = traces;
        this.withoutJig = withoutJig;
        this.welders = welders;
        this.stations = stations;
        this.crew = crew;
        this.formats = formats;
    }

    /**
     * A series on the list.
     *
     * @param called what it follows, as whoever looks may know it
     */
    public record Line(Series series, String called, Standing.Stand stand, int readings, String words) {}

    /** A charted reading in the table. */
    public record Row(int number, Point point, double shown, boolean inBase, List<String> alarms) {}

    @GetMapping
    String list(SignedOn who, Model model) {
        Welders called = Welders.seenBy(who.person());
        model.addAttribute(
                "lines", charts.all().stream().map(each -> line(each, called)).toList());
        model.addAttribute("withoutJig", withoutJig.of(charts.watched()));
        model.addAttribute("withoutJigDays", WithoutJig.DAYS);
        Map<String, String> factors = new LinkedHashMap<>();
        Arrays.stream(Factor.values()).forEach(each -> factors.put(each.name(), each.word()));
        model.addAttribute("factors", factors);
        boolean qa = who.person().is(Role.QA_LEAD);
        model.addAttribute("qa", qa);
        Map<String, String> names = new LinkedHashMap<>();
        if (qa) {
            welders.names().forEach(name -> names.put(name, name));
        }
        model.addAttribute("earlierNames", names);
        Map<String, String> jigs = new LinkedHashMap<>();
        stations.jigs().stream().map(Jig::code).forEach(code -> jigs.put(code, code));
        model.addAttribute("jigs", jigs);
        return "drift/list";
    }

    private Line line(Standing of, Welders called) {
        String words = switch (of.stand()) {
            case DRIFTS -> "Since reading " + of.kept().driftsSince() + ". " + told(of);
            case DRIFTED -> told(of);
            case NO_BASE -> "The QA lead takes a base; until then there are no limits.";
            case EMPTY -> "Nothing was read yet of a frame whose jig was noted.";
            case STILL -> "No reading is out of what the base lets expect.";
        };
        return new Line(
                of.series(), called.of(of.series()), of.stand(), of.kept().charted(), words);
    }

    private String told(Standing of) {
        return of.told() == null ? "" : drawn.words(of.told());
    }

    @PostMapping
    String watch(Act act, @RequestParam Map<String, String> fields) {
        return sheet(book.watch(act, new DriftForm(fields).series()).id());
    }

    @GetMapping("/{id}")
    String one(@PathVariable long id, @RequestParam(defaultValue = "") String until, SignedOn who, Model model) {
        Charted of = charts.of(id, number(until));
        Base base = of.base();
        Welders called = Welders.seenBy(who.person());
        model.addAttribute("of", of);
        model.addAttribute("line", line(of.standing(), called));
        model.addAttribute("charts", drawn.of(of, called));
        List<Row> rows = rows(of);
        model.addAttribute("rows", rows);
        model.addAttribute(
                "sources",
                rows.stream()
                        .map(Row::point)
                        .filter(Point::earlier)
                        .map(Point::source)
                        .distinct()
                        .toList());
        int decimals = base == null ? 3 : DrawnCharts.decimals(base.sigma().doubleValue());
        model.addAttribute("decimals", decimals);
        model.addAttribute(
                "readDecimals",
                DrawnCharts.fewest(rows.stream().map(row -> row.point().value()).toList(), 6));
        model.addAttribute(
                "shownDecimals",
                DrawnCharts.fewest(rows.stream().map(Row::shown).toList(), decimals));
        if (base != null) {
            model.addAttribute("centreDecimals", DrawnCharts.fewest(List.of(base.centre()), decimals));
            model.addAttribute("sigmaDecimals", DrawnCharts.fewest(List.of(base.sigma()), decimals + 1));
        }
        model.addAttribute("doubts", base == null ? List.of() : doubts(of));
        model.addAttribute("bases", charts.bases(id));
        model.addAttribute("names", crew.names());
        String jig = of.series().jig();
        model.addAttribute("jig", jig == null ? null : stations.jig(jig).orElse(null));
        model.addAttribute("struck", charts.struck(of.series()));
        model.addAttribute(
                "traced",
                traces.axes().stream()
                        .anyMatch(axis -> axis.code().equals(of.series().code())));
        model.addAttribute("qa", who.person().is(Role.QA_LEAD));
        model.addAttribute("kinds", DriftForm.KINDS);
        model.addAttribute("usualMean", WeightedMeanSetting.USUAL);
        model.addAttribute("usualSum", CumulativeSumSetting.USUAL);
        return "drift/sheet";
    }

    /** A number that was not typed by us shows the newest. */
    private static @Nullable Integer number(String until) {
        return until.matches("[1-9][0-9]{0,8}") ? Integer.valueOf(until) : null;
    }

    private List<Row> rows(Charted of) {
        Map<Integer, List<Alarm>> alarms = of.alarms().stream().collect(Collectors.groupingBy(Alarm::index));
        return of.rows().stream()
                .map(row -> row(row, row.state().number(), of.inBase(), alarms))
                .toList();
    }

    private Row row(KeptRow row, int number, int inBase, Map<Integer, List<Alarm>> alarms) {
        return new Row(
                number,
                row.point(),
                row.value(),
                number <= inBase,
                alarms.getOrDefault(number - 1, List.of()).stream()
                        .map(alarm -> drawn.words(alarm).replaceFirst("^Reading \\d+: ", ""))
                        .toList());
    }

    private List<String> doubts(Charted of) {
        Base base = of.base();
        if (base == null || base.kind() == Base.Kind.GIVEN) {
            return List.of();
        }
        Answer<BaseDoubts> answer = BaseDoubts.of(charts.base(of));
        return answer instanceof Answer.Determined<BaseDoubts> told
                ? told.value().sentences().stream().map(formats::sentence).toList()
                : ((Answer.NotDeterminable<BaseDoubts>) answer)
                        .gaps().stream()
                                .map(gap -> formats.sentence(gap.words()))
                                .toList();
    }

    @PostMapping("/welder-names/erase")
    String erase(Act act, @RequestParam(defaultValue = "") String name) {
        welders.erase(act, name);
        return "redirect:/qa/drift";
    }

    @PostMapping("/{id}/base")
    String base(Act act, @PathVariable long id, @RequestParam Map<String, String> fields) {
        book.base(act, id, new DriftForm(fields).base());
        return sheet(id);
    }

    @PostMapping("/{id}/earlier")
    String takeOver(
            Act act,
            @PathVariable long id,
            @RequestParam Map<String, String> fields,
            @RequestParam(defaultValue = "") @Nullable String source) {
        book.takeOver(act, id, new DriftForm(fields).earlier(), source == null ? "" : source);
        return sheet(id);
    }

    @PostMapping("/{id}/earlier/{reading}/strike-out")
    String strike(
            Act act,
            @PathVariable long id,
            @PathVariable long reading,
            @RequestParam(defaultValue = "") String reason) {
        book.strike(act, id, reading, reason);
        return sheet(id);
    }

    private static String sheet(long id) {
        return "redirect:/qa/drift/" + id;
    }
}
