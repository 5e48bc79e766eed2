package org.trammel.shop.alignment;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;

/**
 * The second reading of what two people read, each for themselves. It rests on figures of its own: whoever has it reduced,
 * a figure of the first reading would only be judged once more.
 */
@Component
class SecondOfTwo {

    private final FigureGiverRepository givers;
    private final Crew crew;

    SecondOfTwo(FigureGiverRepository givers, Crew crew) {
        this.givers = givers;
        this.crew = crew;
    }

    /** Whether the next reading of a characteristic is that of the second person. */
    static boolean wanted(FrameSheet.CharacteristicLine line) {
        return line.secondPerson() && line.state() == CharacteristicState.FIRST_READ;
    }

    /** Whether nobody who had a hand in the first reading has one in what is reduced now. */
    boolean independent(Act act, ReadingLine first, List<RawLine> used) {
        Set<Long> theirs = people(first);
        return !theirs.contains(act.by())
                && used.stream().map(RawLine::personId).noneMatch(theirs::contains);
    }

    /** The same as a refusal that says whose figures they are. */
    void require(Act act, FrameSheet.CharacteristicLine line, ReadingLine first, List<RawLine> used) {
        if (independent(act, first, used)) {
            return;
        }
        Set<Long> theirs = people(first);
        long shared =
                used.stream().filter(one -> theirs.contains(one.personId())).count();
        String who = String.join(
                " and ",
                theirs.stream().map(id -> crew.byId(id).initials()).sorted().toList());
        throw Refusal.person(
                line.code() + ", " + line.name() + ", is not judged a second time from figures of the first.",
                "Two people read it, each for themselves; "
                        + (shared > 0
                                ? shared + " of the " + used.size() + " figures were read by " + who
                                        + ", who gave the first reading."
                                : "you had a hand in the first reading."),
                "Let somebody else begin a turn anew, read every figure, and have it judged.");
    }

    private Set<Long> people(ReadingLine first) {
        Set<Long> people = new HashSet<>(Set.of(first.personId()));
        Long reduction = first.reductionId();
        if (reduction != null) {
            people.addAll(givers.peopleOf(List.of(reduction)));
        }
        return people;
    }
}
