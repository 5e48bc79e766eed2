package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** What the sheets of components say, as revisions: written by whoever has the sheet in hand, put in force by QA or owner. */
@Service
public class Components {

    private final ComponentRepository sheets;
    private final FastenerRepository fasteners;
    private final Crew crew;
    private final ActLog log;

    Components(ComponentRepository sheets, FastenerRepository fasteners, Crew crew, ActLog log) {
        this.sheets = sheets;
        this.fasteners = fasteners;
        this.crew = crew;
        this.log = log;
    }

    /** Drafts and those in force, by their codes. */
    @Transactional(readOnly = true)
    public List<Component> current() {
        return whole(sheets.current());
    }

    /** Those a frame may be given. */
    @Transactional(readOnly = true)
    public List<Component> inForce() {
        return whole(sheets.current().stream().filter(ComponentRow::inForce).toList());
    }

    /** Every revision of one, newest first. */
    @Transactional(readOnly = true)
    public List<Component> of(String code) {
        List<Component> all = whole(sheets.findByCodeOrderByIdDesc(label(code)));
        if (all.isEmpty()) {
            throw Refusal.missing(
                    "The component was not found.",
                    "No component has the number " + label(code) + ".",
                    "Choose one from the list of components.");
        }
        return all;
    }

    /** Revisions by their ids. */
    Map<Long, Component> byIds(Collection<Long> ids) {
        return ids.isEmpty()
                ? Map.of()
                : whole(sheets.findByIdIn(ids)).stream().collect(Collectors.toMap(Component::id, one -> one));
    }

    /** Writes a component's sheet, or the next revision of one. An earlier draft gives way to it. */
    @Transactional
    public Component draft(Act act, String typed, NewComponent content) {
        String deed = "The sheet was not written.";
        String code = TypedText.line("code", "The number", deed, label(typed), 20);
        if (!log.opens(act, "draft-component", "component:" + code, Chains.SHOP)) {
            return of(code).get(0);
        }
        if (!crew.byId(act.by()).maySign()) {
            throw Refusal.person(
                    deed,
                    crew.byId(act.by()).name() + " may not write what others go by.",
                    "Somebody who signs for their work writes it.");
        }
        if (!code.matches("[A-Z0-9][A-Z0-9-]*")) {
            throw Refusal.input(
                    "code", deed, code + " has signs beside letters, digits and dashes.", "Write it otherwise.");
        }
        NewComponent read = content.checked(deed);
        List<ComponentRow> before = sheets.findByCodeOrderByIdDesc(code);
        before.stream().filter(ComponentRow::draft).forEach(row -> {
            row.supersede(act);
            sheets.saveAndFlush(row);
        });
        ComponentRow row = sheets.saveAndFlush(new ComponentRow(code, letter(before.size()), read, act));
        for (int i = 0; i < read.fasteners().size(); i++) {
            fasteners.saveAndFlush(
                    new FastenerRow(row.id(), i + 1, read.fasteners().get(i)));
        }
        Component drafted = whole(List.of(row)).get(0);
        log.event(
                Chains.SHOP,
                "component-drafted",
                Map.of("component", drafted.id(), "code", code, "letter", drafted.letter()));
        return drafted;
    }

    /** Puts the draft in force. The caller has asked for the own secret. Frames keep the revision they were given. */
    @Transactional
    public Component putInForce(Act act, String typed, String letter) {
        String deed = "The sheet was not put in force.";
        String code = label(typed);
        if (!log.opens(act, "put-component-in-force", "component:" + code, Chains.SHOP)) {
            return of(code).get(0);
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        List<ComponentRow> all = sheets.findByCodeOrderByIdDesc(code);
        ComponentRow draft = all.stream()
                .filter(ComponentRow::draft)
                .filter(row -> row.component(List.of()).letter().equals(letter))
                .findFirst()
                .orElseThrow(() -> Refusal.stale(
                        deed,
                        "Component " + code + " has no draft " + letter + ".",
                        "Look at the component as it is now."));
        all.stream().filter(ComponentRow::inForce).forEach(row -> {
            row.supersede(act);
            sheets.saveAndFlush(row);
        });
        draft.putInForce(act);
        Component set = whole(List.of(sheets.saveAndFlush(draft))).get(0);
        log.event(
                Chains.SHOP,
                "component-put-in-force",
                Map.of("component", set.id(), "code", code, "letter", set.letter()));
        return set;
    }

    private List<Component> whole(List<ComponentRow> rows) {
        Map<Long, List<Fastener>> of = new HashMap<>();
        if (!rows.isEmpty()) {
            fasteners
                    .findBySheetIdInOrderBySheetIdAscSequenceAsc(
                            rows.stream().map(ComponentRow::id).toList())
                    .forEach(row -> of.computeIfAbsent(row.sheetId(), id -> new java.util.ArrayList<>())
                            .add(row.fastener()));
        }
        return rows.stream()
                .map(row -> row.component(of.getOrDefault(row.id(), List.of())))
                .toList();
    }

    static String label(String code) {
        return code.strip().toUpperCase(Locale.ROOT);
    }

    /** A to Z, then AA, AB and on. */
    static String letter(int before) {
        String last = String.valueOf((char) ('A' + before % 26));
        return before < 26 ? last : letter(before / 26 - 1) + last;
    }
}
