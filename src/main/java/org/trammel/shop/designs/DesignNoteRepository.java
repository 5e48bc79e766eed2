package org.trammel.shop.designs;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface DesignNoteRepository extends JpaRepository<DesignNote, Long> {

    List<DesignNote> findByRevisionIdOrderById(long revisionId);
}
