package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Files;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.HasCome;

/** The verbs on a lot itself: received, certified, released by the QA lead, set aside by anybody, blocked, used up. */
@Service
public class LotRegister {

    private static final Pattern LABEL = Pattern.compile("[A-Z0-9][A-Z0-9.-]{1,38}");
    private static final BigDecimal MOST = new BigDecimal("99999999999");

    private final LotRepository rows;
    private final LotUseRepository uses;
    private final MaterialClassRepository classes;
    private final TraceHolds traceHolds;
    private final TubeDoubts doubts;
    private final HasCome hasCome;
    private final Crew crew;
    private final Settings settings;
    private final Files files;
    private final Words words;
    private final ActLog log;
    private final ApplicationEventPublisher events;

    LotRegister(
            LotRepository rows,
            LotUseRepository uses,
            MaterialClassRepository classes,
            TraceHolds traceHolds,
            TubeDoubts doubts,
            HasCome hasCome,
            Crew crew,
            Settings settings,
            Files files,
            Words words,
            ActLog log,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.uses = uses;
        this.classes = classes;
        this.traceHolds = traceHolds;
        this.doubts = doubts;
        this.hasCome = hasCome;
        this.crew = crew;
        this.settings = settings;
        this.files = files;
        this.words = words;
        this.log = log;
        this.events = events;
    }

    /** Receives a lot. It is quarantined until the QA lead has seen its certificate. */
    @Transactional
    public Lot receive(Act act, NewLot entry) {
        String code = label(entry.code());
        String not = "The lot was not received.";
        if (!log.opens(act, "receive-lot", "lot:" + code, Chains.SHOP)) {
            return required(code).lot();
        }
        requireAtWork(act, not);
        if (!LABEL.matcher(code).matches()) {
            throw Refusal.input(
                    "code",
                    not,
                    "Its code is letters, digits, dashes and points, 2 to 39 of them.",
                    "Enter what stands on its label, such as L-0042.");
        }
        NewLot read = read(entry, code, not);
        if (rows.existsByCode(code)) {
            throw Refusal.input(
                    "code",
                    not,
                    "The code " + code + " was given already; codes are never given twice.",
                    "Look whether it is the same delivery, or give it another code.");
        }
        LotRow row = rows.saveAndFlush(new LotRow(read, act));
        log.event(Chains.SHOP, "lot-received", facts(row));
        return row.lot();
    }

    /**
     * Corrects what was entered of a lot that is still quarantined. Frames in which a tube of it stands that is another than
     * its place asks for are held in the same act.
     *
     * @param version of the lot as it was shown
     */
    @Transactional
    public Lot correct(Act act, String code, long version, NewLot entry) {
        String[] chains = rows.findByCode(label(code)).stream()
                .flatMap(row -> Stream.concat(
                        Stream.of(doubts.chains(row.id())),
                        uses.wentInto(row.id()).stream().map(LotRegister::chain)))
                .distinct()
                .toArray(String[]::new);
        return change(act, "correct-lot", code, "lot-corrected", chains, row -> {
            String not = row.code() + " was not corrected.";
            requireAtWork(act, not);
            if (row.version() != version) {
                throw Refusal.stale(
                        not, "Somebody else changed it meanwhile.", "Look at it as it is now and correct it again.");
            }
            Map<Long, String> before = doubts.of(row.id());
            row.correct(read(entry, row.code(), not));
            rows.saveAndFlush(row);
            doubts.hold(act, row, before);
            events.publishEvent(new PowderTold(act, row.code()));
            return Map.of();
        });
    }

    /**
     * Records the certificate.
     *
     * @param type such as 3.1 or batch
     * @param file the certificate itself; null to leave what is there
     */
    @Transactional
    public Lot certify(Act act, String code, String type, String number, @Nullable CertificateFile file) {
        return change(act, "certify-lot", code, "lot-certified", row -> {
            String not = "The certificate of " + row.code() + " was not recorded.";
            requireAtWork(act, not);
            String kind = TypedText.line("certificateType", "Type of certificate", not, type, 30);
            String named = TypedText.line("certificate", "Certificate", not, number, 200);
            String kept = file == null
                    ? null
                    : files.keep(file.content(), file.mediaType(), file.name()).sha256();
            row.certify(kind, named, kept);
            return kept == null ? Map.of() : Map.of("file", kept);
        });
    }

