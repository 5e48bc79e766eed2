package org.trammel.shop.records;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface KeptWordsTextRepository extends JpaRepository<KeptWordsText, Long> {

    @Modifying
    @Query("delete from KeptWordsText t where t.wordsId = :wordsId")
    int erase(long wordsId);
}
