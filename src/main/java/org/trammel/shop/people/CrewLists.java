package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.settings.Settings;

/** The crew as lists show it: name, roles, what each may do and until when. */
@Component
@Transactional(readOnly = true)
class CrewLists {

    private final Crew crew;
    private final QualificationRepository qualifications;
    private final SignOnRepository signOns;
    private final Settings settings;

    CrewLists(Crew crew, QualificationRepository qualifications, SignOnRepository signOns, Settings settings) {
        this.crew = crew;
        this.qualifications = qualifications;
        this.signOns = signOns;
        this.settings = settings;
    }

    /**
     * @param roles in words
     * @param may what they may do and until when
     * @param note what goes without a qualification, such as that an apprentice signs no hold point
     */
    record Line(Person person, String roles, List<MayDo> may, String note) {

        /** Whether anything they may do ends soon. */
        public boolean soon() {
            return may.stream().anyMatch(one -> one.soon() || !one.valid());
        }
    }

    /** Everybody who works here, by name. */
    List<Line> active() {
        return lines(crew.active());
    }

    /** Everybody who left, by name. */
    List<Line> gone() {
        return lines(crew.all().stream().filter(person -> !person.active()).toList());
    }

    /** Everybody who works here, those first who were last at this tablet. */
    List<Line> atTablet(long deviceId) {
        List<Long> recent = signOns.lastAt(deviceId);
        List<Line> lines = new ArrayList<>(active());
        lines.sort(Comparator.comparingInt(line -> place(recent, line.person().id())));
        return lines;
    }

    Line of(Person person) {
        return lines(List.of(person)).get(0);
    }

    private List<Line> lines(List<Person> people) {
        Map<Long, List<Qualification>> held = qualifications.findAll().stream()
                .map(QualificationRow::sheet)
                .collect(Collectors.groupingBy(Qualification::personId));
        LocalDate today = settings.today();
        int warnDays = settings.whole("qualification.warn.days");
        return people.stream()
                .map(person -> new Line(
                        person,
                        RoleWords.all(person.roles()),
                        MayDo.of(held.getOrDefault(person.id(), List.of()), today, warnDays),
                        note(person.roles())))
                .toList();
    }

    private static int place(List<Long> recent, @Nullable Long id) {
        int place = recent.indexOf(id);
        return place < 0 ? Integer.MAX_VALUE : place;
    }

    private static String note(Set<Role> roles) {
        if (roles.equals(Set.of(Role.APPRENTICE))) {
            return "may tick, may not sign hold points";
        }
        return roles.equals(Set.of(Role.AUDITOR)) ? "reads only" : "";
    }
}
