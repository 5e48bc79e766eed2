package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.TestCrew;

/** Lots and serials under names no other test uses. */
final class Rack {

    static final LocalDate TODAY = LocalDate.of(2026, 3, 18);
    private static final AtomicInteger NUMBER = new AtomicInteger();

    private final LotRegister register;
    private final TestCrew crew;
    private final long qa;

    Rack(LotRegister register, TestCrew crew, long qa) {
        this.register = register;
        this.crew = crew;
        this.qa = qa;
    }

    static String code() {
        return "MT-" + NUMBER.incrementAndGet();
    }

    /** A serial of the letters MT, which no demo frame has. */
    static String serial() {
        int n = NUMBER.incrementAndGet();
        return SerialNumber.of("MT", n / 1000 % 100, n % 1000).stored();
    }

    static NewLot tube(String metal) {
        return lot(LotKind.TUBE, metal, null, null, null, null, "");
    }

    static NewLot counted(String quantity, String unit) {
        return lot(LotKind.TUBE, "AL6061", null, null, null, new BigDecimal(quantity), unit);
    }

    static NewLot classed(LotKind kind, String materialClass) {
        return lot(kind, null, materialClass, kind == LotKind.MEDIA ? MetalFamily.ALUMINIUM : null, null, null, "");
    }

    static NewLot lot(
            LotKind kind,
            @Nullable String metal,
            @Nullable String materialClass,
            @Nullable MetalFamily reservedFor,
            @Nullable LocalDate expiresOn,
            @Nullable BigDecimal quantity,
            String unit) {
        return new NewLot(
                code(),
                kind,
                "a lot",
                metal,
                materialClass,
                "",
                "5K2217",
                reservedFor,
                "a supplier",
                LocalDate.of(2025, 12, 2),
                expiresOn,
                quantity,
                unit);
    }

    String received(NewLot lot) {
        return register.receive(crew.act(qa), lot).code();
    }

    String certified(NewLot lot) {
        String code = received(lot);
        register.certify(crew.act(qa), code, "3.1", "C-1", null);
        return code;
    }

    String released(NewLot lot) {
        String code = certified(lot);
        register.release(crew.act(qa), code);
        return code;
    }

    static Destination frame(String serial, String metal) {
        return new Destination(serial, "", metal, null, "020", "DT");
    }
}
