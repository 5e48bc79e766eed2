package org.trammel.shop.records;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface ChainHeadRepository extends JpaRepository<ChainHead, String> {

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select h from ChainHead h where h.chain = :chain")
    Optional<ChainHead> lock(String chain);

    @Query("select h from ChainHead h where h.chain like :pattern escape '\\' and h.chain > :after order by h.chain")
    List<ChainHead> page(String pattern, String after, Limit limit);

    /** Heads that moved since they were last tied into a checkpoint, in an order that does not matter. */
    @Query("select h from ChainHead h where h.position > 0 and not exists"
            + " (select 1 from CheckpointHead c where c.chain = h.chain and c.position = h.position)")
    Stream<ChainHead> moved();

    /** Begins a chain, unless somebody else does so at the same moment; then it waits for them. */
    @Modifying
    @Query(
            nativeQuery = true,
            value = "insert into chain_head (chain, position, hash) values (:chain, 0, :before) on conflict do nothing")
    void begin(String chain, String before);
}
