package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.materials.NewPowderSheet;
import org.trammel.shop.materials.PowderSheets;

/**
 * Receives the invented lots on the day each came, releases those with a certificate, and uses up what is gone.
 *
 * <p>Where the shop's list of lots leaves a frame without something it must have been made with, the list was completed:
 * argon before the bottle now in use, bead for titanium, bearings of the pivots, the rod of 2024 in the frame that came
 * back.
 */
@Component
@Profile("demo")
class DemoLots {

    /** Certificates of material as their makers write them, and the batch's own sheet. */
    private static final String INSPECTED = "3.1";

    private static final String BATCH = "batch";
    private static final String MISSING = "";

    private static final List<NewLot> RECEIVED = List.of(
            tube(
                    "TL-6061-188",
                    "2025-12-02",
                    "EN AW-6061 T6 tubes 42×1,3 to 31,8×1,1, stays 22×1,6 · 18×1,4",
                    "5K2217"),
            tube(
                    "TL-6061-191",
                    "2026-01-14",
                    "EN AW-6061 T6 heavy tubes 42×1,6 · 34,9×1,3 · 34,9×1,5, stays",
                    "5K2301"),
            tube("TL-7005-073", "2025-11-20", "EN AW-7005 tubes 42×1,5 to 31,8×1,1, stays 22×1,6 · 18×1,4", "70A118"),
            fitting("TF-6061-021", "2025-12-02", "EN AW-6061 T6 head tubes 54, shells 42", "5K2190"),
            fitting("TF-7005-022", "2025-11-20", "EN AW-7005 head tubes 50, 54, 56, shells 42", "70A095"),
            fitting("TF-CRMO-023", "2025-10-09", "25CrMo4 head tubes 36, 46,4, shells 40", "C99852"),
            fitting("TF-TI-024", "2025-12-19", "Ti-3Al-2.5V head tubes 46,4, shells 42", "T33405"),
            tube("TL-7005-074", "2026-03-12", "EN AW-7005 tubes, replenishment", "not stated"),
            tube("TL-CRMO-052", "2025-10-09", "25CrMo4 seamless tubes and stays, 38×0,95 to 14×0,65", "C99841"),
            tube("TL-TI-017", "2025-12-19", "Ti-3Al-2.5V tubes 41×1,0 · 38,1×0,95 · 34,9×0,9, stays", "T33410"),
            filler("FL-4643-014", "2024-05-21", "ER4643", "Rod 1,6 mm"),
            filler("FL-4643-021", "2025-12-01", "ER4643", "Rod 1,6 mm"),
            filler("FL-4643-022", "2026-03-01", "ER4643", "Rod 1,6 mm"),
            filler("FL-4643-023", "2026-03-17", "ER4643", "Rod 1,6 mm"),
            filler("FL-5356-030", "2025-11-11", "ER5356", "Rod 1,6 mm"),
            filler("FL-5356-031", "2026-03-03", "ER5356", "Rod 1,6 mm"),
            filler("FL-ER80-011", "2025-10-01", "ER80S", "Rod 1,2 mm"),
            filler("FL-ER80-012", "2026-03-09", "ER80S", "Rod 1,2 mm"),
            filler("FL-BR45-006", "2025-09-15", "BRAZE-SILVER", "45 % silver brazing rod, cadmium-free"),
            filler("FL-BR45-007", "2026-02-20", "BRAZE-SILVER", "45 % silver brazing rod, cadmium-free"),
            filler("FL-TI9-003", "2025-12-19", "TI-3AL-2.5V", "Rod 1,2 mm"),
            lot("FX-06", LotKind.FLUX, "2025-09-15", "Brazing flux", "BRAZE-FLUX", null, null),
            lot("AR-0330", LotKind.GAS, "2025-12-08", "Argon 4.8, dew point −50 °C or less", "ARGON", null, null),
            lot("AR-0331", LotKind.GAS, "2026-03-09", "Argon 4.8, dew point −50 °C or less", "ARGON", null, null),
            lot("PW-GREEN-12", LotKind.POWDER, "2026-01-12", "Green powder, low bake", "LOW-BAKE", null, "2026-09-30"),
            lot("PW-SAND-04", LotKind.POWDER, "2026-01-12", "Sand powder, low bake", "LOW-BAKE", null, "2026-03-31"),
            lot("PW-CLR-21", LotKind.POWDER, "2026-01-12", "Clear powder, low bake", "LOW-BAKE", null, "2026-11-30"),
            media("BM-GLASS-07", "2026-02-10", "Glass bead 100 to 200 µm, aluminium only", MetalFamily.ALUMINIUM),
            media("BM-GLASS-08", "2026-02-10", "Glass bead 100 to 200 µm, titanium only", MetalFamily.TITANIUM),
            media("BM-ALOX-03", "2026-01-05", "Alumina, steel only", MetalFamily.STEEL),
            lot("BR-6902-11", LotKind.BEARING, "2025-12-19", "Bearings of the main pivots", null, null, null));

    /** Gone, and on which day. */
    private record Gone(String lot, LocalDate on, String why) {}

