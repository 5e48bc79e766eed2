package org.trammel.shop.demo;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.materials.NewLot;

/** Receives and releases the invented lots. */
@Component
@Profile("demo")
class DemoLots {

    private final LotRegister register;
    private final DemoActs acts;

    DemoLots(LotRegister register, DemoActs acts) {
        this.register = register;
        this.acts = acts;
    }

    void receive() {
        tube("TL-6061-188", "EN AW-6061 T6 tubes 42×1,4 · 34,9×1,15 · 34,9×1,35 · 38×1,35", "AL6061", "T6", "5K2217");
        tube("TL-6061-191", "EN AW-6061 T6 heavy tubes 42×1,6 · 34,9×1,3 · 34,9×1,5", "AL6061", "T6", "5K2301");
        tube("TL-7005-073", "EN AW-7005 tubes 42×1,5 · 42×1,3 · 38×1,3 · 35×1,25 · 31,8×1,1", "AL7005", "T6", "70A118");
        tube("TL-CRMO-052", "25CrMo4 seamless tubes 35×0,78 · 31,8×0,72 · 28,6×0,7", "STEEL", "25CrMo4", "C99841");
        tube("TL-TI-017", "Ti-3Al-2.5V tubes 41×1,0 · 38,1×0,95 · 34,9×0,9", "TI", "Ti-3Al-2.5V", "T33410");
        filler("FL-4643-021", "ER4643", "Rod 1,6 mm");
        filler("FL-4643-022", "ER4643", "Rod 1,6 mm");
        filler("FL-5356-030", "ER5356", "Rod 1,6 mm");
        filler("FL-5356-031", "ER5356", "Rod 1,6 mm");
        filler("FL-ER80-011", "ER80S", "Rod 1,2 mm");
        filler("FL-ER80-012", "ER80S", "Rod 1,2 mm");
        filler("FL-BR45-006", "BRAZE-SILVER", "45 % silver brazing rod, cadmium-free");
        filler("FL-BR45-007", "BRAZE-SILVER", "45 % silver brazing rod, cadmium-free");
        filler("FL-TI9-003", "TI-3AL-2.5V", "Rod 1,2 mm");
        lot("FX-06", LotKind.FLUX, "Brazing flux", "BRAZE-FLUX", null);
        lot("AR-0331", LotKind.GAS, "Argon 4.8, dew point −50 °C or less", "ARGON", null);
        lot("PW-GREEN-12", LotKind.POWDER, "Green powder, low bake", "LOW-BAKE", "2026-09-30");
        lot("PW-SAND-04", LotKind.POWDER, "Sand powder, low bake", "LOW-BAKE", "2026-03-31");
        lot("PW-CLR-21", LotKind.POWDER, "Clear powder, low bake", "LOW-BAKE", "2026-11-30");
        media("BM-GLASS-07", "Glass bead 100 to 200 µm, aluminium only", "GLASS-BEAD", MetalFamily.ALUMINIUM);
        media("BM-GLASS-08", "Glass bead 100 to 200 µm, titanium only", "GLASS-BEAD", MetalFamily.TITANIUM);
        media("BM-ALOX-03", "Alumina, steel only", "ALUMINA", MetalFamily.STEEL);
        lot("BR-6902-11", LotKind.BEARING, "Bearings of the main pivots", null, null);
    }

    /** What happened to lots on the last days before the demo morning. */
    void lastDays() {
        register.receive(
                acts.by("JA"),
                new NewLot(
                        "TL-7005-074",
                        LotKind.TUBE,
                        "EN AW-7005 tubes, replenishment",
                        "AL7005",
                        null,
                        "T6",
                        "not stated",
                        null,
                        "Invented Metals",
                        LocalDate.of(2026, 3, 12),
                        null,
                        null,
                        ""));
        filler("FL-4643-023", "ER4643", "Rod 1,6 mm");
        for (String used : new String[] {"FL-4643-021", "FL-5356-030", "FL-ER80-011", "FL-BR45-006"}) {
            register.useUp(acts.by("TR"), used, "last rod used");
        }
    }

    private void tube(String code, String what, String metal, String grade, String heat) {
        register.receive(
                acts.by("JA"),
                new NewLot(
                        code,
                        LotKind.TUBE,
                        what,
                        metal,
                        null,
                        grade,
                        heat,
                        null,
                        "Invented Metals",
                        LocalDate.of(2025, 10, 9),
                        null,
                        null,
                        ""));
        release(code);
    }

    private void filler(String code, String materialClass, String what) {
        lot(code, LotKind.FILLER, what, materialClass, null);
    }

    private void media(String code, String what, String materialClass, MetalFamily only) {
        register.receive(
                acts.by("JA"),
                new NewLot(
                        code,
                        LotKind.MEDIA,
                        what,
                        null,
                        materialClass,
                        "",
                        "batch " + code,
                        only,
                        "Invented Supplies",
                        LocalDate.of(2025, 10, 9),
                        null,
                        null,
                        ""));
        release(code);
    }

    private void lot(String code, LotKind kind, String what, @Nullable String materialClass, @Nullable String expires) {
        register.receive(
                acts.by("JA"),
                new NewLot(
                        code,
                        kind,
                        what,
                        null,
                        materialClass,
                        "",
                        "batch " + code,
                        null,
                        "Invented Supplies",
                        LocalDate.of(2025, 10, 9),
                        expires == null ? null : LocalDate.parse(expires),
                        null,
                        ""));
        release(code);
    }

    private void release(String code) {
        register.certify(acts.by("TR"), code, "3.1", "certificate of " + code, null);
        register.release(acts.by("TR"), code);
    }
}
