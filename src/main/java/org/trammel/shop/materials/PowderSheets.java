package org.trammel.shop.materials;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** What the makers' sheets of powders and paints say, lot by lot; by what stands, colours are compared and runs are judged. */
@Service
public class PowderSheets {

    private final PowderSheetRepository sheets;
    private final LotRepository lots;
    private final LotUseRepository uses;
    private final Crew crew;
    private final ActLog log;
    private final ApplicationEventPublisher events;

    PowderSheets(
            PowderSheetRepository sheets,
            LotRepository lots,
            LotUseRepository uses,
            Crew crew,
            ActLog log,
            ApplicationEventPublisher events) {
        this.sheets = sheets;
        this.lots = lots;
        this.uses = uses;
        this.crew = crew;
        this.log = log;
        this.events = events;
    }

    /** The one that stands; empty where none was entered. */
    @Transactional(readOnly = true)
    public Optional<PowderSheet> of(String lot) {
        return sheets.newest(label(lot)).map(PowderSheetRow::sheet);
    }

    /** Every one that was entered, oldest first. */
    @Transactional(readOnly = true)
    public List<PowderSheet> history(String lot) {
        return sheets.all(label(lot)).stream().map(PowderSheetRow::sheet).toList();
    }

    /** Enters a sheet. Once the QA lead has released the lot, nobody else changes what runs are judged by. */
    @Transactional
    public PowderSheet enter(Act act, String typed, NewPowderSheet entry) {
        String code = label(typed);
        String deed = "The sheet of " + code + " was not entered.";
        if (!log.opens(act, "enter-powder-sheet", "lot:" + code, chains(code))) {
            return of(code).orElseThrow();
        }
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here enters it.");
        }
        LotRow row = lots.findByCode(code)
                .orElseThrow(() -> Refusal.missing(
                        deed, "No lot carries the code " + code + ".", "Choose it from the list of lots."));
        Lot lot = row.lot();
        if (lot.kind() != LotKind.POWDER && lot.kind() != LotKind.PAINT) {
            throw Refusal.state(
                    deed, code + " is " + lot.kind().word() + ".", "Enter the sheet of a lot of powder or paint.");
        }
        if (lot.state() != LotState.QUARANTINED) {
            crew.require(act.by(), deed, Role.QA_LEAD);
        }
        List<PowderSheet.Pair> pairs = entry.checkedPairs(deed);
        entry.requireWindow(deed, pairs);
        PowderSheetRow kept = sheets.saveAndFlush(new PowderSheetRow(
                lot.id(),
                new PowderSheet(
                        entry.checkedColour(deed),
                        pairs,
                        entry.energy_kJPerMol(),
                        entry.least(),
                        entry.most(),
                        entry.checkedSource(deed),
                        act.by(),
                        act.at()),
                act));
        log.event(Chains.SHOP, "powder-sheet-entered", Map.of("lot", lot.id(), "sheet", kept.id()));
        events.publishEvent(new PowderTold(act, code));
        return kept.sheet();
    }

    /** Another sheet may hold the frames that the lot went into. */
    private String[] chains(String code) {
        return Stream.concat(
                        Stream.of(Chains.SHOP),
                        lots.findByCode(code).stream()
                                .flatMap(row -> uses.wentInto(row.id()).stream())
                                .map(place -> Lots.chain(place.serial())))
                .distinct()
                .toArray(String[]::new);
    }

    private static String label(String code) {
        return code.strip().toUpperCase(Locale.ROOT);
    }
}
