package org.trammel.shop.handwork;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/** The register of brushes, files, cloths and cleaners. The QA lead and the owner keep it. */
@Service
public class Tools {

    private static final int LONGEST_CODE = 20;

    private final ToolRepository tools;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    Tools(ToolRepository tools, Crew crew, Settings settings, ActLog log) {
        this.tools = tools;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    @Transactional(readOnly = true)
    public List<Tool> all() {
        return tools.findAllByOrderByFamilyAscKindAscCodeAsc().stream()
                .map(ToolRow::tool)
                .toList();
    }

    /** Registers a tool for one family of metals, for good. */
    @Transactional
    public Tool register(
            Act act,
            @Nullable String code,
            ToolKind kind,
            @Nullable String what,
            MetalFamily family,
            boolean chlorinated) {
        String deed = "The tool was not registered.";
        if (!log.opens(act, "register-tool", "tools", Chains.SHOP)) {
            return one(code, deed).tool();
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        String label = label("code", code, deed);
        if (chlorinated && kind != ToolKind.CLEANER) {
            throw Refusal.input(
                    "chlorinated",
                    deed,
                    "Only a cleaner holds a solvent; this is a " + kind.word() + ".",
                    "Register the cleaner by its own label.");
        }
        if (tools.findByCode(label).isPresent()) {
            throw Refusal.input(
                    "code",
                    deed,
                    "There is " + label + " already.",
                    "Give it a label of its own; what touched one metal is not handed to another.");
        }
        Tool tool =
                new Tool(label, kind, TypedText.line("what", "What it is", deed, what, 100), family, chlorinated, null);
        tools.saveAndFlush(new ToolRow(tool, act));
        log.event(
                Chains.SHOP,
                "tool-registered",
                Map.of("tool", label, "kind", kind.name(), "family", family.name(), "chlorinated", chlorinated));
        return tool;
    }

    /** Takes a tool out of use. */
    @Transactional
    public Tool retire(Act act, @Nullable String code) {
        String deed = "The tool was not retired.";
        if (!log.opens(act, "retire-tool", "tools", Chains.SHOP)) {
            return one(code, deed).tool();
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        ToolRow row = one(code, deed);
        if (row.tool().retiredOn() != null) {
            throw Refusal.stale(deed, row.tool().code() + " is retired already.", "Load the page again.");
        }
        row.retire(settings.dayOf(act.at()));
        tools.saveAndFlush(row);
        log.event(Chains.SHOP, "tool-retired", Map.of("tool", row.tool().code()));
        return row.tool();
    }

    boolean inUse(MetalFamily family, Collection<ToolKind> kinds) {
        return tools.existsByFamilyAndKindInAndRetiredOnIsNull(family, kinds);
    }

    /** Whether the shop ever kept one: the last that is thrown away takes no proof with it. */
    boolean everKept(MetalFamily family, Collection<ToolKind> kinds) {
        return tools.existsByFamilyAndKindIn(family, kinds);
    }

    /** The tool, if it may touch that metal. */
    Tool fit(@Nullable String code, String metal, String deed) {
        MetalFamily family = MetalFamily.of(metal);
        Tool tool = one(code, deed).tool();
        if (tool.chlorinated()) {
            throw Refusal.input(
                    "tool",
                    deed,
                    tool.code() + ", " + tool.what()
                            + ", holds chlorinated solvent. At an arc its vapour turns into poison gas (phosgene).",
                    "Take it out of the room, wipe again with a cleaner without it, and let the metal dry. Local rules"
                            + " apply.");
        }
        if (tool.family() != family) {
            throw Refusal.input(
                    "tool",
                    deed,
                    tool.code() + ", " + tool.what() + ", is kept for "
                            + tool.family().word() + "; this frame is " + family.word()
                            + ". What one metal leaves in it spoils the weld of the other.",
                    "Take one that is kept for " + family.word()
                            + ". If it has touched the metal, clean again from the start.");
        }
        if (tool.retiredOn() != null) {
            throw Refusal.input(
                    "tool", deed, tool.code() + " is retired.", "Take one that is in use, and throw this one away.");
        }
        return tool;
    }

    private ToolRow one(@Nullable String code, String deed) {
        String label = label("tool", code, deed);
        return tools.findByCode(label)
                .orElseThrow(() -> Refusal.input(
                        "tool",
                        deed,
                        "There is no tool " + label + " in the register.",
                        "Read its label again; the QA lead registers what is new."));
    }

    private static String label(String field, @Nullable String code, String deed) {
        return TypedText.line(field, "The label", deed, code, LONGEST_CODE).toUpperCase(Locale.ROOT);
    }
}