    /** Lets a lot be used. By the QA lead, who has seen the certificate; also what brings a blocked lot back. */
    @Transactional
    public Lot release(Act act, String typed) {
        String code = label(typed);
        List<Long> waiting = doubts.waitingFor(code);
        if (!hasCome.opens(act, "release-lot", "lot:" + code, waiting, Chains.SHOP)) {
            return required(code).lot();
        }
        LotRow row = locked(code);
        crew.require(act.by(), row.code() + " was not released.", Role.QA_LEAD);
        row.release(settings.today(), act.at());
        rows.saveAndFlush(row);
        log.event(Chains.SHOP, "lot-released", facts(row));
        waiting.forEach(operation -> hasCome.to(act, operation));
        return row.lot();
    }

    /** Sets a lot aside. Anybody at work may. */
    @Transactional
    public Lot quarantine(Act act, String code, String reason) {
        return change(act, "quarantine-lot", code, "lot-quarantined", row -> {
            String not = row.code() + " was not quarantined.";
            requireAtWork(act, not);
            String why = TypedText.words("reason", "Reason", not, reason);
            row.quarantine(why, act.at());
            return said(why);
        });
    }

    /** Writes off what is left of a lot. */
    @Transactional
    public Lot useUp(Act act, String code, String reason) {
        return change(act, "use-up-lot", code, "lot-used-up", row -> {
            String not = row.code() + " was not written off.";
            requireAtWork(act, not);
            String why = TypedText.words("reason", "Reason", not, reason);
            row.useUp(why, act.at());
            return said(why);
        });
    }

    /**
     * Blocks a lot that is or may be bad, used up or not. Every frame in the shop that it went into is held in the same
     * act.
     */
    @Transactional
    public Lot block(Act act, String typed, String reason) {
        String code = label(typed);
        String[] chains = rows.findByCode(code).stream()
                .flatMap(row -> uses.wentInto(row.id()).stream())
                .map(LotRegister::chain)
                .distinct()
                .toArray(String[]::new);
        if (!log.opens(
                act,
                "block-lot",
                "lot:" + code,
                Stream.concat(Stream.of(Chains.SHOP), Stream.of(chains)).toArray(String[]::new))) {
            return required(code).lot();
        }
        LotRow row = locked(code);
        String not = code + " was not blocked.";
        crew.require(act.by(), not, Role.QA_LEAD, Role.OWNER);
        String why = TypedText.words("reason", "Reason", not, reason);
        row.block(why, act.at());
        rows.saveAndFlush(row);
        Map<String, Object> facts = facts(row);
        facts.putAll(said(why));
        log.event(Chains.SHOP, "lot-blocked", facts);
        // Read again under the lot's lock: an issue may have come in between.
        List<WentInto> places = uses.wentInto(row.id());
        places.stream()
                .map(LotRegister::chain)
                .filter(chain -> !chain.equals(Chains.SHOP))
                .distinct()
                .forEach(chain -> log.event(chain, "lot-blocked", facts));
        traceHolds.place(act, row.code(), places, "Lot " + row.code() + " was blocked: " + why);
        events.publishEvent(new LotBlocked(act, row.id(), row.code(), row.kind(), places));
        return row.lot();
    }

    private static String chain(WentInto place) {
        return Lots.chain(place.serial());
    }

    private Lot change(Act act, String kind, String typed, String what, Function<LotRow, Map<String, ?>> verb) {
        return change(act, kind, typed, what, new String[0], verb);
    }

