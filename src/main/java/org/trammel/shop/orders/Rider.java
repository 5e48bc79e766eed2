package org.trammel.shop.orders;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;

/** The rider of one order's frame; erased with the customer. Lengths are typed in centimetres and kept in millimetres. */
@Entity
@Table(name = "rider")
class Rider implements Persistable<Long> {

    private static final int CM_TO_MM = 1;

    @Id
    private Long orderId;

    private @Nullable BigDecimal heightMm;
    private @Nullable BigDecimal inseamMm;
    private @Nullable BigDecimal armMm;
    private @Nullable BigDecimal footMm;
    private @Nullable BigDecimal massKg;
    private @Nullable String flexibility;

    @Version
    private @Nullable Long version;

    protected Rider() {}

    Rider(long orderId) {
        this.orderId = orderId;
    }

    void tell(RiderDetails rider) {
        heightMm = mm(rider.height());
        inseamMm = mm(rider.inseam());
        armMm = mm(rider.arm());
        footMm = mm(rider.foot());
        massKg = rider.mass();
        flexibility = rider.flexibility();
    }

    RiderDetails details() {
        return new RiderDetails(
                cm(heightMm),
                cm(inseamMm),
                cm(armMm),
                cm(footMm),
                massKg == null ? null : Plain.number(massKg),
                flexibility);
    }

    private static @Nullable BigDecimal mm(@Nullable BigDecimal cm) {
        return cm == null ? null : cm.movePointRight(CM_TO_MM);
    }

    private static @Nullable BigDecimal cm(@Nullable BigDecimal mm) {
        return mm == null ? null : Plain.number(mm.movePointLeft(CM_TO_MM));
    }

    /** Changes with each change of what is told. */
    long edition() {
        return version == null ? -1 : version;
    }

    @Override
    public Long getId() {
        return orderId;
    }

    @Override
    public boolean isNew() {
        return version == null;
    }
}
