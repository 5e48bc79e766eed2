package org.trammel.shop.people;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface FirstOwnerCodeRepository extends JpaRepository<FirstOwnerCode, Long> {

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select c from FirstOwnerCode c where c.codeHash = :codeHash and c.usedAt is null")
    Optional<FirstOwnerCode> lockOpen(String codeHash);

    @Modifying
    @Query("delete from FirstOwnerCode c where c.usedAt is null")
    void forgetOpen();
}
