package org.trammel.shop.records;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface ChainHeadRepository extends JpaRepository<ChainHead, String> {

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select h from ChainHead h where h.chain = :chain")
    Optional<ChainHead> lock(String chain);
}
