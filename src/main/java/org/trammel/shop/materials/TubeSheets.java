package org.trammel.shop.materials;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;

/** Tells other sheets where there is one of tubes. */
@Service
public class TubeSheets {

    private final TubeIssueRepository issues;
    private final LotUseRepository uses;

    TubeSheets(TubeIssueRepository issues, LotUseRepository uses) {
        this.issues = issues;
        this.uses = uses;
    }

    /**
     * The operation at hand, where tubes are issued or scanned, or where something is in the way and a place asks for another
     * tube.
     */
    @Transactional(readOnly = true)
    public Optional<Long> at(FrameSheet sheet) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        return at != null
                        && (at.steps().stream().anyMatch(TubeSheets::tube)
                                || !sheet.inTheWay().isEmpty()
                                        && issues.asksForAnother(
                                                sheet.head().serial(),
                                                sheet.head().part()))
                ? Optional.of(at.line().operationId())
                : Optional.empty();
    }

    /** Since when the tube that stands at each place of a frame, or of a part of it, was issued, by the code of the place. */
    @Transactional(readOnly = true)
    public Map<String, Instant> issuedAt(String serial, String part) {
        return issues.standing(serial, part).stream()
                .collect(Collectors.toMap(TubeIssued::place, TubeIssued::at, (first, last) -> last));
    }

    /**
     * When tubes of a frame, or of a part of it, were scrapped that had been issued to no place of their own, oldest first:
     * which of its tubes each was is not on record.
     */
    @Transactional(readOnly = true)
    public List<Instant> scrappedWithoutPlace(String serial, String part) {
        return uses.madeOf(serial).stream()
                .filter(made -> made.kind() == LotKind.TUBE
                        && made.place() == null
                        && made.missing()
                        && made.part().equals(part))
                .map(MadeOf::scrappedAt)
                .filter(Objects::nonNull)
                .sorted()
                .toList();
    }

    private static boolean tube(FrameSheet.StepLine step) {
        return step.proof() == Proof.TUBES || LotKind.TUBE.name().equals(step.lotKind());
    }
}
