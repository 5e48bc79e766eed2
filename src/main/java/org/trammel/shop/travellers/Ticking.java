package org.trammel.shop.travellers;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.web.Formats;

/** Ticks steps under the lock of their frames: what may stand in the way, what it issues, what it starts. */
@Component
class Ticking {

    private final StepRepository steps;
    private final TickRepository ticks;
    private final FrameClockRepository clocks;
    private final PhotoRepository photos;
    private final Progress progress;
    private final Gate gate;
    private final SecondLook secondLook;
    private final WindowWork windowWork;
    private final StruckAnew struckAnew;
    private final Crewed crewed;
    private final ActLog log;
    private final Formats formats;
    private final ObjectProvider<MaterialIssue> materials;

    Ticking(
            StepRepository steps,
            TickRepository ticks,
            FrameClockRepository clocks,
            PhotoRepository photos,
            Progress progress,
            Gate gate,
            SecondLook secondLook,
            WindowWork windowWork,
            StruckAnew struckAnew,
            Crewed crewed,
            ActLog log,
            Formats formats,
            ObjectProvider<MaterialIssue> materials) {
        this.steps = steps;
        this.ticks = ticks;
        this.clocks = clocks;
        this.photos = photos;
        this.progress = progress;
        this.gate = gate;
        this.secondLook = secondLook;
        this.windowWork = windowWork;
        this.struckAnew = struckAnew;
        this.crewed = crewed;
        this.log = log;
        this.formats = formats;
        this.materials = materials;
    }

    /** Ticks all of the steps, or refuses them all. */
    void tick(Act act, List<Long> stepIds, @Nullable String lot, @Nullable String reason) {
        Person person = crewed.worker(act.by(), "Ticking a step");
        List<Chosen> chosen = stepIds.stream().distinct().map(this::chosen).toList();
        if (chosen.size() > 1) {
            requireTogether(chosen);
        }
        for (Chosen one : chosen) {
            tickOne(act, person, one, Bench.trimmed(lot), Bench.optional(reason, "The step was not ticked."));
        }
    }

    /** A step to tick, with what it belongs to and all steps of its operation. */
    private record Chosen(Step step, Operation operation, Traveller traveller, List<Step> all) {}

    private Chosen chosen(long stepId) {
        List<StepRepository.InItsPlace> all = steps.besides(stepId);
        StepRepository.InItsPlace one = all.stream()
                .filter(other -> other.step().id() == stepId)
                .findFirst()
                .orElseThrow(() -> Bench.noSuch("step"));
        return new Chosen(
                one.step(),
                one.operation(),
                one.traveller(),
                all.stream().map(StepRepository.InItsPlace::step).toList());
    }

    private void requireTogether(List<Chosen> chosen) {
        String text = chosen.get(0).step().text();
        for (Chosen one : chosen) {
            Step step = one.step();
            Operation operation = one.operation();
            if (!operation.together() || !step.text().equals(text)) {
                throw Refusal.state(
                        "These steps cannot be ticked together.",
                        "The route lets operation " + operation.called()
                                + (operation.together()
                                        ? " be ticked for several frames, but the steps differ: " + text + " and "
                                                + step.text() + "."
                                        : " be ticked for one frame at a time only."),
                        "Tick them one frame after the other.");
            }
        }
    }

    private void tickOne(Act act, Person person, Chosen one, @Nullable String lot, @Nullable String reason) {
        Step step = one.step();
        Operation operation = one.operation();
        Traveller traveller = one.traveller();
        traveller.requireOpen("worked on");
        if (step.ticked()) {
            throw Refusal.stale(
                    "Step " + step.position() + ", " + step.text() + ", was not ticked again.",
                    "It was ticked at " + formats.time(step.tickedAt()) + " by "
                            + crewed.person(step.tickedBy()).name() + ".",
                    "If it was done twice, leave a note; if the tick is wrong, take it back.");
        }
        progress.begin(act, traveller, operation);
        operation.requireAt("worked on", OperationState.IN_WORK);
        Gate.refuseFirst(gate.earlier(traveller, operation));
        crewed.mayTick(person, step, operation, act.at());
        List<Step> all = one.all();
        windowWork.requireSet(
                traveller, operation, "Step " + step.position() + ", " + step.text() + ", was not ticked.", act.at());
        List<FrameClock> windows = windowWork.toMeet(traveller, operation, all, act.at());
        requireOrder(all, step, reason);
        secondLook.requireApart(operation, step, all, person);
        gate.requireOpenTo(traveller, operation, step, all, act.by());
        if (step.photo() && !photos.existsByStepId(step.id())) {
            throw Refusal.state(
                    "Step " + step.position() + ", " + step.text() + ", cannot be ticked.",
                    "It asks for a photograph and there is none.",
                    "Take the photograph, then tick.");
        }
        if (step.lotKind() != null) {
            issue(act, traveller, operation, step, lot);
        }
        step.tick(act.by(), act.at());
        ticks.save(new Tick(step, false, act, step.lotKind() == null ? null : lot, reason));
        log.event(
                traveller.chain(),
                "ticked",
                Map.of("step", step.id(), "operation", operation.id(), "part", traveller.part()));
        if (step.proof() == Proof.SERIAL_STRUCK) {
            struckAnew.readAgain(act, traveller);
        }
        WindowWork.meet(windows, all);
        startClock(act, traveller, step);
        progress.ticked(act, traveller, operation, all);
    }

    private static void requireOrder(List<Step> all, Step step, @Nullable String reason) {
        List<Step> before = all.stream()
                .filter(s -> s.position() < step.position() && !s.ticked())
                .toList();
        if (!before.isEmpty() && reason == null) {
            throw Refusal.ask(
                    "reason",
                    "Step " + step.position() + ", " + step.text() + ", cannot be ticked yet.",
                    "Step " + before.get(0).position() + ", " + before.get(0).text() + ", comes before it.",
                    "Tick that one first, or say why the order is another one this time.");
        }
    }

    private void issue(Act act, Traveller traveller, Operation operation, Step step, @Nullable String lot) {
        if (lot == null) {
            throw Refusal.input(
                    "lot",
                    "Step " + step.position() + ", " + step.text() + ", cannot be ticked.",
                    "It asks for a lot (" + step.lotKind().toLowerCase(Locale.ROOT) + ") and none was scanned.",
                    "Scan the label of the lot, or type its code.");
        }
        materials
                .getObject()
                .issue(
                        act,
                        lot,
                        step.lotKind(),
                        new MaterialIssue.Use(
                                traveller.serial(),
                                traveller.part(),
                                traveller.metal(),
                                operation.code(),
                                Objects.requireNonNullElse(operation.startedAt(), act.at()),
                                step.text()));
    }

    private void startClock(Act act, Traveller traveller, Step step) {
        if (step.startsClock() == null) {
            return;
        }
        clocks.findByTravellerIdOrderById(traveller.id()).stream()
                .filter(c -> c.code().equals(step.startsClock()))
                .forEach(c -> progress.start(act, traveller, c, step.id()));
    }
}
