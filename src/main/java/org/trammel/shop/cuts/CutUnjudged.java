package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.Opening;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Traces;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/**
 * Figures of a tube that no characteristic of the operation judges. They are held against the limits by which the traveller
 * judges such a figure elsewhere, else against what the shop allows; beyond that the gate stays shut until a nonconformance is
 * decided. Within it they are kept, and said to be judged by nobody.
 */
@Component
class CutUnjudged {

    private static final CutTubes.Drawn NOTHING_MISSING = new CutTubes.Drawn(List.of(), List.of(), List.of());

    private final CutTurn turn;
    private final Travellers travellers;
    private final Traces traces;
    private final Opening opening;
    private final NonconformanceReads reads;
    private final Settings settings;
    private final Formats formats;

    CutUnjudged(
            CutTurn turn,
            Travellers travellers,
            Traces traces,
            Opening opening,
            NonconformanceReads reads,
            Settings settings,
            Formats formats) {
        this.turn = turn;
        this.travellers = travellers;
        this.traces = traces;
        this.opening = opening;
        this.reads = reads;
        this.settings = settings;
        this.formats = formats;
    }

    /** One figure of a tube. The cut has that figure and no other of its kind. */
    private record Figure(CutFigure kind, String called, String measured, BigDecimal off, Cut only) {}

    /** What of a tube nobody judges. */
    record Told(List<String> names, List<String> beyond) {}

    /** By the code of the piece; those all of whose figures are judged are left out. */
    Map<String, Told> of(FrameSheet.Head head, long operationId, String operationCode, Collection<Cut> cuts) {
        Map<String, Told> told = new LinkedHashMap<>();
        if (cuts.isEmpty()) {
            return told;
        }
        List<FrameSheet.CharacteristicLine> here = turn.records(operationId, operationCode)
                ? travellers.operation(operationId).characteristics()
                : List.of();
        CutTubes.Drawn drawn = turn.drawn(head, operationId, operationCode);
        List<FrameSheet.CharacteristicLine> elsewhere = null;
        for (Cut cut : cuts) {
            Told of = new Told(new ArrayList<>(), new ArrayList<>());
            for (Figure figure : figures(cut)) {
                if (here.stream().anyMatch(one -> judges(one, figure, drawn))) {
                    continue;
                }
                elsewhere = elsewhere == null ? ofTraveller(head) : elsewhere;
                of.names().add(figure.called());
                if (beyond(figure, elsewhere)) {
                    of.beyond().add(figure.measured());
                }
            }
            if (!of.names().isEmpty()) {
                told.put(cut.piece(), of);
            }
        }
        return told;
    }

    private List<FrameSheet.CharacteristicLine> ofTraveller(FrameSheet.Head head) {
        return traces.operationsOf(head.travellerId()).stream()
                .filter(one -> travellers.headOf(one).travellerId() == head.travellerId())
                .flatMap(one -> travellers.operation(one).characteristics().stream())
                .toList();
    }

    private static boolean judges(FrameSheet.CharacteristicLine one, Figure figure, CutTubes.Drawn drawn) {
        return (one.blind() || one.lowerLimit() != null || one.upperLimit() != null)
                && CutAsked.of(one.name(), one.unit())
                        .filter(asked -> asked.figure() == figure.kind()
                                && CutGives.given(asked, drawn)
                                && !asked.of(List.of(figure.only())).isEmpty())
                        .isPresent();
    }

    private boolean beyond(Figure figure, List<FrameSheet.CharacteristicLine> elsewhere) {
        List<FrameSheet.CharacteristicLine> limits = elsewhere.stream()
                .filter(one -> !one.blind() && judges(one, figure, NOTHING_MISSING))
                .toList();
        return limits.isEmpty()
                ? figure.off().compareTo(settings.number(figure.kind().allowed())) > 0
                : limits.stream()
                        .anyMatch(one -> CutGives.outside(
                                one,
                                CutAsked.of(one.name(), one.unit())
                                        .orElseThrow()
                                        .of(List.of(figure.only()))));
    }

    private List<Figure> figures(Cut cut) {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure(
                CutFigure.LENGTH,
                "blank",
                "blank " + formats.number(cut.blank_mm(), 2) + " mm of " + formats.number(cut.wanted_mm(), 2),
                cut.off_mm().abs(),
                cut.with(List.of())));
        for (Cut.End end : cut.ends()) {
            Cut only = cut.with(List.of(end));
            figures.add(new Figure(
                    CutFigure.ANGLE,
                    "angle to the " + end.mate(),
                    "angle to the " + end.mate() + " " + formats.number(end.angle_deg(), 2) + "° of "
                            + formats.number(end.wanted_deg(), 2),
                    end.angle_deg().subtract(end.wanted_deg()).abs(),
                    only));
            figures.add(new Figure(
                    CutFigure.WALL,
                    "wall at the " + end.mate(),
                    "wall at the " + end.mate() + " " + formats.number(end.wall_mm(), 3) + " mm of "
                            + formats.number(end.wantedWall_mm(), 3),
                    end.wall_mm().subtract(end.wantedWall_mm()).abs(),
                    only));
            figures.add(new Figure(
                    CutFigure.GAP,
                    "gap at the " + end.mate(),
                    "gap at the " + end.mate() + " " + formats.number(end.worst_mm(), 2) + " mm",
                    end.worst_mm(),
                    only));
        }
        if (cut.phase_deg() != null) {
            figures.add(new Figure(
                    CutFigure.PHASE,
                    "phase",
                    "phase off by " + formats.number(cut.phase_deg(), 2) + "°",
                    cut.phase_deg().abs(),
                    cut.with(List.of())));
        }
        return figures;
    }

    /** Opens a nonconformance about a tube that was recorded just now, where something of it lies beyond. */
    void found(Act act, CutTurn.At at, Cut cut) {
        long operation = at.line().operationId();
        Told told = of(at.head(), operation, at.line().code(), List.of(cut)).get(cut.piece());
        if (told != null && !told.beyond().isEmpty()) {
            opening.ofRecord(act, at.head().travellerId(), operation, sentence(cut, told));
        }
    }

    /** Names the record, so that a decision about it speaks for no other. */
    private String sentence(Cut cut, Told told) {
        return "The " + cut.called() + ", measured " + formats.moment(cut.at())
                + ", lies beyond what is allowed, and no characteristic here judges it: "
                + String.join(", ", told.beyond()) + ".";
    }

    /** The first of these whose figures lie beyond, unless a concession that has not ended lets them stay; as a sentence. */
    Optional<String> holding(FrameSheet.Head head, long operationId, String operationCode, Collection<Cut> cuts) {
        Map<String, Told> told = of(head, operationId, operationCode, cuts);
        return cuts.stream()
                .filter(cut -> told.containsKey(cut.piece())
                        && !told.get(cut.piece()).beyond().isEmpty())
                .map(cut -> sentence(cut, told.get(cut.piece())))
                .filter(sentence -> !conceded(head, operationId, sentence))
                .findFirst();
    }

    private boolean conceded(FrameSheet.Head head, long operationId, String sentence) {
        LocalDate today = settings.today();
        return reads.of(head.serial()).stream()
                .anyMatch(one -> one.operationId() == operationId
                        && one.words().equals(sentence)
                        && one.decision() == Decision.CONCESSION
                        && one.decidedAt() != null
                        && one.expiresOn() != null
                        && !one.expiresOn().isBefore(today));
    }
}
