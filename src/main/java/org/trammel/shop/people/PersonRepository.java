package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.NativeQuery;
import org.springframework.data.jpa.repository.Query;

interface PersonRepository extends JpaRepository<PersonRow, Long> {

    /**
     * Roles in force on a day: those held; those of a deputy while every holder is away or gone; and the QA lead's for
     * the owner while there is neither QA lead nor deputy.
     */
    String ROLES_IN_FORCE = """
            select own.person_id, own.role from person_role own
            union
            select d.person_id, d.role from deputy d
            where d.from_on <= :today and (d.until_on is null or d.until_on >= :today)
              and not exists (
                select 1 from person_role h join person hp on hp.id = h.person_id
                where h.role = d.role and hp.left_on is null and not exists (
                  select 1 from absence a where a.person_id = h.person_id and :today between a.from_on and a.until_on))
            union
            select o.person_id, 'QA_LEAD' from person_role o
            where o.role = 'OWNER'
              and not exists (
                select 1 from person_role h join person hp on hp.id = h.person_id
                where h.role = 'QA_LEAD' and hp.left_on is null and not exists (
                  select 1 from absence a where a.person_id = h.person_id and :today between a.from_on and a.until_on))
              and not exists (
                select 1 from deputy d join person dp on dp.id = d.person_id
                where d.role = 'QA_LEAD' and d.from_on <= :today and (d.until_on is null or d.until_on >= :today)
                  and dp.left_on is null and not exists (
                  select 1 from absence a where a.person_id = d.person_id and :today between a.from_on and a.until_on))
            """;

    String WITH_ROLES = "select p.id as id, p.initials as initials, p.name as name, p.left_on as left_on,"
            + " f.role as role from person p left join (" + ROLES_IN_FORCE + ") f on f.person_id = p.id ";

    /** A person and one of their roles in a row, to be read by {@link PersonLine}. */
    @NativeQuery(WITH_ROLES + "where p.id = :id")
    List<Object[]> lines(long id, LocalDate today);

    @NativeQuery(WITH_ROLES + "where p.initials = :initials")
    List<Object[]> lines(String initials, LocalDate today);

    @NativeQuery(WITH_ROLES + "where p.id > 0 order by p.name, p.id")
    List<Object[]> lines(LocalDate today);

    Optional<PersonRow> findByInitials(String initials);

    Optional<PersonRow> findByBadge(String badge);

    boolean existsByInitials(String initials);

    @Lock(jakarta.persistence.LockModeType.PESSIMISTIC_WRITE)
    @Query("select p from PersonRow p where p.id = :id")
    Optional<PersonRow> lock(long id);

    @Query("select count(p) from PersonRow p join p.roles r where r = :role and p.leftOn is null")
    long activeWith(Role role);

    /** Who an id is, without the hashes of secrets. */
    interface Initials {
        long getId();

        String getInitials();
    }

    @Query("select p.id as id, p.initials as initials from PersonRow p")
    List<Initials> initials();

    /** Names stand on nearly every sheet; they are read without what their bearers may do. */
    @Query("select new org.trammel.shop.people.CalledPerson(p.id, p.initials, p.name, n.name) from PersonRow p"
            + " left join PersonName n on n.personId = p.id"
            + " and n.id = (select min(m.id) from PersonName m where m.personId = p.id) where p.id > 0")
    List<CalledPerson> called();

    /** Every name everybody ever had, each person's from the first on. */
    @Query("select new org.trammel.shop.people.NameSince(p.id, p.initials, p.name, n.name, n.since) from PersonRow p"
            + " left join PersonName n on n.personId = p.id where p.id > 0 order by p.id, n.since, n.id")
    List<NameSince> namesSince();

    /** Initials of those of a name who work here, however it is written. */
    @Query(
            "select p.initials from PersonRow p where p.leftOn is null and lower(p.name) = lower(:name) and p.id <> :but")
    List<String> named(String name, long but);
}
