package org.trammel.shop.inspection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Traces;

/** What was judged again after a gauge was found wrong, and what came of each frame. */
@Service
public class Rejudgements {

    private final RejudgementRepository rejudgements;
    private final Rejudging rejudging;
    private final RejudgedFrameRepository frames;
    private final RejudgedReadingRepository judged;
    private final ReadingRepository readings;
    private final Traces traces;
    private final StandingReadings standing;
    private final Holds holds;
    private final Crew crew;
    private final ActLog log;
    private final Lock judging = new ReentrantLock();

    Rejudgements(
            RejudgementRepository rejudgements,
            Rejudging rejudging,
            RejudgedFrameRepository frames,
            RejudgedReadingRepository judged,
            ReadingRepository readings,
            Traces traces,
            StandingReadings standing,
            Holds holds,
            Crew crew,
            ActLog log) {
        this.rejudgements = rejudgements;
        this.rejudging = rejudging;
        this.frames = frames;
        this.judged = judged;
        this.readings = readings;
        this.traces = traces;
        this.standing = standing;
        this.holds = holds;
        this.crew = crew;
        this.log = log;
    }

    /** Judges whatever is not judged to its end, portion after portion. What it is cut off in is gone on with later. */
    public void judgeToTheEnd() {
        // Two at once would do each portion twice, one of them for nothing.
        judging.lock();
        try {
            for (long id : rejudgements.beingJudged()) {
                boolean more = true;
                while (more) {
                    more = rejudging.goOn(id);
                }
            }
        } finally {
            judging.unlock();
        }
    }

    /** Those that are not closed, oldest first. */
    @Transactional(readOnly = true)
    public List<RejudgementLine> open() {
        return lines(rejudgements.open());
    }

    /** A page of all, newest first. */
    @Transactional(readOnly = true)
    public List<RejudgementLine> page(long before, int size) {
        return lines(rejudgements.findByIdLessThanOrderByIdDesc(before, Limit.of(Math.min(Math.max(size, 1), 200))));
    }

    @Transactional(readOnly = true)
    public RejudgementLine one(long id) {
        return lines(List.of(required(id))).get(0);
    }

    private List<RejudgementLine> lines(List<Rejudgement> found) {
        Map<Long, RejudgementRepository.Counted> counts = found.isEmpty()
                ? Map.of()
                : rejudgements.framesOf(found.stream().map(Rejudgement::id).toList()).stream()
                        .collect(Collectors.toMap(RejudgementRepository.Counted::getId, Function.identity()));
        return found.stream()
                .map(one -> {
                    RejudgementRepository.Counted count = counts.get(one.id());
                    return count == null ? one.line(0, 0) : one.line((int) count.getFrames(), (int) count.getWaiting());
                })
                .toList();
    }

    private Rejudgement required(long id) {
        return rejudgements
                .findById(id)
                .orElseThrow(() -> Refusal.missing(
                        "The re-judgement was not found.",
                        "There is none with the number " + Rejudgement.number(id) + ".",
                        "Choose one from the list."));
    }

    /** Frames of a re-judgement: those that wait for a result first, the worst of them first. */
    @Transactional(readOnly = true)
    public List<RejudgedFrameLine> frames(long id, int from, int size) {
        required(id);
        return frames.page(id, from, size).stream().map(RejudgedFrame::line).toList();
    }

    /** Readings of a re-judgement: those in doubt first, by frame. */
    @Transactional(readOnly = true)
    public List<RejudgedLine> readings(long id, int from, int size) {
        required(id);
        return withFigures(judged.page(id, from, size));
    }

    private List<RejudgedLine> withFigures(List<RejudgedReading> page) {
        List<Long> ids = page.stream().map(RejudgedReading::readingId).toList();
        Map<Long, Reading> figures =
                readings.findAllById(ids).stream().collect(Collectors.toMap(Reading::id, Function.identity()));
        Set<Long> left = stillInDoubt(page);
        Map<Long, String> tags = tags(page);
        return page.stream()
                .map(one -> {
                    Reading read = figures.get(one.readingId());
                    return RejudgedLine.of(one, read, tags.get(read.travellerId()), left.contains(one.readingId()));
                })
                .toList();
    }

    /** Tags of what is in the shop, by traveller. */
    private Map<Long, String> tags(List<RejudgedReading> page) {
        Set<String> serials = page.stream()
                .filter(RejudgedReading::inDoubt)
                .map(RejudgedReading::serial)
                .collect(Collectors.toSet());
        return traces.heads(serials).values().stream()
                .flatMap(List::stream)
                .filter(head -> head.state().open())
                .collect(Collectors.toMap(FrameSheet.Head::travellerId, FrameSheet.Head::tag));
    }