    private static final List<Gone> USED_UP = List.of(
            gone("FL-BR45-006", "2026-02-20", "last rod used"),
            gone("FL-5356-030", "2026-03-03", "last rod used"),
            gone("AR-0330", "2026-03-09", "bottle empty"),
            gone("FL-ER80-011", "2026-03-11", "last rod used"),
            gone("FL-4643-014", "2026-03-17", "used up in 2024, entered from the paper record"),
            gone("FL-4643-021", "2026-03-17", "last rod used"));

    private static final Map<String, String> COLOURS =
            Map.of("PW-GREEN-12", "green", "PW-SAND-04", "sand", "PW-CLR-21", "clear");

    private final LotRegister register;
    private final DemoTubes tubes;
    private final PowderSheets sheets;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoLots(LotRegister register, DemoTubes tubes, PowderSheets sheets, DemoActs acts, DemoClock clock) {
        this.register = register;
        this.tubes = tubes;
        this.sheets = sheets;
        this.acts = acts;
        this.clock = clock;
    }

    /** @param stocked the day on which what was there already was written down */
    void receive(Instant stocked) {
        RECEIVED.stream().sorted(Comparator.comparing(NewLot::receivedOn)).forEach(lot -> {
            Instant came = morning(lot.receivedOn());
            clock.setTo(came.isAfter(stocked) ? came : stocked);
            register.receive(acts.by("JA"), lot);
            tubes.state(lot.code());
            sheet(lot);
            String certificate = certificate(lot);
            if (!certificate.equals(MISSING)) {
                register.certify(acts.by("TR"), lot.code(), certificate, "certificate of " + lot.code(), null);
                register.release(acts.by("TR"), lot.code());
            }
        });
    }

    /** Low-bake powders have pairs of their own; invented ones, which 20 min at 160 °C meet with the way up and down. */
    private void sheet(NewLot lot) {
        if (COLOURS.containsKey(lot.code())) {
            sheets.enter(
                    acts.by("JA"),
                    lot.code(),
                    new NewPowderSheet(
                            COLOURS.get(lot.code()),
                            List.of(
                                    new NewPowderSheet.Pair(new BigDecimal("25"), new BigDecimal("160")),
                                    new NewPowderSheet.Pair(new BigDecimal("12"), new BigDecimal("180"))),
                            null,
                            null,
                            null,
                            "sheet of the powder, invented"));
        }
    }

    private static String certificate(NewLot lot) {
        if (lot.code().equals("TL-7005-074")) {
            return MISSING;
        }
        return lot.kind().metallic() || lot.kind() == LotKind.FILLER ? INSPECTED : BATCH;
    }

    /** After the frames that took the last of them. */
    void useUp() {
        for (Gone one : USED_UP) {
            clock.setTo(one.on().atTime(9, 0).atZone(DemoOrder.ZONE).toInstant());
            register.useUp(acts.by("TR"), one.lot(), one.why());
        }
    }

    /** Before anybody begins to work. */
    private static Instant morning(LocalDate day) {
        return day.atTime(5, 30).atZone(DemoOrder.ZONE).toInstant();
    }

    private static Gone gone(String lot, String on, String why) {
        return new Gone(lot, LocalDate.parse(on), why);
    }

    private static NewLot tube(String code, String received, String what, String heat) {
        return metal(code, LotKind.TUBE, received, what, heat);
    }

    private static NewLot fitting(String code, String received, String what, String heat) {
        return metal(code, LotKind.FITTING, received, what, heat);
    }

    private static NewLot metal(String code, LotKind kind, String received, String what, String heat) {
        String alloy = code.substring(3, 7);
        String metal = switch (alloy) {
            case "6061" -> "AL6061";
            case "7005" -> "AL7005";
            case "CRMO" -> "STEEL";
            default -> "TI";
        };
        String grade = switch (metal) {
            case "STEEL" -> "25CrMo4";
            case "TI" -> "Ti-3Al-2.5V";
            default -> "T6";
        };
        return new NewLot(
                code,
                kind,
                what,
                metal,
                null,
                grade,
                heat,
                null,
                "Invented Metals",
                LocalDate.parse(received),
                null,
                null,
                "");
    }

    private static NewLot filler(String code, String received, String materialClass, String what) {
        return lot(code, LotKind.FILLER, received, what, materialClass, null, null);
    }

    private static NewLot media(String code, String received, String what, MetalFamily only) {
        return lot(
                code, LotKind.MEDIA, received, what, only == MetalFamily.STEEL ? "ALUMINA" : "GLASS-BEAD", only, null);
    }

    private static NewLot lot(
            String code,
            LotKind kind,
            String received,
            String what,
            @Nullable String materialClass,
            @Nullable MetalFamily only,
            @Nullable String expires) {
        return new NewLot(
                code,
                kind,
                what,
                null,
                materialClass,
                "",
                "batch " + code,
                only,
                "Invented Supplies",
                LocalDate.parse(received),
                expires == null ? null : LocalDate.parse(expires),
                null,
                "");
    }
}
