package org.trammel.shop.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.Words;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Traces;

/** What was judged again after a gauge was found wrong, and what came of each frame. */
@Service
public class Rejudgements {

    private static final Logger LOG = LoggerFactory.getLogger(Rejudgements.class);

    private final RejudgementRepository rejudgements;
    private final Rejudging rejudging;
    private final RejudgedFrameRepository frames;
    private final RejudgedReadingRepository judged;
    private final ReadingRepository readings;
    private final Traces traces;
    private final InDoubt inDoubt;
    private final RejudgedFrameLines frameLines;
    private final Words texts;
    private final RejudgedWords words;
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
            InDoubt inDoubt,
            RejudgedFrameLines frameLines,
            Words texts,
            RejudgedWords words,
            Crew crew,
            ActLog log) {
        this.rejudgements = rejudgements;
        this.rejudging = rejudging;
        this.frames = frames;
        this.judged = judged;
        this.readings = readings;
        this.traces = traces;
        this.inDoubt = inDoubt;
        this.frameLines = frameLines;
        this.texts = texts;
        this.words = words;
        this.crew = crew;
        this.log = log;
    }

    /**
     * Judges whatever is not judged to its end, portion after portion. What it is cut off in is gone on with later, and
     * one that cannot be gone on with keeps none of the others waiting.
     *
     * @throws RuntimeException what the first of those failed with, after all were tried
     */
    public void judgeToTheEnd() {
        // Two at once would do each portion twice, one of them for nothing.
        judging.lock();
        try {
            RuntimeException stuck = null;
            for (long id : rejudgements.beingJudged()) {
                try {
                    toTheEnd(id);
                } catch (RuntimeException e) {
                    stuck = stuck == null ? e : stuck;
                    LOG.warn("{} is not judged to its end yet", Rejudgement.number(id), e);
                }
            }
            if (stuck != null) {
                throw stuck;
            }
        } finally {
            judging.unlock();
        }
    }

    private void toTheEnd(long id) {
        boolean more = true;
        while (more) {
            more = rejudging.goOn(id);
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
        List<Long> said = found.stream()
                .map(Rejudgement::closedWordsId)
                .filter(Objects::nonNull)
                .toList();
        Map<Long, KeptWords> closing = said.isEmpty() ? Map.of() : texts.findAll(said);
        return found.stream()
                .map(one -> {
                    RejudgementRepository.Counted count = counts.get(one.id());
                    KeptWords words = one.closedWordsId() == null ? null : closing.get(one.closedWordsId());
                    String shown = words == null ? null : words.shown();
                    return count == null
                            ? one.line(0, 0, shown)
                            : one.line((int) count.getFrames(), (int) count.getWaiting(), shown);
                })
                .toList();
    }

    private Rejudgement required(long id) {
        return Rejudgement.in(rejudgements, id);
    }

    /** Frames of a re-judgement: those that wait for a result first, the worst of them first. */
    @Transactional(readOnly = true)
    public List<RejudgedFrameLine> frames(long id, int from, int size) {
        required(id);
        return frameLines.of(id, frames.page(id, from, size));
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
        Set<Long> left = inDoubt.left(page);
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

    /** Closes a re-judgement whose every frame is cleared or has its result. */
    @Transactional
    public RejudgementLine close(Act act, long id, @Nullable String typed) {
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
        String said = TypedText.wordsOrNone("words", "Words", not, typed);
        rejudgement.close(
                act,
                said == null
                        ? null
                        : words.keep(Chains.SHOP, id, "CLOSING", said).id());
        log.event(Chains.SHOP, "rejudgement-closed", Map.of("rejudgement", id));
        return one(id);
    }
}
