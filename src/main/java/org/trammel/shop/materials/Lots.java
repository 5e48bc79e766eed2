package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/** Finds lots, issues pieces of them to frames, and tells both directions: went into, made of. */
@Service
public class Lots {

    private static final Pattern REMNANT = Pattern.compile("(.+)/R([1-9][0-9]{0,5})");
    private static final int MOST_ON_A_PAGE = 200;

    private final LotRepository rows;
    private final LotUseRepository uses;
    private final LotRemnantRepository remnants;
    private final Fits fits;
    private final FramePlaces frames;
    private final Crew crew;
    private final Settings settings;
    private final TubeAnew anew;
    private final ActLog log;
    private final ApplicationEventPublisher events;

    Lots(
            LotRepository rows,
            LotUseRepository uses,
            LotRemnantRepository remnants,
            Fits fits,
            FramePlaces frames,
            Crew crew,
            Settings settings,
            TubeAnew anew,
            ActLog log,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.uses = uses;
        this.remnants = remnants;
        this.fits = fits;
        this.frames = frames;
        this.crew = crew;
        this.settings = settings;
        this.anew = anew;
        this.log = log;
        this.events = events;
    }

    /** A lot by its code, however it was typed; the code of a remnant finds its lot. */
    @Transactional(readOnly = true)
    public Optional<Lot> byCode(String code) {
        return rows.findByCode(scanned(code).lot()).map(LotRow::lot);
    }

    /**
     * Lots, newest first.
     *
     * @param before id of the last lot of the page before; null for the first page
     * @param kind null for all
     * @param state null for all
     */
    @Transactional(readOnly = true)
    public List<Lot> page(@Nullable Long before, @Nullable LotKind kind, @Nullable LotState state, int limit) {
        return rows.page(before, kind, state, Limit.of(Math.min(Math.max(limit, 1), MOST_ON_A_PAGE))).stream()
                .map(LotRow::lot)
                .toList();
    }

    /** Released lots whose last day falls on or before a day, what expires first before all. */
    @Transactional(readOnly = true)
    public List<Lot> expiring(LocalDate until) {
        return rows.expiring(until, Limit.of(MOST_ON_A_PAGE)).stream()
                .map(LotRow::lot)
                .toList();
    }

    /** Every place a lot went into, children and scrapped pieces too. */
    @Transactional(readOnly = true)
    public List<WentInto> wentInto(String code) {
        return rows.findByCode(scanned(code).lot())
                .map(LotRow::id)
                .map(uses::wentInto)
                .orElse(List.of());
    }

    /**
     * Everything a frame and its parts are or were made of.
     *
     * @param serial the frame's serial in any form; a part finds its whole frame
     */
    @Transactional(readOnly = true)
    public List<MadeOf> madeOf(String serial) {
        return uses.madeOf(
                SerialNumber.read(serial) instanceof SerialNumber.Result.Whole whole
                        ? whole.serial().frame().stored()
                        : serial);
    }

    @Transactional(readOnly = true)
    public List<Remnant> remnants(String code) {
        return rows.findByCode(scanned(code).lot()).stream()
                .flatMap(row -> remnants.findByLotIdOrderByNumber(row.id()).stream()
                        .map(remnant -> remnant.remnant(row.code())))
                .toList();
    }

    /**
     * Issues a piece of a lot to the frame of a serial, in whatever form it was typed.
     *
     * @param operation operation it is used at; null for the one at hand
     * @return id of the use
     */
    @Transactional
    public long issue(
            Act act,
            String scannedCode,
            String serial,
            String position,
            @Nullable String operation,
            @Nullable BigDecimal quantity,
            @Nullable String unit) {
        return issue(act, scannedCode, frames.find(serial, position, operation), null, quantity, unit, true);
    }

    /**
     * Issues a piece of a lot, or of a remnant, to a place in a frame.
     *
     * @param scannedCode code of the lot or of the remnant
     * @param asked kind the work asks for; null if it does not say
     * @param quantity how much; null where it is not measured, then a remnant goes as a whole
     * @param unit unit of the quantity; null for the lot's own
     * @return id of the use
     * @throws Refusal if the lot may not go there
     */
    @Transactional
    public long issue(
            Act act,
            String scannedCode,
            Destination to,
            @Nullable LotKind asked,
            @Nullable BigDecimal quantity,
            @Nullable String unit) {
        return issue(act, scannedCode, to, asked, quantity, unit, false);
    }

