package org.trammel.shop.records;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface KeptFilePartRepository extends JpaRepository<KeptFilePart, Long> {

    List<KeptFilePart> findByFileSha256OrderByPart(String fileSha256);

    @Modifying
    @Query("delete from KeptFilePart p where p.fileSha256 = :fileSha256")
    int erase(String fileSha256);
}
