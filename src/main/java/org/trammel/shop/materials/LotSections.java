package org.trammel.shop.materials;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.HasCome;

/** Which sections of tube lie in a lot. A set of tubes that came with one certificate is one lot of several. */
@Service
public class LotSections {

    private static final int MOST = 40;

    private final LotRepository lots;
    private final LotSectionRepository rows;
    private final TubeDoubts doubts;
    private final HasCome hasCome;
    private final Crew crew;
    private final ActLog log;

    LotSections(
            LotRepository lots, LotSectionRepository rows, TubeDoubts doubts, HasCome hasCome, Crew crew, ActLog log) {
        this.lots = lots;
        this.rows = rows;
        this.doubts = doubts;
        this.hasCome = hasCome;
        this.crew = crew;
        this.log = log;
    }

    /** As they were stated last; empty where nobody stated any. */
    @Transactional(readOnly = true)
    public List<Section> of(long lotId) {
        List<LotSectionRow> all = rows.findByLotIdOrderByStatementDescIdAsc(lotId);
        return all.stream()
                .filter(row -> row.statement() == all.get(0).statement())
                .map(LotSectionRow::section)
                .toList();
    }

    /**
     * States all sections of a lot; what was stated before no longer stands. Anybody at work may while the lot is
     * quarantined, so that the QA lead sees them before it is released; later the QA lead alone. Frames in which a
     * tube of it stands that is another than its place asks for are held in the same act.
     */
    @Transactional
    public void state(Act act, String code, List<Section> sections) {
        String label = LotRegister.label(code);
        String not = "The sections of " + label + " were not recorded.";
        List<Long> waiting = doubts.waitingFor(label);
        String[] chains = Stream.concat(
                        Stream.of(Chains.SHOP),
                        lots.findByCode(label).map(row -> doubts.chains(row.id())).stream()
                                .flatMap(Stream::of))
                .toArray(String[]::new);
        if (!hasCome.opens(act, "state-sections", "lot:" + label, waiting, chains)) {
            return;
        }
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(
                    not, "Only people at work in the shop handle lots.", "Let somebody of the crew do it.");
        }
        LotRow row = lots.lock(label).orElseThrow(() -> Lots.unknown(label));
        if (!row.kind().metallic()) {
            throw Refusal.input(
                    "lot", not, label + " is " + row.kind().word() + ", not a tube.", "Read the code on the tube.");
        }
        if (row.state() != LotState.QUARANTINED) {
            crew.require(act.by(), not, Role.QA_LEAD);
        }
        if (sections.isEmpty() || sections.size() > MOST) {
            throw Refusal.input(
                    "sections",
                    not,
                    sections.isEmpty() ? "No section was entered." : "A lot has " + MOST + " sections at most.",
                    "Write each on a line of its own, such as 42 × 1,4.");
        }
        sections.forEach(section -> section.refuseUnlessTube(not));
        Map<Long, String> doubted = doubts.of(row.id());
        List<LotSectionRow> before = rows.findByLotIdOrderByStatementDescIdAsc(row.id());
        int statement = before.isEmpty() ? 1 : before.get(0).statement() + 1;
        sections.stream()
                .distinct()
                .forEach(section -> rows.save(new LotSectionRow(row.id(), statement, section, act)));
        log.event(
                Chains.SHOP,
                "sections-stated",
                Map.of("lot", row.id(), "code", label, "statement", statement, "sections", facts(sections)));
        doubts.hold(act, row, doubted);
        if (!doubts.of(row.id()).keySet().containsAll(doubted.keySet())) {
            waiting.forEach(operation -> hasCome.to(act, operation));
        }
    }

    private static List<String> facts(List<Section> sections) {
        return sections.stream()
                .distinct()
                .map(section -> section.outside_mm().toPlainString() + " x "
                        + section.walls().stream()
                                .map(java.math.BigDecimal::toPlainString)
                                .collect(java.util.stream.Collectors.joining("/")))
                .toList();
    }
}
