package org.trammel.shop.travellers;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** What a worker does at a station: tick, take a tick back, break off and take up again. */
@Service
public class Bench {

    private static final String FRAME_AGAIN = "Open the frame again to see where it stands.";

    private final Locator locator;
    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final TickRepository ticks;
    private final SignatureRepository signatures;
    private final FrameClockRepository clocks;
    private final Ticking ticking;
    private final Progress progress;
    private final WindowWork windowWork;
    private final DoneSince doneSince;
    private final OpenAgain openAgain;
    private final Crewed crewed;
    private final Settings settings;
    private final ActLog log;
    private final Formats formats;

    Bench(
            Locator locator,
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            TickRepository ticks,
            SignatureRepository signatures,
            FrameClockRepository clocks,
            Ticking ticking,
            Progress progress,
            WindowWork windowWork,
            DoneSince doneSince,
            OpenAgain openAgain,
            Crewed crewed,
            Settings settings,
            ActLog log,
            Formats formats) {
        this.locator = locator;
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.ticks = ticks;
        this.signatures = signatures;
        this.clocks = clocks;
        this.ticking = ticking;
        this.progress = progress;
        this.windowWork = windowWork;
        this.doneSince = doneSince;
        this.openAgain = openAgain;
        this.crewed = crewed;
        this.settings = settings;
        this.log = log;
        this.formats = formats;
    }

    /**
     * Ticks a step, or the same step of several frames at once. Either all are ticked or none.
     *
     * @param lot code of the lot scanned, where the step asks for one
     * @param reason why the step is ticked before an earlier one, where it is
     */
    @Transactional
    public void tick(Act act, List<Long> stepIds, @Nullable String lot, @Nullable String reason) {
        List<Locator.Place> places = locator.ofSteps(stepIds);
        if (stepIds.isEmpty() || places.isEmpty()) {
            throw noSuch("step");
        }
        if (!log.opens(act, "tick", subject("step", stepIds), chains(places))) {
            return;
        }
        ticking.tick(act, stepIds, lot, reason);
    }

    /**
     * Takes a tick back by a record of its own. For two minutes the same person does it freely; later it needs a
     * reason; once a gate behind it is signed, or a later operation begun, it needs the QA lead.
     */
    @Transactional
    public void untick(Act act, long stepId, @Nullable String reason) {
        List<Locator.Place> places = locator.ofSteps(List.of(stepId));
        if (places.isEmpty()) {
            throw noSuch("step");
        }
        if (!log.opens(act, "untick", subject("step", List.of(stepId)), chains(places))) {
            return;
        }
        Person person = crewed.worker(act.by(), "Taking a tick back");
        Step step = steps.findById(stepId).orElseThrow(() -> noSuch("step"));
        Operation operation = operation(step);
        Traveller traveller = traveller(operation);
        traveller.requireOpen("worked on");
        if (!step.ticked()) {
            throw Refusal.stale("Step " + step.position() + " was not taken back.", "It is not ticked.", FRAME_AGAIN);
        }
        optional(reason, "The step was not taken back.");
        boolean passed = passed(traveller, operation);
        requireMayUntick(act, person, operation, step, passed, trimmed(reason));
        step.untick();
        ticks.save(new Tick(step, true, act, null, trimmed(reason)));
        log.event(traveller.chain(), "unticked", Map.of("step", step.id(), "operation", operation.id()));
        reopen(act, traveller, operation);
        if (!passed) {
            windowWork.judgeAgain(traveller, operation, step);
        }
        clocks.findByTravellerIdOrderById(traveller.id()).stream()
                .filter(FrameClock::running)
                .filter(c -> c.startedByStepId() == null
                        ? c.startedBy().equals(operation.code())
                        : c.startedByStepId() == step.id())
                .forEach(FrameClock::takeBack);
    }

    private void requireMayUntick(
            Act act, Person person, Operation operation, Step step, boolean passed, @Nullable String reason) {
        boolean own = step.tickedBy() != null && step.tickedBy() == person.id();
        boolean free =
                own && !act.at().isAfter(step.tickedAt().plus(Duration.ofMinutes(settings.whole("undo.free.minutes"))));
        if (!passed && free) {
            return;
        }
        if (passed && !person.is(Role.QA_LEAD)) {
            throw Refusal.person(
                    "Step " + step.position() + " cannot be taken back by " + person.name() + ".",
                    "The gate of operation " + operation.called() + " is signed, or a later operation has begun.",
                    "Call the QA lead, who can take it back with a reason.");
        }
        if (!passed && !own && !person.is(Role.QA_LEAD)) {
            throw Refusal.person(
                    "Step " + step.position() + " cannot be taken back by " + person.name() + ".",
                    "It was ticked by " + crewed.person(step.tickedBy()).name() + ".",
                    "Whoever ticked it takes it back, or the QA lead.");
        }
        if (reason == null) {
            throw Refusal.input(
                    "reason",
                    "Step " + step.position() + " cannot be taken back without a reason.",
                    "It was ticked at " + formats.time(step.tickedAt()) + "; the free "
                            + settings.whole("undo.free.minutes") + " minutes are over.",
                    "Say why it is taken back.");
        }
    }

