package org.trammel.shop.materials;

import jakarta.persistence.LockModeType;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LotRepository extends Repository<LotRow, Long> {

    Optional<LotRow> findById(long id);

    LotRow saveAndFlush(LotRow row);

    Optional<LotRow> findByCode(String code);

    /** Issues and blocks of one lot follow each other, so that no frame is missed by a block. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select l from LotRow l where l.code = :code")
    Optional<LotRow> lock(String code);

    boolean existsByCode(String code);

    @Query("""
            select l from LotRow l
            where (:before is null or l.id < :before) and (:kind is null or l.kind = :kind)
            and (:state is null or l.state = :state)
            order by l.id desc
            """)
    List<LotRow> page(@Nullable Long before, @Nullable LotKind kind, @Nullable LotState state, Limit limit);

    @Query("""
            select l from LotRow l
            where l.state = org.trammel.shop.materials.LotState.RELEASED and l.expiresOn <= :until
            order by l.expiresOn, l.code
            """)
    List<LotRow> expiring(LocalDate until, Limit limit);
}
