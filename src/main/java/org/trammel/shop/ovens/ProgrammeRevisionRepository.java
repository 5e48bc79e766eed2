package org.trammel.shop.ovens;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ProgrammeRevisionRepository extends Repository<ProgrammeRevisionRow, Long> {

    ProgrammeRevisionRow saveAndFlush(ProgrammeRevisionRow row);

    @Query("select r from ProgrammeRevisionRow r left join fetch r.steps where r.id = :id")
    Optional<ProgrammeRevisionRow> withSteps(long id);

    @Query(
            "select r from ProgrammeRevisionRow r left join fetch r.steps join fetch r.programme p where p.code = :code order by r.id desc")
    List<ProgrammeRevisionRow> of(String code);

    @Query(
            "select r from ProgrammeRevisionRow r left join fetch r.steps join fetch r.programme p order by p.code, r.id desc")
    List<ProgrammeRevisionRow> everyOne();

    /** Revisions that were ever in force; guards that name this operation, and perhaps one whose code contains it. */
    @Query("""
            select r from ProgrammeRevisionRow r join fetch r.programme p
            where r.state <> org.trammel.shop.ovens.ProgrammeState.DRAFT and r.guards like concat('%', :operation, '%')
            order by p.code
            """)
    List<ProgrammeRevisionRow> guarding(String operation);
}