    /** @param fromItsSheet it may be for a place of a joined part, told by its name */
    private long issue(
            Act act,
            String scannedCode,
            Destination to,
            @Nullable LotKind asked,
            @Nullable BigDecimal quantity,
            @Nullable String unit,
            boolean fromItsSheet) {
        Scanned scanned = scanned(scannedCode);
        String chain = chain(to.serial());
        if (!log.opens(act, "issue-lot", "lot:" + scanned.lot() + " to:" + to.serial(), chain)) {
            return uses.madeOf(to.serial()).stream()
                    .filter(use -> use.lot().equals(scanned.lot()))
                    .mapToLong(MadeOf::useId)
                    .max()
                    .orElseThrow();
        }
        String not = (scanned.lot().isEmpty() ? "The lot" : scanned.lot()) + " was not issued.";
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(not, "Only people at work in the shop issue lots.", "Let somebody of the crew do it.");
        }
        Destination place = place(to, not);
        LotRow row = rows.lock(scanned.lot()).orElseThrow(() -> unknown(scanned.lot()));
        refuseUnlessIssuable(row, asked, place);
        refuseUnless(quantity, unit, row, not);
        LotUseRow use = scanned.remnant() == null
                ? fromLot(act, row, place, quantity)
                : fromRemnant(act, row, scanned.remnant(), place, quantity);
        log.event(
                chain,
                "lot-issued",
                Map.of(
                        "lot", row.id(),
                        "code", row.code(),
                        "use", use.id(),
                        "part", place.part(),
                        "operation", place.operation(),
                        "quantity", use.quantity() == null ? "" : LotRow.bare(use.quantity()) + " " + use.unit()));
        events.publishEvent(new MadeOfChanged(act, use.serial()));
        if (fromItsSheet) {
            anew.takesPlace(act, row, use.id(), place);
        }
        anew.issued(act, row, use.serial(), place.part());
        return use.id();
    }

    /** The lot that may go to a place today; refused if it may not. */
    Lot issuable(String scannedCode, LotKind asked, Destination to) {
        String code = scanned(scannedCode).lot();
        LotRow row = rows.lock(code).orElseThrow(() -> unknown(code));
        refuseUnlessIssuable(row, asked, to);
        return row.lot();
    }

    /** Code of the lot that a label means, that of a remnant too. */
    static String meant(String label) {
        return scanned(label).lot();
    }

    private void refuseUnlessIssuable(LotRow row, @Nullable LotKind asked, Destination to) {
        row.refuseUnlessIssuable(settings.today());
        if (asked != null && !asked.takes(row.kind())) {
            throw Refusal.input(
                    "lot",
                    row.code() + " was not issued.",
                    "It is " + row.kind().word() + "; the step asks for " + asked.word() + ".",
                    "Scan the label of the " + asked.word() + ".");
        }
        fits.refuseUnlessFits(row.lot(), to);
    }

    private LotUseRow fromLot(Act act, LotRow row, Destination to, @Nullable BigDecimal quantity) {
        BigDecimal amount = quantity == null && row.counted() && row.unit().equals("pc") ? BigDecimal.ONE : quantity;
        if (amount != null) {
            row.take(amount, act.at());
        }
        return uses.save(new LotUseRow(row.id(), null, to, amount, row.unit(), act));
    }

    private LotUseRow fromRemnant(Act act, LotRow row, int number, Destination to, @Nullable BigDecimal quantity) {
        LotRemnantRow remnant = remnants.findByLotIdAndNumber(row.id(), number)
                .orElseThrow(() -> Refusal.input(
                        "lot",
                        row.code() + "/R" + number + " was not issued.",
                        row.code() + " has no remnant of this number.",
                        "Scan the tag on the remnant."));
        BigDecimal amount = quantity == null ? remnant.quantityLeft() : quantity;
        if (amount.signum() == 0) {
            throw Refusal.state(
                    remnant.code(row.code()) + " was not issued.", "Nothing is left of it.", "Take another remnant.");
        }
        remnant.take(row.code(), amount);
        return uses.save(new LotUseRow(row.id(), remnant.id(), to, amount, remnant.unit(), act));
    }

    private static void refuseUnless(@Nullable BigDecimal quantity, @Nullable String unit, LotRow row, String not) {
        if (quantity == null) {
            return;
        }
        refuseUnlessPiece(quantity, not);
        if (unit != null && !unit.isBlank() && !unit.strip().equals(row.unit())) {
            throw Refusal.input(
                    "quantity",
                    not,
                    "It is counted in " + (row.unit().isEmpty() ? "nothing" : row.unit()) + ", the piece in " + unit
                            + ".",
                    "Enter the piece in the lot's unit.");
        }
    }

    private static void refuseUnlessPiece(BigDecimal quantity, String not) {
        if (quantity.signum() <= 0) {
            throw Refusal.input(
                    "quantity",
                    not,
                    "A piece of " + LotRow.bare(quantity) + " is no piece.",
                    "Enter the length or number that is taken.");
        }
        if (quantity.stripTrailingZeros().scale() > 3 || quantity.precision() - quantity.scale() > 11) {
            throw Refusal.input("quantity", not, "The figure is out of any range.", "Look at its unit again.");
        }
    }

    private static Destination place(Destination to, String not) {
        return new Destination(
                to.serial(),
                to.part(),
                to.metal(),
                to.process(),
                to.operation(),
                cut(TypedText.words("position", "Position", not, to.position())));
    }

    private static String cut(String position) {
        return position.length() <= 200 ? position : position.substring(0, 199) + "…";
    }

    /** Marks a piece as thrown away. It stays in what the frame is made of, so that a bad lot is found there too. */
    @Transactional
    public void scrap(Act act, long useId, String reason) {
        if (!log.opens(act, "scrap-piece", "use:" + useId, chainOf(useId))) {
            return;
        }
        LotUseRow known = use(useId);
        String not = "The piece was not scrapped.";
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(not, "Only people at work in the shop scrap.", "Let somebody of the crew do it.");
        }
        known.scrap(TypedText.words("reason", "Reason", not, reason), act);
        log.event(chain(known.serial()), "piece-scrapped", Map.of("use", useId, "lot", known.lotId()));
        rows.findById(known.lotId()).ifPresent(lot -> anew.scrapped(act, lot, known.serial(), useId));
        events.publishEvent(new MadeOfChanged(act, known.serial()));
    }

    /**
     * Puts back what is left of a piece.
     *
     * @param scannedLot what was scanned with it; it must be the lot the piece was taken from
     */
    @Transactional
    public Remnant returnRemnant(Act act, long useId, String scannedLot, BigDecimal quantity) {
        String lot = scanned(scannedLot).lot();
        if (!log.opens(act, "return-remnant", "use:" + useId, chainOf(useId))) {
            return remnants(lot).stream().reduce((first, last) -> last).orElseThrow();
        }
        String not = "The remnant was not put back.";
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(
                    not, "Only people at work in the shop handle lots.", "Let somebody of the crew do it.");
        }
        LotUseRow use = use(useId);
        LotRow row = rows.lock(lot).orElseThrow(() -> unknown(lot));
        if (row.id() != use.lotId()) {
            throw Refusal.input(
                    "lot",
                    not,
                    "The piece was not taken from " + lot + "; a remnant has one lot, the one it came from.",
                    "Scan the label of the lot that was issued to the frame.");
        }
        BigDecimal taken = use.quantity();
        BigDecimal most = taken == null ? null : taken.subtract(remnants.returnedOf(useId));
        refuseUnlessPiece(quantity, not);
        if (most != null && quantity.compareTo(most) >= 0) {
            throw Refusal.input(
                    "quantity",
                    not,
                    "Of the piece " + LotRow.bare(most) + " " + use.unit() + " were taken and not put back yet; "
                            + LotRow.bare(quantity) + " cannot be left of it.",
                    "Measure what is left.");
        }
        LotRemnantRow remnant =
                remnants.save(new LotRemnantRow(use, remnants.lastNumber(row.id()) + 1, quantity, use.unit(), act));
        log.event(
                chain(use.serial()),
                "remnant-returned",
                Map.of("use", useId, "lot", row.id(), "remnant", remnant.number(), "quantity", LotRow.bare(quantity)));
        return remnant.remnant(row.code());
    }

    private LotUseRow use(long useId) {
        return uses.findById(useId).orElseThrow(() -> noPiece(useId));
    }

    private String chainOf(long useId) {
        return chain(uses.serialOf(useId).orElseThrow(() -> noPiece(useId)));
    }

    private static Refusal noPiece(long useId) {
        return Refusal.missing(
                "The piece was not found.", "Nothing was issued under " + useId + ".", "Choose it from the frame.");
    }

    static Refusal unknown(String code) {
        return Refusal.input(
                "lot",
                "The lot was not found.",
                code.isEmpty() ? "No code was scanned." : "No lot carries the code " + code + ".",
                "Scan the label again, or have the delivery received first.");
    }

    /** The frame's chain; what belongs to no frame is written to the shop's. */
    static String chain(String serial) {
        return Chains.bearing(serial);
    }

    private static Scanned scanned(String code) {
        String label = LotRegister.label(code);
        Matcher remnant = REMNANT.matcher(label);
        return remnant.matches()
                ? new Scanned(remnant.group(1), Integer.valueOf(remnant.group(2)))
                : new Scanned(label, null);
    }

    private record Scanned(String lot, @Nullable Integer remnant) {}
}
