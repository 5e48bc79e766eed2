package org.trammel.shop.drift;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.inspection.PreSetReadings;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.stations.Jig;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Pieces;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/** In which jig frames and their parts were set up. */
@Service
public class JigUses {

    private final JigUseRepository uses;
    private final Travellers travellers;
    private final Stations stations;
    private final Pieces pieces;
    private final DriftCharts charts;
    private final JigCalls calls;
    private final PreSetReadings readings;
    private final HasCome hasCome;
    private final Crew crew;
    private final ActLog log;

    JigUses(
            JigUseRepository uses,
            Travellers travellers,
            Stations stations,
            Pieces pieces,
            DriftCharts charts,
            JigCalls calls,
            PreSetReadings readings,
            HasCome hasCome,
            Crew crew,
            ActLog log) {
        this.uses = uses;
        this.travellers = travellers;
        this.stations = stations;
        this.pieces = pieces;
        this.charts = charts;
        this.calls = calls;
        this.readings = readings;
        this.hasCome = hasCome;
        this.crew = crew;
        this.log = log;
    }

    /** The jig a piece was last set up in, also under an older revision. */
    @Transactional(readOnly = true)
    public Optional<String> of(long travellerId) {
        return uses.findFirstByTravellerIdInOrderByIdDesc(pieces.same(travellerId))
                .map(JigUseRow::jigCode);
    }

    /**
     * A frame or part of one and the jig it was set up in.
     *
     * @param part empty for the whole frame
     * @param jig empty if none was noted
     */
    public record Piece(String part, String jig) {}

    /** The pieces of a frame. */
    @Transactional(readOnly = true)
    public List<Piece> pieces(String serial) {
        travellers.inForce(serial, "");
        return travellers.heads(serial).stream()
                .filter(head -> head.state() != TravellerState.WITHDRAWN)
                .map(head -> new Piece(head.part(), of(head.travellerId()).orElse("")))
                .toList();
    }

    /**
     * Notes that a frame, or a part of one, is set up in a jig; said again it corrects what was said before. Where it was
     * read already, its readings count on that jig's charts from now on; that takes the QA lead and a reason where they stand
     * on another jig's.
     *
     * @param part empty for the whole frame
     */
    @Transactional
    public void setUp(Act act, String serial, String part, String jigCode, @Nullable String reason) {
        FrameSheet.Head head = travellers.inForce(serial, part);
        if (!log.opens(act, "set-up-in-jig", "traveller:" + head.travellerId(), Chains.bearing(head.serial()))) {
            return;
        }
        String not = "The jig was not noted.";
        Person person = crew.byId(act.by());
        if (!person.mayWork()) {
            throw Refusal.person(not, person.initials() + " reads here, and does no work.", "Let the welder note it.");
        }
        Jig jig = stations.jig(jigCode)
                .orElseThrow(
                        () -> Refusal.input("jig", not, "There is no jig " + jigCode + ".", "Choose one of the list."));
        if (jig.stopped()) {
            throw Refusal.state(
                    not,
                    "Jig " + jig.code() + " is stopped.",
                    "Set the frame up in another one, or call the QA lead, who frees it after a check.");
        }
        JigUseRow use = uses.save(
                new JigUseRow(act, head, jig.code(), moved(person, head.travellerId(), jig.code(), reason, not)));
        log.event(
                Chains.bearing(head.serial()),
                "set up in a jig",
                Map.of("traveller", use.travellerId(), "jig", use.jigCode()));
        calls.changed(act, head.travellerId(), null, charts.watched());
        if (head.currentOperationId() != null) {
            hasCome.to(act, head.currentOperationId());
        }
    }

    /** @return why its readings move to another jig's charts; null where they do not */
    private @Nullable String moved(Person person, long travellerId, String jig, @Nullable String reason, String not) {
        String before = of(travellerId).orElse(jig);
        List<String> codes =
                charts.watched().stream().map(Series::code).distinct().toList();
        if (before.equals(jig) || readings.of(codes, pieces.same(travellerId)).isEmpty()) {
            return null;
        }
        if (!person.is(Role.QA_LEAD)) {
            throw Refusal.person(
                    not,
                    "It was read as set up in jig " + before + ", and its readings stand on the charts of that jig.",
                    "Call the QA lead, who notes another one with a reason.");
        }
        return TypedText.words("reason", "The reason", not, reason, 1000);
    }
}
