package org.trammel.shop.people;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface SignOnRepository extends JpaRepository<SignOnRow, Long> {

    @Query("select s from SignOnRow s where s.deviceId = :deviceId and s.endedAt is null")
    List<SignOnRow> open(long deviceId);

    @Query("select s from SignOnRow s where s.personId = :personId and s.endedAt is null")
    List<SignOnRow> openOf(long personId);

    /** Who was signed on at a device, the last first. */
    @Query(
            "select s.personId from SignOnRow s where s.deviceId = :deviceId group by s.personId order by max(s.id) desc")
    List<Long> lastAt(long deviceId);

    @Modifying
    @Query("update SignOnRow s set s.lastSeen = :at where s.deviceId = :deviceId and s.endedAt is null"
            + " and s.lastSeen < :at")
    void seen(long deviceId, Instant at);
}
