package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Files;
import org.trammel.shop.records.StoredFile;
import org.trammel.shop.records.Words;
import org.trammel.shop.routes.Kinds;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.RouteSummary;

/** Reads what the sheets of a design show. */
@Service
@Transactional(readOnly = true)
class DesignReading {

    private static final String ANY_METAL = "ANY";

    private final DesignRevisionRepository revisions;
    private final GateEntryRepository entries;
    private final GateSignatureRepository signed;
    private final GateStand stand;
    private final DrawnNominals drawn;
    private final DesignNoteRepository notes;
    private final RevisionAct opening;
    private final RouteBook routes;
    private final Words words;
    private final Files files;
    private final Crew crew;

    DesignReading(
            DesignRevisionRepository revisions,
            GateEntryRepository entries,
            GateSignatureRepository signed,
            GateStand stand,
            DrawnNominals drawn,
            DesignNoteRepository notes,
            RevisionAct opening,
            RouteBook routes,
            Words words,
            Files files,
            Crew crew) {
        this.revisions = revisions;
        this.entries = entries;
        this.signed = signed;
        this.stand = stand;
        this.drawn = drawn;
        this.notes = notes;
        this.opening = opening;
        this.routes = routes;
        this.words = words;
        this.files = files;
        this.crew = crew;
    }

    /**
     * Everything of one revision.
     *
     * @param personal whether the reader may see what a customer told, such as the approver's name
     */
    RevisionStory story(long revisionId, boolean personal) {
        DesignRevision revision = opening.load(revisionId);
        List<RevisionSummary> all = revisions.ofDesign(revision.design().id()).stream()
                .map(DesignRevision::summary)
                .toList();
        Map<GateCheck, GateEntry> answered = entries.findByRevisionId(revisionId).stream()
                .collect(Collectors.toMap(GateEntry::check, Function.identity()));
        List<DesignNote> left = notes.findByRevisionIdOrderById(revisionId);
        Map<Long, String> said = said(all, answered.values(), left, personal);
        Map<Long, String> names = names();
        RouteSheet route = revision.routeRevisionId() == null ? null : routes.revision(revision.routeRevisionId());
        String drawing = revision.sheet().drawing();
        List<CharacteristicLine> lines = route == null
                ? List.of()
                : CharacteristicList.of(route, revision.nominals()).lines();
        Map<String, DrawnNominals.FromDrawing> fromDrawing =
                route == null ? Map.of() : this.drawn.of(lines, revision.sheet());
        return new RevisionStory(
                revision.summary(),
                revision.sheet(),
                all,
                said,
                names,
                route == null ? null : route.code() + " " + route.letter() + ", " + route.name(),
                lines,
                fromDrawing,
                Set.copyOf(revision.fromDrawing()),
                checks(answered, stand.figures(revision.sheet(), lines, fromDrawing), said, names, personal),
                signed.findByRevisionIdOrderById(revisionId).stream()
                        .map(one -> new RevisionStory.SignatureLine(
                                one.capacity(), names.getOrDefault(one.personId(), ""), one.signedAt()))
                        .toList(),
                left.stream()
                        .map(note -> new RevisionStory.NoteLine(
                                said.getOrDefault(note.noteWords(), ""),
                                names.getOrDefault(note.writtenBy(), ""),
                                note.writtenAt()))
                        .toList(),
                drawing == null ? null : drawing(drawing, revision.summary().drawingName()),
                revision.fitsItsDrawing());
    }

    /** Under the name it was added to this revision with: the same file may have come under another before. */
    private @Nullable StoredFile drawing(String sha256, @Nullable String name) {
        StoredFile file = files.find(sha256).orElse(null);
        return file == null || name == null ? file : file.named(name);
    }

    private Map<Long, String> said(
            List<RevisionSummary> all, Collection<GateEntry> answered, List<DesignNote> left, boolean personal) {
        List<Long> ids = new ArrayList<>();
        Stream.concat(
                        all.stream().flatMap(one -> Stream.of(one.reasonWords(), one.withdrawnWords())),
                        answered.stream().map(GateEntry::decisionWords))
                .filter(Objects::nonNull)
                .forEach(ids::add);
        left.forEach(note -> ids.add(note.noteWords()));
        if (personal) {
            all.stream()
                    .map(RevisionSummary::approverWords)
                    .filter(Objects::nonNull)
                    .forEach(ids::add);
        }
        Map<Long, String> texts = new HashMap<>();
        if (!ids.isEmpty()) {
            words.findAll(ids).forEach((id, kept) -> texts.put(id, kept.shown()));
        }
        return texts;
    }

    private static List<RevisionStory.CheckLine> checks(
            Map<GateCheck, GateEntry> answered,
            Map<GateCheck, CheckFigures> figures,
            Map<Long, String> said,
            Map<Long, String> names,
            boolean personal) {
        return Stream.of(GateCheck.values())
                .filter(figures::containsKey)
                .map(check -> line(
                        check, answered.get(check), Objects.requireNonNull(figures.get(check)), said, names, personal))
                .toList();
    }

    private static RevisionStory.CheckLine line(
            GateCheck check,
            @Nullable GateEntry entry,
            CheckFigures now,
            Map<Long, String> said,
            Map<Long, String> names,
            boolean personal) {
        Long decision = entry == null ? null : entry.decisionWords();
        return new RevisionStory.CheckLine(
                check,
                entry == null ? null : entry.answer(),
                decision == null ? null : said.get(decision),
                entry == null ? null : names.get(entry.answeredBy()),
                entry == null ? null : entry.answeredAt(),
                GateStand.counts(entry, now),
                now.red(),
                now.figures().stream()
                        .map(figure -> personal ? figure : figure.withoutTheRider())
                        .toList(),
                now.lacking(),
                now.cannot(),
                List.copyOf(check.takes(now)),
                entry == null ? List.of() : entry.figures());
    }

    private Map<Long, String> names() {
        return crew.names();
    }

    /** Released routes for a metal, by the id of their revision; the one chosen stays in the list. */
    Map<String, String> routesFor(DesignSheet sheet, @Nullable String chosenName) {
        Map<String, String> options = new LinkedHashMap<>();
        options.put("", "none yet");
        Long chosen = sheet.routeRevisionId();
        if (chosen != null && chosenName != null) {
            options.put(chosen.toString(), chosenName);
        }
        for (RouteSummary route : routes.routes()) {
            Long released = route.releasedRevisionId();
            boolean fits = route.metal().equals(sheet.metal()) || route.metal().equals(ANY_METAL);
            if (released != null && fits && !Kinds.NO_FRAMES.contains(route.kind())) {
                options.put(released.toString(), route.code() + " " + route.releasedLetter() + ", " + route.name());
            }
        }
        return options;
    }

    /** The drawing's content; empty if there is none or it was erased. */
    Optional<byte[]> drawing(StoredFile file) {
        return files.content(file.sha256());
    }
}