    /** Of readings that were in doubt those that nothing was read in the place of. */
    private Set<Long> stillInDoubt(Collection<RejudgedReading> page) {
        List<Long> doubtful = page.stream()
                .filter(RejudgedReading::inDoubt)
                .map(RejudgedReading::readingId)
                .toList();
        return doubtful.isEmpty() ? Set.of() : standing.of(readings.findAllById(doubtful));
    }

    /**
     * Says what came of a frame that was not cleared; its hold is lifted with it.
     *
     * @param words what was found, done or told; needed
     * @throws Refusal while readings of it wait to be measured again, if that is the result
     */
    @Transactional
    public void settle(Act act, long id, String serial, FrameResult result, String words) {
        String not = "The frame was not given its result.";
        if (!log.opens(
                act,
                "settle frame of re-judgement",
                "rejudgement:" + id + " frame:" + serial,
                Chains.bearing(serial),
                Chains.SHOP)) {
            return;
        }
        Rejudgement rejudgement = required(id);
        rejudgement.requireState(RejudgementState.OPEN, "settled");
        RejudgedFrame frame = frames.findByRejudgementIdAndSerial(id, serial)
                .orElseThrow(() -> Refusal.missing(
                        not,
                        serial + " was not measured with " + rejudgement.gaugeCode() + ".",
                        "Choose one of the list."));
        String said = TypedText.words("words", "What was found", not, words);
        boolean outside = frame.outcome() == FrameOutcome.CONTACT_OWNER;
        if (result == FrameResult.MEASURED_AGAIN) {
            requireMeasured(id, serial, outside, not);
        }
        if (result == FrameResult.OWNER_CONTACTED && !outside) {
            throw Refusal.input(
                    "result",
                    not,
                    "The frame was in the shop when it was judged again.",
                    "Measure it again, or say how it was decided.");
        }
        frame.settle(act, result, said);
        if (holds.liftFor(act, serial, rejudgement.number(), result.word() + ": " + said) == 0) {
            crew.require(act.by(), not, Role.QA_LEAD);
        }
        log.event(
                Chains.bearing(serial),
                "frame of re-judgement settled",
                Map.of("rejudgement", id, "result", result.name()));
    }

    private void requireMeasured(long id, String serial, boolean outside, String not) {
        if (outside) {
            throw Refusal.input(
                    "result",
                    not,
                    "The frame has left the shop, so nothing can be read on it here.",
                    "Contact its owner, or say how it was decided.");
        }
        List<RejudgedReading> ofFrame = judged.findByRejudgementIdAndSerialOrderByPlaceAscReadingIdAsc(id, serial);
        Set<Long> left = stillInDoubt(ofFrame);
        if (!left.isEmpty()) {
            String codes = readings.findAllById(left).stream()
                    .map(Reading::characteristicCode)
                    .sorted()
                    .distinct()
                    .collect(Collectors.joining(", "));
            throw Refusal.state(
                    not,
                    "Nothing was read yet in the place of " + codes + ".",
                    "Read them again with another gauge: correct the reading on the frame's sheet.");
        }
    }

    /** Closes a re-judgement whose every frame is cleared or has its result. */
    @Transactional
    public RejudgementLine close(Act act, long id, @Nullable String words) {
        if (!log.opens(act, "close re-judgement", "rejudgement:" + id, Chains.SHOP)) {
            return one(id);
        }
        Rejudgement rejudgement = required(id);
        String not = rejudgement.number() + " is not closed.";
        crew.require(act.by(), not, Role.QA_LEAD);
        rejudgement.requireState(RejudgementState.OPEN, "closed");
        int waiting = one(id).waiting();
        if (waiting > 0) {
            List<String> first = new ArrayList<>();
            frames.page(id, 0, 3).forEach(frame -> first.add(frame.serial()));
            throw Refusal.state(
                    not,
                    waiting + (waiting == 1 ? " frame has" : " frames have") + " no result yet, "
                            + String.join(", ", first.subList(0, Math.min(waiting, first.size()))) + " among them.",
                    "Give each frame its result first.");
        }
        rejudgement.close(act, TypedText.wordsOrNone("words", "Words", not, words));
        log.event(Chains.SHOP, "rejudgement-closed", Map.of("rejudgement", id));
        return one(id);
    }
}