    private Lot change(
            Act act, String kind, String typed, String what, String[] more, Function<LotRow, Map<String, ?>> verb) {
        String code = label(typed);
        String[] chains = Stream.concat(Stream.of(Chains.SHOP), Stream.of(more)).toArray(String[]::new);
        if (!log.opens(act, kind, "lot:" + code, chains)) {
            return required(code).lot();
        }
        LotRow row = locked(code);
        Map<String, ?> said = verb.apply(row);
        rows.saveAndFlush(row);
        Map<String, Object> facts = facts(row);
        facts.putAll(said);
        log.event(Chains.SHOP, what, facts);
        return row.lot();
    }

    private NewLot read(NewLot entry, String code, String not) {
        LotKind kind = entry.kind();
        if (kind.metallic() && entry.metal() == null) {
            throw Refusal.input("metal", not, "A " + kind.word() + " has a metal.", "Choose its metal.");
        }
        String materialClass = classOf(entry, not);
        if (kind == LotKind.MEDIA && entry.reservedFor() == null) {
            throw Refusal.input(
                    "reservedFor",
                    not,
                    "Blast media carries the metal it was used on to the next frame.",
                    "Say for which metal it is kept.");
        }
        if (entry.receivedOn().isAfter(settings.today())) {
            throw Refusal.input(
                    "receivedOn",
                    not,
                    entry.receivedOn() + " has not come yet; it is " + settings.today() + ".",
                    "Enter the day it came.");
        }
        if (entry.quantity() != null
                && (entry.quantity().signum() <= 0
                        || entry.quantity().compareTo(MOST) > 0
                        || entry.quantity().stripTrailingZeros().scale() > 3)) {
            throw Refusal.input(
                    "quantity",
                    not,
                    "A quantity is above 0 and has three decimals at most.",
                    "Enter what was delivered, or leave it empty if it is not counted.");
        }
        return new NewLot(
                code,
                kind,
                TypedText.line("what", "The description", not, entry.what(), 400),
                kind.metallic() ? entry.metal() : null,
                materialClass,
                orEmpty(TypedText.lineOrNone("grade", "Alloy and temper", not, entry.grade(), 120)),
                orEmpty(TypedText.lineOrNone("heat", "Heat or batch number", not, entry.heat(), 80)),
                entry.reservedFor(),
                orEmpty(TypedText.lineOrNone("supplier", "Supplier", not, entry.supplier(), 200)),
                entry.receivedOn(),
                entry.expiresOn(),
                entry.quantity(),
                entry.quantity() == null
                        ? orEmpty(TypedText.lineOrNone("unit", "Unit", not, entry.unit(), 20))
                        : TypedText.line("unit", "Unit", not, entry.unit(), 20));
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private @Nullable String classOf(NewLot entry, String not) {
        if (!entry.kind().classed()) {
            return null;
        }
        String code = entry.materialClass();
        return (code == null ? Optional.<MaterialClassRow>empty() : classes.findById(code))
                .map(MaterialClassRow::materialClass)
                .filter(known -> known.kind() == entry.kind())
                .map(MaterialClass::code)
                .orElseThrow(() -> Refusal.input(
                        "materialClass",
                        not,
                        "Without its class nobody can tell which metal a "
                                + entry.kind().word() + " fits.",
                        "Choose the class from the list."));
    }

    private LotRow required(String code) {
        return rows.findByCode(code).orElseThrow(() -> Lots.unknown(code));
    }

    private LotRow locked(String code) {
        return rows.lock(code).orElseThrow(() -> Lots.unknown(code));
    }

    private void requireAtWork(Act act, String not) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(
                    not, "Only people at work in the shop handle lots.", "Let somebody of the crew do it.");
        }
    }

    static String label(String typed) {
        return typed.strip().toUpperCase(Locale.ROOT);
    }

    private Map<String, Object> said(String why) {
        WordsRef ref = words.keep(why);
        return Map.of("words", ref.id(), "sha256", ref.sha256());
    }

    private static Map<String, Object> facts(LotRow row) {
        Map<String, Object> facts = new HashMap<>();
        facts.put("lot", row.id());
        facts.put("code", row.code());
        facts.put("state", row.state().name());
        return facts;
    }
}
