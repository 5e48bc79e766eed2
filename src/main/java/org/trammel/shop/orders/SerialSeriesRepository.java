package org.trammel.shop.orders;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface SerialSeriesRepository extends JpaRepository<SerialSeries, SerialSeries.Key> {

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select s from SerialSeries s where s.key = :key")
    Optional<SerialSeries> lock(SerialSeries.Key key);
}
