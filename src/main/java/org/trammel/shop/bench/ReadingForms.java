package org.trammel.shop.bench;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.web.Keyed;

/** Readings as they are keyed, and the cold-set that follows one. */
@Controller
@RequestMapping("/station/{tag}")
class ReadingForms {

    private final Evidence evidence;
    private final Readings readings;
    private final ColdSets coldSets;
    private final LastGauge lastGauge;

    ReadingForms(Evidence evidence, Readings readings, ColdSets coldSets, LastGauge lastGauge) {
        this.evidence = evidence;
        this.readings = readings;
        this.coldSets = coldSets;
        this.lastGauge = lastGauge;
    }

    /**
     * Takes the fields value0, value1, … with side0, side1, … where the characteristic has sides; of a single point the
     * side is called side.
     */
    @PostMapping("/read")
    RedirectView read(
            Act act,
            @PathVariable String tag,
            @RequestParam long characteristic,
            @RequestParam(defaultValue = "") String gauge,
            @RequestParam @Nullable String temperature,
            @RequestParam(defaultValue = "false") boolean confirm,
            @RequestParam @Nullable Long replaces,
            @RequestParam(defaultValue = "") String reason,
            @RequestParam MultiValueMap<String, String> form,
            HttpServletResponse response) {
        Evidence.Wanted wanted = evidence.wanted(characteristic);
        String what = wanted.code() + ", " + wanted.name() + ", is not read.";
        if (gauge.isBlank()) {
            throw Refusal.input("gauge", what, "No gauge was chosen.", "Choose the one in your hand, then Enter.");
        }
        Readings.Input input = new Readings.Input(
                raw(wanted, form, what), gauge, Keyed.figureOrNone("temperature", what, temperature), confirm);
        if (replaces == null) {
            readings.read(act, characteristic, input);
        } else {
            readings.correct(act, replaces, input, reason);
        }
        lastGauge.remember(response, wanted.gaugeKind(), gauge.strip());
        return Back.toReading(tag, characteristic);
    }

    private static List<BigDecimal> raw(Evidence.Wanted wanted, MultiValueMap<String, String> form, String what) {
        List<BigDecimal> raw = new ArrayList<>();
        for (int i = 0; i < wanted.points().size(); i++) {
            String side = form.getFirst("side" + i);
            if (side == null && wanted.points().size() == 1) {
                side = form.getFirst("side");
            }
            String typed = form.getFirst("value" + i);
            if (wanted.points().size() > 1 && (typed == null || typed.isBlank())) {
                throw Refusal.input(
                        "value" + i,
                        what,
                        "Nothing is entered at " + wanted.points().get(i) + ".",
                        "Key what the gauge shows there, then Enter.");
            }
            BigDecimal figure = Keyed.figure("value" + i, what, typed);
            raw.add(wanted.sided() ? toSide("value" + i, what, figure, side) : figure);
        }
        return raw;
    }

    /** Plus is the drive side. A sign keyed beside a side would leave open which of the two was meant. */
    private static BigDecimal toSide(String field, String what, BigDecimal figure, @Nullable String side) {
        if (figure.signum() < 0) {
            throw Refusal.input(
                    field, what, "A side is a word here, not a minus sign.", "Key the figure and choose its side.");
        }
        if (figure.signum() == 0) {
            return figure;
        }
        if ("DRIVE".equals(side)) {
            return figure;
        }
        if ("NON_DRIVE".equals(side)) {
            return figure.negate();
        }
        throw Refusal.input(field, what, "The side was not chosen.", "Choose drive or non-drive, then Enter.");
    }

    @PostMapping("/cold-set")
    RedirectView coldSet(
            Act act,
            @PathVariable String tag,
            @RequestParam long characteristic,
            @RequestParam @Nullable String amount,
            @RequestParam @Nullable String push) {
        String what = "The cold-set is not recorded.";
        coldSets.push(
                act, characteristic, Keyed.figure("amount", what, amount), Keyed.figureOrNone("push", what, push));
        return Back.toReading(tag, characteristic);
    }
}
