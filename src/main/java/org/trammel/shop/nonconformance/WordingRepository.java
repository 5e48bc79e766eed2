package org.trammel.shop.nonconformance;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface WordingRepository extends JpaRepository<Wording, Long> {

    List<Wording> findByNonconformanceIdInOrderById(Collection<Long> nonconformanceIds);

    /** Who of the customer agreed, in every decision ever put forward for a frame. */
    @Query("""
            select w from Wording w, Nonconformance n
            where n.id = w.nonconformanceId and n.serial = :serial
              and w.about = org.trammel.shop.nonconformance.Wording$About.CUSTOMER
            order by w.id
            """)
    List<Wording> ofCustomer(String serial);
}
