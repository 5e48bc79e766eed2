package org.trammel.shop.cuts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Traces;
import org.trammel.shop.travellers.Travellers;

/** One act on the cuts of a frame: the frame locked, the operation looked at, and who may. */
@Component
class CutTurn {

    private final HasCome hasCome;
    private final Travellers travellers;
    private final CutTubes tubes;
    private final HoleSaws saws;
    private final CutRecords records;
    private final Traces traces;
    private final CutRepository cuts;
    private final Settings settings;
    private final Crew crew;

    CutTurn(
            HasCome hasCome,
            Travellers travellers,
            CutTubes tubes,
            HoleSaws saws,
            CutRecords records,
            Traces traces,
            CutRepository cuts,
            Settings settings,
            Crew crew) {
        this.hasCome = hasCome;
        this.travellers = travellers;
        this.tubes = tubes;
        this.saws = saws;
        this.records = records;
        this.traces = traces;
        this.cuts = cuts;
        this.settings = settings;
        this.crew = crew;
    }

    /** The frame, and the pieces that its drawing asks for. */
    record At(FrameSheet.Head head, FrameSheet.OperationLine line, List<CutTubes.Piece> pieces) {}

    /** @return false if the act was carried out before */
    boolean opens(Act act, String kind, long operationId) {
        return hasCome.opens(act, kind, "operation:" + operationId, List.of(operationId));
    }

    void come(Act act, long operationId) {
        hasCome.to(act, operationId);
    }

    /**
     * Whether every tube is measured at an operation: by the setting, and as soon as the shop keeps hole saws. Once a tube was
     * measured there it stays so, whatever becomes of the saws.
     */
    boolean records(long operationId, String operationCode) {
        return named(operationCode) && (saws.kept() || cuts.existsByOperationId(operationId));
    }

    /** Whether the setting names operations of that code. */
    boolean named(String operationCode) {
        return Arrays.stream(settings.text("cut.operations").split(";"))
                .map(String::strip)
                .anyMatch(operationCode::equals);
    }

    /**
     * What is measured at an operation: every piece where cuts are recorded, elsewhere those whose tube is another one than
     * was measured. Empty where the drawing computes none.
     */
    List<CutTubes.Piece> pieces(FrameSheet.Head head, long operationId, String operationCode) {
        Long revision = head.designRevisionId();
        if (revision == null) {
            return List.of();
        }
        if (records(operationId, operationCode)) {
            return tubes.of(revision, head.kind());
        }
        // A tube that was issued for a loop is cut there, and measured there.
        Set<String> replaced = traces.comes(head.travellerId(), this::named) ? Set.of() : records.replaced(head);
        return replaced.isEmpty()
                ? List.of()
                : tubes.of(revision, head.kind()).stream()
                        .filter(piece -> replaced.contains(piece.code()))
                        .toList();
    }

    /** Tubes that were scrapped since, issued to no place, and whose like was not measured: asked for here, not earlier. */
    int owed(FrameSheet.Head head, long operationId, String operationCode) {
        return records(operationId, operationCode) || !traces.comes(head.travellerId(), this::named)
                ? records.owed(head)
                : 0;
    }

    /** Tubes that are cut at an operation and that the drawing does not compute: what asks of all stays keyed there. */
    CutTubes.Drawn drawn(FrameSheet.Head head, long operationId, String operationCode) {
        Long revision = head.designRevisionId();
        return revision == null || !records(operationId, operationCode)
                ? new CutTubes.Drawn(List.of(), List.of(), List.of())
                : tubes.drawn(revision, head.kind());
    }

    /** The operation as it is read, also after it is done. */
    At of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        FrameSheet.OperationLine line = travellers.operation(operationId).line();
        List<CutTubes.Piece> pieces = new ArrayList<>(pieces(head, operationId, line.code()));
        Long revision = head.designRevisionId();
        if (revision != null && !records(operationId, line.code())) {
            Set<String> here = records.newest(head, operationId).keySet();
            boolean any = owed(head, operationId, line.code()) > 0;
            tubes.of(revision, head.kind()).stream()
                    .filter(piece -> (any || here.contains(piece.code())) && !pieces.contains(piece))
                    .forEach(pieces::add);
        }
        if (pieces.isEmpty()) {
            throw Refusal.missing(
                    "There is no sheet of cuts.",
                    "No tube is cut by its drawing at operation " + line.code() + "."
                            + drawn(head, operationId, line.code()).why().stream()
                                    .map(why -> " " + why)
                                    .collect(Collectors.joining()),
                    "Go back to the frame. The QA lead says in the settings where cuts are recorded.");
        }
        return new At(head, line, pieces);
    }

    /** Refuses unless the frame stands at the operation and the person works here. A hold stops no measuring. */
    At atHand(Act act, long operationId, String deed) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here does it.");
        }
        At at = of(operationId);
        String stands = at.head().currentCode();
        if (!stands(at)) {
            throw Refusal.state(
                    deed,
                    at.head().mark() + " does not stand at operation "
                            + at.line().code() + ": "
                            + (stands == null || !at.head().state().open()
                                    ? "it is " + at.head().state().word() + "."
                                    : "it stands at " + stands + "."),
                    "Open the frame again to see where it stands.");
        }
        return at;
    }

    /** Whether the frame stands at the operation now. */
    static boolean stands(At at) {
        @Nullable Long current = at.head().currentOperationId();
        return at.head().state().open()
                && current != null
                && current == at.line().operationId();
    }
}
