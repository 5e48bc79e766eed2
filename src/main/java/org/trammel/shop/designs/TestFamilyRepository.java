package org.trammel.shop.designs;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface TestFamilyRepository extends JpaRepository<TestFamilyRow, Long> {

    @Query("select t from TestFamilyRow t where t.id in (select max(o.id) from TestFamilyRow o group by o.code)"
            + " order by t.code")
    List<TestFamilyRow> inForce();

    List<TestFamilyRow> findByCodeOrderByIdDesc(String code);

    Optional<TestFamilyRow> findFirstByCodeOrderByIdDesc(String code);
}
