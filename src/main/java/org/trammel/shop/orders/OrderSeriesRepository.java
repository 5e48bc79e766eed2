package org.trammel.shop.orders;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface OrderSeriesRepository extends JpaRepository<OrderSeries, Integer> {

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select s from OrderSeries s where s.id = " + OrderSeries.ONLY)
    Optional<OrderSeries> lock();
}
