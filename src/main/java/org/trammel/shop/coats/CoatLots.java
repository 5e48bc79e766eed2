package org.trammel.shop.coats;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.Destination;
import org.trammel.shop.materials.Lot;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotState;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** The lots that meet a surface: each is issued to the frame by its scan, or refused. */
@Component
class CoatLots {

    private static final String STEEL = "STEEL";

    private final Lots lots;
    private final BlastRepository blasts;
    private final Travellers travellers;
    private final Settings settings;

    CoatLots(Lots lots, BlastRepository blasts, Travellers travellers, Settings settings) {
        this.lots = lots;
        this.blasts = blasts;
        this.travellers = travellers;
        this.settings = settings;
    }

    /** Media that touched steel carry iron, which rusts in aluminium and titanium. */
    Lot media(Act act, String scanned, CoatTurn.At at) {
        Lot lot = issued(act, scanned, at, LotKind.MEDIA, "blasted with");
        if (!at.head().metal().equals(STEEL) && touchedSteel(lot.code())) {
            throw Refusal.input(
                    "lot",
                    lot.code() + " was not taken.",
                    "It was used on steel before; what it carries of it rusts on this metal.",
                    "Take media kept for this metal, and block the lot if nobody knows where it stood.");
        }
        return lot;
    }

    private boolean touchedSteel(String lot) {
        return blasts.existsByLotAndMetal(lot, STEEL)
                || lots.wentInto(lot).stream()
                        .map(use -> use.serial())
                        .distinct()
                        .flatMap(serial -> travellers.heads(serial).stream())
                        .map(FrameSheet.Head::metal)
                        .anyMatch(STEEL::equals);
    }

    /** Powder or paint; what is past its last day is issued to nothing. */
    Lot powder(Act act, String scanned, CoatTurn.At at, String deed) {
        LotKind kind = lots.byCode(scanned).map(Lot::kind).orElse(LotKind.POWDER);
        if (!Set.of(LotKind.POWDER, LotKind.PAINT).contains(kind)) {
            throw Refusal.input(
                    "lot", deed, scanned + " is " + kind.word() + ".", "Scan the label of the powder or paint.");
        }
        return issued(act, scanned, at, kind, "coat");
    }

    /** A lot that a step of the operation took is the same piece, and is not issued twice. */
    private Lot issued(Act act, String scanned, CoatTurn.At at, LotKind kind, String position) {
        @Nullable Lot known = lots.byCode(scanned).orElse(null);
        boolean taken = known != null
                && known.kind() == kind
                && lots.madeOf(at.head().serial()).stream()
                        .anyMatch(use -> use.lot().equals(known.code())
                                && !use.scrapped()
                                && use.part().equals(at.head().part())
                                && use.operation().equals(at.line().code()));
        if (!taken) {
            lots.issue(
                    act,
                    scanned,
                    new Destination(
                            at.head().serial(),
                            at.head().part(),
                            at.head().metal(),
                            null,
                            at.line().code(),
                            position),
                    kind,
                    null,
                    null);
        }
        Lot lot = lots.byCode(scanned).orElseThrow();
        if (lot.state() != LotState.RELEASED || lot.expired(settings.today())) {
            throw Refusal.input(
                    "lot",
                    lot.code() + " was not taken.",
                    lot.state() == LotState.RELEASED
                            ? "It was to be used until " + lot.expiresOn() + "."
                            : "It is " + lot.state().word() + ".",
                    "Take another lot.");
        }
        return lot;
    }
}
