package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface NoteRepository extends JpaRepository<Note, Long> {

    List<Note> findByTravellerIdInOrderById(Collection<Long> travellerIds);
}
