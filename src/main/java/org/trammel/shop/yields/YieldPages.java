package org.trammel.shop.yields;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.SharesView;
import org.trammel.shop.web.TypedFields;

/** What the gates let through. */
@Controller
class YieldPages {

    private final Yields yields;
    private final Settings settings;
    private final Formats formats;

    YieldPages(Yields yields, Settings settings, Formats formats) {
        this.yields = yields;
        this.settings = settings;
        this.formats = formats;
    }

    @GetMapping("/qa/yield")
    String sheet(@RequestParam Map<String, String> fields, Model model) {
        TypedFields typed = new TypedFields(fields, "Nothing was counted.");
        LocalDate since = typed.dayOrNone("since");
        typed.refuseIfWrong();
        YieldSheet sheet = yields.since(
                Objects.requireNonNullElseGet(since, () -> settings.today().minusYears(1)));
        model.addAttribute("y", sheet);
        model.addAttribute("words", formats.sentence(sheet.words()));
        model.addAttribute("shares", sheet.gates().isEmpty() ? null : view(sheet));
        return "yields/sheet";
    }

    private SharesView view(YieldSheet sheet) {
        return new SharesView(
                "First-pass yield of " + sheet.gates().size() + " gates with intervals at 95 %. All together "
                        + formats.number(100 * Objects.requireNonNull(sheet.rolled()), 1) + " of 100 frames.",
                sheet.gates().stream()
                        .map(each -> new SharesView.Row(
                                each.code() + " " + each.name(),
                                each.firstPass().share(),
                                each.firstPass().interval().low(),
                                each.firstPass().interval().high()))
                        .toList());
    }
}
