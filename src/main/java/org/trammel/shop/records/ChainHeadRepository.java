package org.trammel.shop.records;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface ChainHeadRepository extends JpaRepository<ChainHead, String> {

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select h from ChainHead h where h.chain = :chain")
    Optional<ChainHead> lock(String chain);

    /** Begins a chain, unless somebody else does so at the same moment; then it waits for them. */
    @Modifying
    @Query(
            nativeQuery = true,
            value = "insert into chain_head (chain, position, hash) values (:chain, 0, :before) on conflict do nothing")
    void begin(String chain, String before);
}