    /** Whether its gate is signed, or the frame has gone on past it. */
    boolean passed(Traveller traveller, Operation operation) {
        return signed(operation) || doneSince.any(traveller, operation);
    }

    /** Whether somebody signed that it is done: at its gate, or when it was carried over from an older revision. */
    boolean signed(Operation operation) {
        return operation.carried()
                || signatures.findByOperationIdOrderById(operation.id()).stream()
                        .anyMatch(operation::counts);
    }

    /** Steps that want a qualification of their own, such as a penetrant test, are done again. */
    void untickQualified(Act act, Operation operation) {
        for (Step step : steps.findByOperationIdOrderByPosition(operation.id())) {
            if (step.ticked() && step.qualification() != null) {
                step.untick();
                ticks.save(new Tick(step, true, act, null, "the frame was cold-set since"));
            }
        }
    }

    /** Opens the operation again after something it was done by was taken back. */
    void reopen(Act act, Traveller traveller, Operation operation) {
        openAgain.open(act, traveller, operation);
    }

    /** Breaks the work off with a reason; it is taken up again by {@link #resume}. */
    @Transactional
    public void stop(Act act, long operationId, String reason) {
        onOperation(act, "stop", operationId, (traveller, operation) -> {
            crewed.worker(act.by(), "Breaking work off");
            operation.stop(required(reason, "reason", "The work cannot be broken off without a reason."));
            log.event(traveller.chain(), "work stopped", Map.of("operation", operation.id()));
        });
    }

    @Transactional
    public void resume(Act act, long operationId) {
        onOperation(act, "resume", operationId, (traveller, operation) -> {
            crewed.goingOn(act, operation, steps.findByOperationIdOrderByPosition(operation.id()));
            operation.resume();
            log.event(traveller.chain(), "work taken up", Map.of("operation", operation.id()));
            progress.settle(act, traveller, operation);
        });
    }

    /** Something done to one operation under the lock of its frame. */
    interface Deed {
        void on(Traveller traveller, Operation operation);
    }

    void onOperation(Act act, String kind, long operationId, Deed deed) {
        List<Locator.Place> places = locator.ofOperations(List.of(operationId));
        if (places.isEmpty()) {
            throw noSuch("operation");
        }
        if (!log.opens(act, kind, subject("operation", List.of(operationId)), chains(places))) {
            return;
        }
        Operation operation = operations.findById(operationId).orElseThrow(() -> noSuch("operation"));
        Traveller traveller = traveller(operation);
        traveller.requireOpen("worked on");
        deed.on(traveller, operation);
    }

    private Operation operation(Step step) {
        return operations.findById(step.operationId()).orElseThrow(() -> noSuch("operation"));
    }

    private Traveller traveller(Operation operation) {
        return travellers.findById(operation.travellerId()).orElseThrow(() -> noSuch("traveller"));
    }

    static Refusal noSuch(String thing) {
        return Refusal.missing(
                "Nothing was done.", "There is no such " + thing + ".", "Open the frame again from its tag.");
    }

    static String[] chains(List<Locator.Place> places) {
        return places.stream().map(Locator.Place::chain).toArray(String[]::new);
    }

    static String subject(String thing, List<Long> ids) {
        String all = ids.stream().sorted().map(String::valueOf).collect(Collectors.joining(","));
        return thing + ":" + (all.length() > 100 ? all.length() + "#" + all.hashCode() : all);
    }

    static @Nullable String trimmed(@Nullable String words) {
        return words == null || words.isBlank() ? null : words.strip();
    }

    static @Nullable String optional(@Nullable String words, String what) {
        return trimmed(words) == null ? null : required(words, "reason", what);
    }

    static String required(@Nullable String words, String field, String what) {
        String said = trimmed(words);
        if (said == null) {
            throw Refusal.input(field, what, "Nothing was said.", "Say it in a few words.");
        }
        return TypedText.words(field, "What was said", what, said, 1000);
    }
}
