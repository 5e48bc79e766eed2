package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is entered of a lot when it is received; the fields are those of {@link Lot}. */
public record NewLot(
        String code,
        LotKind kind,
        String what,
        @Nullable String metal,
        @Nullable String materialClass,
        String grade,
        String heat,
        @Nullable MetalFamily reservedFor,
        String supplier,
        LocalDate receivedOn,
        @Nullable LocalDate expiresOn,
        @Nullable BigDecimal quantity,
        String unit) {}
