package org.trammel.shop.handwork;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface CouponRepository extends Repository<CouponRow, Long> {

    CouponRow saveAndFlush(CouponRow row);

    Optional<CouponRow> findById(long id);

    List<CouponRow> findByMetalOrderById(String metal);

    boolean existsByTakesOut(long id);
}
