package org.trammel.shop.travellers;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Files;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.StoredFile;
import org.trammel.shop.records.TypedText;

/** What is said and shown beside the work: notes, photographs, and calls for somebody to look. */
@Service
public class Remarks {

    private static final int LONGEST_NOTE = 4000;

    private final Locator locator;
    private final NoteRepository notes;
    private final PhotoRepository photos;
    private final ShopCallRepository calls;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final Files files;
    private final Crewed crewed;
    private final ActLog log;

    Remarks(
            Locator locator,
            NoteRepository notes,
            PhotoRepository photos,
            ShopCallRepository calls,
            OperationRepository operations,
            StepRepository steps,
            Files files,
            Crewed crewed,
            ActLog log) {
        this.locator = locator;
        this.notes = notes;
        this.photos = photos;
        this.calls = calls;
        this.operations = operations;
        this.steps = steps;
        this.files = files;
        this.crewed = crewed;
        this.log = log;
    }

    /** Leaves a note "different on this one" for everybody who works on the frame. */
    @Transactional
    public void note(Act act, long travellerId, @Nullable Long operationId, String words) {
        List<Locator.Place> places = locator.ofTraveller(travellerId);
        if (places.isEmpty()) {
            throw Bench.noSuch("traveller");
        }
        if (!log.opens(act, "note", "traveller:" + travellerId, Bench.chains(places))) {
            return;
        }
        crewed.worker(act.by(), "Leaving a note");
        requireOf(travellerId, operationId, "The note was not kept.");
        String said = said(words);
        Note note = notes.save(new Note(travellerId, operationId, said, act.by(), act.at()));
        log.event(places.get(0).chain(), "note left", Map.of("note", note.id(), "traveller", travellerId));
    }

    private static String said(String words) {
        String deed = "The note was not kept.";
        String said = Bench.trimmed(words);
        if (said == null) {
            throw Refusal.input("words", deed, "Nothing was written.", "Write what is different on this frame.");
        }
        if (said.length() > LONGEST_NOTE) {
            throw Refusal.input(
                    "words",
                    deed,
                    "It has " + said.length() + " characters; " + LONGEST_NOTE + " are kept at most.",
                    "Shorten it by " + (said.length() - LONGEST_NOTE) + ", or write it as two notes.");
        }
        return TypedText.words("words", "The note", deed, said, LONGEST_NOTE);
    }

    private void requireOf(@Nullable Long travellerId, @Nullable Long operationId, String deed) {
        if (operationId != null
                && operations
                        .findById(operationId)
                        .filter(o -> travellerId != null && o.travellerId() == travellerId)
                        .isEmpty()) {
            throw Refusal.input(
                    "operation",
                    deed,
                    "The operation it names is not one of this frame's traveller.",
                    "Open the frame again and write it there.");
        }
    }

    /** A picture as it was sent: its bytes, the kind the sender says it is, and its name there. */
    public record Sent(byte[] content, String mediaType, String name) {}

    /** Adds a photograph to a step; the picture is kept in the same transaction. */
    @Transactional
    public void photo(Act act, long stepId, Sent picture) {
        photo(
                act,
                stepId,
                () -> files.keep(picture.content(), picture.mediaType(), picture.name())
                        .sha256());
    }

    /**
     * Adds a photograph to a step.
     *
     * @param sha256 of the file, which the caller has kept before
     */
    @Transactional
    public void photo(Act act, long stepId, String sha256) {
        photo(act, stepId, () -> sha256);
    }

    private void photo(Act act, long stepId, Supplier<String> kept) {
        List<Locator.Place> places = locator.ofSteps(List.of(stepId));
        if (places.isEmpty()) {
            throw Bench.noSuch("step");
        }
        if (!log.opens(act, "photo", "step:" + stepId, Bench.chains(places))) {
            return;
        }
        crewed.worker(act.by(), "Adding a photograph");
        Step step = steps.findById(stepId).orElseThrow(() -> Bench.noSuch("step"));
        Operation operation = operations.findById(step.operationId()).orElseThrow();
        String sha256 = kept.get();
        if (files.find(sha256).filter(StoredFile::isImage).isEmpty()) {
            throw Refusal.input(
                    "file",
                    "The photograph was not kept.",
                    "What was sent is not a picture.",
                    "Take a photograph, JPEG or PNG, and send that.");
        }
        photos.save(new Photo(operation.travellerId(), operation.id(), stepId, sha256, act.by(), act.at()));
        log.event(places.get(0).chain(), "photograph added", Map.of("step", stepId, "sha256", sha256));
    }

    /** Asks for somebody to look; without a frame, at the station as such. */
    @Transactional
    public void call(Act act, @Nullable Long travellerId, @Nullable Long operationId, String words) {
        List<Locator.Place> places = travellerId == null ? List.of() : locator.ofTraveller(travellerId);
        if (travellerId != null && places.isEmpty()) {
            throw Bench.noSuch("traveller");
        }
        String chain = places.isEmpty() ? Chains.SHOP : places.get(0).chain();
        if (!log.opens(act, "call", "traveller:" + travellerId, chain)) {
            return;
        }
        crewed.worker(act.by(), "Calling");
        requireOf(travellerId, operationId, "Nobody was called.");
        ShopCall call = calls.save(new ShopCall(
                travellerId, operationId, Bench.required(words, "words", "Nobody was called."), act.by(), act.at()));
        log.event(chain, "called", Map.of("call", call.id()));
    }

    /** Raises a call inside an act that is open. */
    @Transactional
    public void callWithin(Act act, @Nullable Long travellerId, @Nullable Long operationId, String words) {
        calls.save(new ShopCall(travellerId, operationId, words, act.by(), act.at()));
    }

    @Transactional
    public void answer(Act act, long callId, String words) {
        ShopCall found = calls.findById(callId).orElseThrow(() -> Bench.noSuch("call"));
        List<Locator.Place> places = found.travellerId() == null ? List.of() : locator.ofTraveller(found.travellerId());
        String chain = places.isEmpty() ? Chains.SHOP : places.get(0).chain();
        if (!log.opens(act, "answer call", "call:" + callId, chain)) {
            return;
        }
        Person person = crewed.worker(act.by(), "Answering a call");
        found.answer(person.id(), act.at(), Bench.required(words, "words", "The call was not answered."));
        log.event(chain, "call answered", Map.of("call", callId));
    }
}
