package org.trammel.shop.stations;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface EnrolmentCodeRepository extends JpaRepository<EnrolmentCode, Long> {

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select c from EnrolmentCode c where c.codeHash = :codeHash")
    Optional<EnrolmentCode> lock(String codeHash);
}
