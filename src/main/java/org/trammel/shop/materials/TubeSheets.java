package org.trammel.shop.materials;

import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;

/** Tells other sheets where there is one of tubes. */
@Service
public class TubeSheets {

    private final TubeIssueRepository issues;

    TubeSheets(TubeIssueRepository issues) {
        this.issues = issues;
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

    private static boolean tube(FrameSheet.StepLine step) {
        return step.proof() == Proof.TUBES || LotKind.TUBE.name().equals(step.lotKind());
    }
}
