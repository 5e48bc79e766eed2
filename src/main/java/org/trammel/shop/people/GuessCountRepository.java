package org.trammel.shop.people;

import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;
import org.springframework.data.jpa.repository.Query;

interface GuessCountRepository extends JpaRepository<GuessCount, String> {

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select g from GuessCount g where g.subject = :subject")
    Optional<GuessCount> lock(String subject);

    /** Two first guesses sent side by side make one row. */
    @Modifying
    @NativeQuery("insert into guess_count (subject, failures, last_at, open_from) values (:subject, 0, :at, :at)"
            + " on conflict do nothing")
    void begin(String subject, Instant at);

    /** Forgets counts that are not locked, but never those of a PIN: these end only with the right one. */
    @Modifying
    @Query("delete from GuessCount g where g.lastAt < :before and g.lockedAt is null and g.subject not like 'pin:%'")
    int sweep(Instant before);

    /** Forgets locked names that nobody has. */
    @Modifying
    @Query("delete from GuessCount g where g.lastAt < :before and g.subject like 'unknown:%'")
    int sweepUnknown(Instant before);
}
