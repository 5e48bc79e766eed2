package org.trammel.shop.welding;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Tables of limits, each as it was read in one edition of a standard. None counts until a procedure names it. */
@Service
public class LimitSets {

    private final LimitSetRepository rows;
    private final Crew crew;
    private final ActLog log;

    LimitSets(LimitSetRepository rows, Crew crew, ActLog log) {
        this.rows = rows;
        this.crew = crew;
        this.log = log;
    }

    @Transactional(readOnly = true)
    public List<LimitSet> all() {
        return rows.findAllByOrderByCode().stream().map(LimitSetRow::set).toList();
    }

    @Transactional(readOnly = true)
    public LimitSet of(String code) {
        return rows.findByCode(Procedures.label(code))
                .map(LimitSetRow::set)
                .orElseThrow(() -> Refusal.missing(
                        "The table was not found.",
                        "No table of limits is called " + Procedures.label(code) + ".",
                        "Choose one from the list."));
    }

    /**
     * A table to be entered.
     *
     * @param lines one limit to a line, see {@link LimitLines}
     */
    public record NewLimits(String what, String standard, String edition, String source, String lines) {}

    /** Enters a table. Another edition is another table under a code of its own. */
    @Transactional
    public LimitSet enter(Act act, String typed, NewLimits content) {
        String deed = "The table of limits was not entered.";
        String code = TypedText.line("code", "The number", deed, Procedures.label(typed), 30);
        if (!log.opens(act, "enter-weld-limits", "weld-limits:" + code, Chains.SHOP)) {
            return of(code);
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        if (!code.matches("[A-Z0-9][A-Z0-9-]*")) {
            throw Refusal.input(
                    "code", deed, code + " has signs beside letters, digits and dashes.", "Write it otherwise.");
        }
        if (rows.findByCode(code).isPresent()) {
            throw Refusal.input(
                    "code",
                    deed,
                    code + " is there already, and what was judged by it stands.",
                    "Choose another code.");
        }
        LimitSet set = rows.saveAndFlush(new LimitSetRow(
                        new LimitSet(
                                code,
                                TypedText.line("what", "What it is for", deed, content.what(), 200),
                                TypedText.line("standard", "The standard", deed, content.standard(), 60),
                                TypedText.line("edition", "The edition", deed, content.edition(), 60),
                                TypedText.line("source", "The source", deed, content.source(), 400),
                                LimitLines.parted(deed, content.lines()),
                                act.by(),
                                act.at()),
                        act))
                .set();
        log.event(Chains.SHOP, "weld-limits-entered", Map.of("code", code));
        return set;
    }
}
