package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LotRemnantRepository extends Repository<LotRemnantRow, Long> {

    LotRemnantRow save(LotRemnantRow row);

    List<LotRemnantRow> findByLotIdOrderByNumber(long lotId);

    Optional<LotRemnantRow> findByLotIdAndNumber(long lotId, int number);

    @Query("select coalesce(max(r.number), 0) from LotRemnantRow r where r.lotId = :lotId")
    int lastNumber(long lotId);

    @Query("select coalesce(sum(r.quantity), 0) from LotRemnantRow r where r.useId = :useId")
    BigDecimal returnedOf(long useId);
}
