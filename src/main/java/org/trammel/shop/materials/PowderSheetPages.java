package org.trammel.shop.materials;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.TypedFields;

/** Takes the sheet of a powder or paint from the page of its lot. */
@Controller
class PowderSheetPages {

    /** So many pairs has the form. */
    private static final int PAIRS = 2;

    private final PowderSheets sheets;

    PowderSheetPages(PowderSheets sheets) {
        this.sheets = sheets;
    }

    @PostMapping("/shop/lots/{code}/sheet")
    String enter(Act act, @PathVariable String code, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The sheet was not entered.");
        List<NewPowderSheet.Pair> pairs = new ArrayList<>();
        for (int i = 1; i <= PAIRS; i++) {
            if (fields.has("minutes" + i) || fields.has("metal" + i)) {
                pairs.add(
                        new NewPowderSheet.Pair(fields.figureOrNone("minutes" + i), fields.figureOrNone("metal" + i)));
            }
        }
        NewPowderSheet entry = new NewPowderSheet(
                fields.text("colour"),
                pairs,
                fields.figureOrNone("energy"),
                fields.figureOrNone("least"),
                fields.figureOrNone("most"),
                fields.text("source"));
        fields.refuseIfWrong();
        try {
            sheets.enter(act, code, entry);
        } catch (Refusal refused) {
            throw "pairs".equals(refused.field()) ? refused.at("minutes1") : refused;
        }
        return "redirect:/shop/lots/" + code;
    }
}
