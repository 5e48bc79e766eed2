package org.trammel.shop.travellers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.LapsedWork;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SeenAs;
import org.trammel.shop.people.Standing;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/**
 * The one override there is: the QA lead lets a welder do one operation of one frame although the six months since the
 * last confirmation have run out. It never reaches a qualification that has expired, was taken back or was never held,
 * never the QA lead's own work, and never a gauge, a clock, a hold or a revision.
 */
@Service
public class ConfirmationOverrides implements LapsedWork {

    private final Bench bench;
    private final StoryQueries queries;
    private final StepRepository steps;
    private final ConfirmationOverrideRepository overrides;
    private final Crewed crewed;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    ConfirmationOverrides(
            Bench bench,
            StoryQueries queries,
            StepRepository steps,
            ConfirmationOverrideRepository overrides,
            Crewed crewed,
            Crew crew,
            Settings settings,
            ActLog log) {
        this.bench = bench;
        this.queries = queries;
        this.steps = steps;
        this.overrides = overrides;
        this.crewed = crewed;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    /** Somebody whose confirmation of what an operation asks for has run out. */
    public record Lapsed(long personId, String name, String qualification, LocalDate lapsedOn) {}

    /** Everybody at work here whose confirmation of what the operation asks for has run out and was not overridden. */
    @Transactional(readOnly = true)
    public List<Lapsed> lapsedFor(FrameSheet.OperationSheetOfFrame at) {
        List<Lapsed> found = new ArrayList<>();
        for (String kind : kinds(at.line().operationId(), at.qualification())) {
            for (Person person : crew.active()) {
                lapsed(person, kind, at.line().operationId()).ifPresent(found::add);
            }
        }
        return found;
    }

    /** Where one person stands in the way of themself at an operation; null if they do not. */
    @Transactional(readOnly = true)
    public @Nullable Lapsed lapsed(long personId, FrameSheet.OperationSheetOfFrame at) {
        String kind = at.qualification();
        return !overridable(kind)
                ? null
                : lapsed(crew.byId(personId), kind, at.line().operationId()).orElse(null);
    }

    /** Whether somebody's lapsed confirmation of a kind was overridden for an operation. */
    @Transactional(readOnly = true)
    public boolean given(long operationId, long personId, String kind) {
        return overrides.existsByOperationIdAndPersonIdAndQualification(operationId, personId, kind);
    }

    private Optional<Lapsed> lapsed(Person person, String kind, long operationId) {
        Standing standing = crew.standing(person.id(), kind, settings.today());
        LocalDate until = standing.until();
        return standing.state() != Standing.State.CONFIRMATION_LAPSED
                        || until == null
                        || !person.mayWork()
                        || overrides.existsByOperationIdAndPersonIdAndQualification(operationId, person.id(), kind)
                ? Optional.empty()
                : Optional.of(new Lapsed(person.id(), person.name(), kind, until));
    }

    /** What was given at these operations. */
    @Transactional(readOnly = true)
    public List<FrameStory.Unconfirmed> at(Collection<Long> operationIds) {
        List<ConfirmationOverride> given = overrides.findByOperationIdInOrderById(operationIds);
        return given.isEmpty()
                ? List.of()
                : given.stream()
                        .map(one -> FrameStories.unconfirmed(
                                one,
                                queries.operations(List.of(one.operationId())).get(0)))
                        .toList();
    }

    /**
     * Lets a welder do the operation. The caller has checked the giver's own PIN at this moment.
     *
     * @param qualification what the operation asks for and the welder holds unconfirmed
     * @param giverId the QA lead, who is not that welder
     * @param reason kept on the frame's record and printed with it
     */
    @Transactional
    public void give(
            Act act, long operationId, long welderId, String qualification, long giverId, @Nullable String reason) {
        bench.onOperation(act, "override confirmation", operationId, (traveller, operation) -> {
            String deed = "The confirmation was not overridden.";
            Person giver = crewed.holding(giverId, Role.QA_LEAD, "Overriding a confirmation");
            Person welder = crewed.worker(welderId, "Welding");
            if (giver.id() == welder.id()) {
                throw Refusal.person(
                        deed,
                        giver.initials() + " would do it for themself.",
                        "Let somebody qualified do the work, or have another QA lead look at it.");
            }
            if (!operation.state().equals(OperationState.WAITING)
                    && !operation.state().equals(OperationState.IN_WORK)
                    && !operation.state().equals(OperationState.STOPPED)) {
                throw Refusal.state(
                        deed,
                        "Operation " + operation.called() + " of " + traveller.mark() + " is "
                                + operation.state().word() + ".",
                        "Only work still to be done can be let go on.");
            }
            Standing standing = requireLapsed(act, operation, welder, qualification, deed);
            String said = Bench.required(reason, "reason", deed);
            overrides.save(new ConfirmationOverride(act, operationId, welderId, standing, giver, said));
            log.event(
                    traveller.chain(),
                    "confirmation overridden",
                    Map.of(
                            "operation",
                            operationId,
                            "welder",
                            welderId,
                            "qualification",
                            qualification,
                            "lapsed",
                            String.valueOf(standing.until()),
                            "by",
                            giverId));
        });
    }

    private Standing requireLapsed(Act act, Operation operation, Person welder, String qualification, String deed) {
        if (!kinds(operation.id(), operation.qualification()).contains(qualification)) {
            throw Refusal.input(
                    "qualification",
                    deed,
                    "Operation " + operation.called() + " does not ask for " + qualification
                            + " of a welder or brazer.",
                    "Only what the operation asks of its welder can be overridden.");
        }
        Standing standing = crew.standing(welder.id(), qualification, settings.dayOf(act.at()));
        String holds = qualification + " of " + welder.initials();
        switch (standing.state()) {
            case CONFIRMATION_LAPSED -> {
                if (overrides.existsByOperationIdAndPersonIdAndQualification(
                        operation.id(), welder.id(), qualification)) {
                    throw Refusal.stale(
                            deed, "It was overridden for this operation before.", "Open the frame again and go on.");
                }
            }
            case VALID ->
                throw Refusal.state(deed, holds + " is valid.", "Nothing needs to be done: the work is open to them.");
            case EXPIRED, ENDED, NOT_HELD ->
                throw Refusal.person(
                        deed,
                        switch (standing.state()) {
                            case EXPIRED -> holds + " expired on " + standing.until() + ".";
                            case ENDED -> holds + " was taken back.";
                            default -> welder.initials() + " does not hold " + qualification + ".";
                        },
                        "Only a confirmation can be overridden, never a qualification. Let somebody qualified do it.");
        }
        return standing;
    }

    private Set<String> kinds(long operationId, @Nullable String ofOperation) {
        Set<String> kinds = new LinkedHashSet<>();
        if (overridable(ofOperation)) {
            kinds.add(ofOperation);
        }
        steps.findByOperationIdOrderByPosition(operationId).stream()
                .map(Step::qualification)
                .filter(Objects::nonNull)
                .filter(ConfirmationOverrides::overridable)
                .forEach(kinds::add);
        return kinds;
    }

    /** Welders and brazers are those whose work a confirmation is about. */
    private static boolean overridable(@Nullable String kind) {
        return kind != null && (kind.startsWith("WELD") || kind.startsWith("BRAZE"));
    }

    @Override
    @Transactional(readOnly = true)
    public List<Line> of(long personId) {
        List<ConfirmationOverride> given = overrides.findByPersonIdOrderByIdDesc(personId);
        if (given.isEmpty()) {
            return List.of();
        }
        Map<Long, Operation> at =
                queries
                        .operations(given.stream()
                                .map(ConfirmationOverride::operationId)
                                .toList())
                        .stream()
                        .collect(Collectors.toMap(Operation::id, Function.identity()));
        Map<Long, Traveller> of = queries
                .travellers(at.values().stream().map(Operation::travellerId).toList())
                .stream()
                .collect(Collectors.toMap(Traveller::id, Function.identity()));
        return given.stream()
                .map(one -> line(
                        one,
                        at.get(one.operationId()),
                        of.get(at.get(one.operationId()).travellerId())))
                .toList();
    }

    private Line line(ConfirmationOverride one, Operation operation, Traveller traveller) {
        return new Line(
                traveller.serial(),
                traveller.mark(),
                operation.called(),
                one.qualification(),
                one.lapsedOn(),
                SeenAs.hidden() ? crewed.person(one.givenBy()).initials() : one.givenName(),
                one.at(),
                one.reason());
    }
}
