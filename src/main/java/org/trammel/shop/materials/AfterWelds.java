package org.trammel.shop.materials;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/**
 * What becomes of the welds of a frame: by the operations of its own route, or used as welded where the QA lead signed so. A
 * route that names neither says nothing, and the frame is judged as the shop usually treats its metal.
 */
@Service
public class AfterWelds {

    private final AsWeldedRepository rows;
    private final Travellers travellers;
    private final Settings settings;
    private final Crew crew;
    private final ActLog log;

    AfterWelds(AsWeldedRepository rows, Travellers travellers, Settings settings, Crew crew, ActLog log) {
        this.rows = rows;
        this.travellers = travellers;
        this.settings = settings;
        this.crew = crew;
        this.log = log;
    }

    /** A frame whose welds are used as they are. */
    public record AsWelded(String serial, String reason, long by, Instant at) {}

    @Transactional(readOnly = true)
    public List<AsWelded> signed() {
        return rows.findAllByOrderByIdDesc().stream().map(AsWeldedRow::asWelded).toList();
    }

    /** Signs that a frame is used as welded, in whatever form its serial was typed. */
    @Transactional
    public AsWelded sign(Act act, String typed, String reason) {
        String deed = "It was not signed.";
        String serial = FramePlaces.read(typed).frame().stored();
        if (!log.opens(act, "sign-used-as-welded", "frame:" + serial, Chains.frame(serial))) {
            return rows.findBySerial(serial).orElseThrow().asWelded();
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        if (travellers.heads(serial).isEmpty()) {
            throw Refusal.input(
                    "serial", deed, "There is no traveller of " + serial + ".", "Scan the tag of the frame.");
        }
        if (rows.findBySerial(serial).isPresent()) {
            throw Refusal.state(deed, "It is signed already for " + serial + ".", "Nothing needs to be done.");
        }
        AsWelded signed = rows.saveAndFlush(
                        new AsWeldedRow(serial, TypedText.words("reason", "Reason", deed, reason), act))
                .asWelded();
        log.event(Chains.frame(serial), "used-as-welded-signed", Map.of("by", act.by()));
        return signed;
    }

    /**
     * What becomes of the welds at a place.
     *
     * @param why the fact it was read from, as part of a sentence
     */
    record Found(Fit.AfterWeld after, String why) {}

    Found of(Destination to) {
        Fit.AfterWeld usual = Fit.AfterWeld.usual(to.metal());
        if (MetalFamily.of(to.metal()) != MetalFamily.ALUMINIUM) {
            return new Found(usual, "usual for the metal");
        }
        if (rows.findBySerial(to.serial()).isPresent()) {
            return new Found(Fit.AfterWeld.NONE, "signed by the QA lead");
        }
        List<String> codes = codes(to);
        List<String> solution = named("weld.solution.operations", codes);
        List<String> ageing = named("weld.ageing.operations", codes);
        if (solution.isEmpty() && ageing.isEmpty()) {
            return new Found(usual, "usual for the metal");
        }
        String route = "its route holds "
                + String.join(
                        ", ",
                        java.util.stream.Stream.concat(solution.stream(), ageing.stream())
                                .toList());
        return new Found(solution.isEmpty() ? Fit.AfterWeld.AGE : Fit.AfterWeld.SOLUTION_AGE, route);
    }

    private List<String> named(String setting, List<String> codes) {
        Set<String> wanted = Set.of(settings.text(setting).strip().split("\\s+"));
        return codes.stream().filter(wanted::contains).distinct().toList();
    }

    /** Codes of the operations of the piece in force, or of the newest there is. */
    private List<String> codes(Destination to) {
        List<FrameSheet.Head> all = travellers.heads(to.serial()).stream()
                .filter(head -> head.part().equals(to.part()))
                .toList();
        return all.stream()
                .filter(head -> head.state() != TravellerState.WITHDRAWN)
                .reduce((first, last) -> last)
                .or(() -> all.stream().reduce((first, last) -> last))
                .map(head -> travellers.strips(List.of(head.travellerId())).getOrDefault(head.travellerId(), List.of()))
                .orElse(List.of())
                .stream()
                .map(FrameSheet.OperationLine::code)
                .toList();
    }
}
