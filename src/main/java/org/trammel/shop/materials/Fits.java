package org.trammel.shop.materials;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** The table of what may meet which metal, kept by the QA lead. */
@Service
public class Fits {

    private static final Set<String> METALS = Set.of("AL6061", "AL7005", "STEEL", "TI");
    private static final Set<String> PROCESSES = Set.of("TIG", "BRAZE");

    private final FitRepository rows;
    private final MaterialClassRepository classes;
    private final AfterWelds afterWelds;
    private final Crew crew;
    private final ActLog log;

    Fits(FitRepository rows, MaterialClassRepository classes, AfterWelds afterWelds, Crew crew, ActLog log) {
        this.rows = rows;
        this.classes = classes;
        this.afterWelds = afterWelds;
        this.crew = crew;
        this.log = log;
    }

    /** All lines in force. */
    @Transactional(readOnly = true)
    public List<Fit> inForce() {
        return rows.inForce().stream().map(FitRow::fit).toList();
    }

    @Transactional(readOnly = true)
    public List<MaterialClass> classes() {
        return classes.findAllByOrderByKindAscNameAsc().stream()
                .map(MaterialClassRow::materialClass)
                .toList();
    }

    /** Adds a line. What belongs to one family of metals can be allowed for no other. */
    @Transactional
    public Fit allow(
            Act act,
            String materialClass,
            String metal,
            @Nullable String process,
            Fit.AfterWeld afterWeld,
            String source) {
        String not = "The line was not added.";
        if (!log.opens(act, "allow-fit", "material:" + materialClass + " " + metal, Chains.SHOP)) {
            return rows.inForceOf(materialClass).stream()
                    .map(FitRow::fit)
                    .reduce((first, last) -> last)
                    .orElseThrow();
        }
        crew.require(act.by(), not, Role.QA_LEAD);
        MaterialClass known = classes.findById(materialClass)
                .map(MaterialClassRow::materialClass)
                .orElseThrow(() -> Refusal.input(
                        "materialClass", not, "There is no class " + materialClass + ".", "Choose one from the list."));
        if (!METALS.contains(metal)) {
            throw Refusal.input("metal", not, "There is no metal " + metal + ".", "Choose one from the list.");
        }
        if (process != null && !PROCESSES.contains(process)) {
            throw Refusal.input("process", not, "There is no process " + process + ".", "Choose TIG or BRAZE.");
        }
        MetalFamily family = known.family();
        if (family != null && family != MetalFamily.of(metal)) {
            throw Refusal.input(
                    "metal",
                    not,
                    known.name() + " is for " + family.word() + " and makes scrap of "
                            + MetalFamily.of(metal).word() + ".",
                    "Choose a material of the metal's own family.");
        }
        String from = TypedText.words("source", "Source", not, source);
        FitRow row = rows.save(new FitRow(materialClass, metal, process, afterWeld, from, act));
        log.event(Chains.SHOP, "fit-allowed", Map.of("fit", row.id(), "class", materialClass, "metal", metal));
        return row.fit();
    }

    /** Takes a line out of force. */
    @Transactional
    public void end(Act act, long fitId, String reason) {
        if (!log.opens(act, "end-fit", "fit:" + fitId, Chains.SHOP)) {
            return;
        }
        String not = "The line was not ended.";
        crew.require(act.by(), not, Role.QA_LEAD);
        FitRow row = rows.findById(fitId)
                .filter(found -> !found.ended())
                .orElseThrow(() ->
                        Refusal.missing(not, "There is no line " + fitId + " in force.", "Load the table again."));
        row.end(TypedText.words("reason", "Reason", not, reason), act);
        log.event(Chains.SHOP, "fit-ended", Map.of("fit", fitId));
    }

    /** Refuses a lot that may not meet the metal of where it goes. */
    void refuseUnlessFits(Lot lot, Destination to) {
        if (to.metal().equals(Destination.NO_FRAME)) {
            return;
        }
        if (!METALS.contains(to.metal())) {
            throw refused(lot, "The frame's metal is not known.", "Let the QA lead look at the frame's design.");
        }
        MetalFamily family = MetalFamily.of(to.metal());
        if (lot.kind().metallic() && !to.metal().equals(lot.metal())) {
            throw refused(
                    lot,
                    "It is " + named(lot.metal()) + "; the frame is " + named(to.metal()) + ".",
                    "Take a lot of " + named(to.metal()) + ", and put this one back where it belongs.");
        }
        MetalFamily reserved = lot.reservedFor();
        if (reserved != null && reserved != family) {
            throw refused(
                    lot,
                    "It is kept for " + reserved.word() + " only; the frame is " + family.word() + ".",
                    "Take a lot kept for " + family.word() + ".");
        }
        String code = lot.materialClass();
        if (code != null) {
            refuseUnlessAllowed(lot, code, family, to);
        }
    }

    private void refuseUnlessAllowed(Lot lot, String code, MetalFamily family, Destination to) {
        MaterialClass known =
                classes.findById(code).map(MaterialClassRow::materialClass).orElseThrow();
        if (known.family() != null && known.family() != family) {
            throw refused(
                    lot,
                    known.name() + " is for " + known.family().word() + "; the frame is " + family.word() + ".",
                    "Take a lot for " + family.word() + ". Never try it.");
        }
        AfterWelds.Found found = known.kind() == LotKind.FILLER || known.kind() == LotKind.FLUX
                ? afterWelds.of(to)
                : new AfterWelds.Found(Fit.AfterWeld.usual(to.metal()), "usual for the metal");
        Fit.AfterWeld after = found.after();
        if (rows.inForceOf(code).stream().map(FitRow::fit).noneMatch(fit -> allows(fit, to, after))) {
            String others = rows.inForce().stream()
                    .map(FitRow::fit)
                    .filter(fit -> allows(fit, to, after))
                    .map(Fit::materialClass)
                    .filter(other -> classes.findById(other)
                            .map(row -> row.materialClass().kind() == lot.kind())
                            .orElse(false))
                    .distinct()
                    .collect(Collectors.joining(" or "));
            throw refused(
                    lot,
                    known.name() + " is not in the table for " + named(to.metal())
                            + (to.process() == null ? "" : ", " + to.process()) + " with " + after.word()
                            + " after the weld (" + found.why() + ").",
                    others.isEmpty() ? "Call the QA lead." : "Take a lot of " + others + ", or call the QA lead.");
        }
    }

    private static boolean allows(Fit fit, Destination to, Fit.AfterWeld after) {
        return fit.metal().equals(to.metal())
                && (fit.process() == null
                        || to.process() == null
                        || fit.process().equals(to.process()))
                && (fit.afterWeld() == Fit.AfterWeld.ANY || fit.afterWeld() == after);
    }

    /** A metal in the shop's words. */
    static String named(@Nullable String metal) {
        return switch (metal == null ? "" : metal) {
            case "AL6061" -> "aluminium 6061";
            case "AL7005" -> "aluminium 7005";
            case "STEEL" -> "steel";
            case "TI" -> "titanium";
            default -> "of no known metal";
        };
    }

    private static Refusal refused(Lot lot, String why, String instead) {
        return Refusal.input("lot", lot.code() + " was not issued.", why, instead);
    }
}
