package org.trammel.shop.stations;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface DeviceRepository extends JpaRepository<DeviceRow, Long> {

    List<DeviceRow> findByKindOrderById(DeviceRow.Kind kind);

    Optional<DeviceRow> findByName(String name);

    Optional<DeviceRow> findByTokenHash(String tokenHash);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select d from DeviceRow d where d.id = :id")
    Optional<DeviceRow> lock(long id);
}
