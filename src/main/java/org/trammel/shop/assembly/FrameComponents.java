package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.OwnSheets;
import org.trammel.shop.travellers.Travellers;

/** The components of a frame. Their fasteners are its list of torques; what they answer of the route is not read by hand. */
@Service
public class FrameComponents {

    static final String TORQUE = "TORQUE";

    private final PartRepository rows;
    private final Components components;
    private final TorqueRepository torques;
    private final Travellers travellers;
    private final OwnSheets ownSheets;
    private final HasCome hasCome;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    FrameComponents(
            PartRepository rows,
            Components components,
            TorqueRepository torques,
            Travellers travellers,
            OwnSheets ownSheets,
            HasCome hasCome,
            Crew crew,
            Settings settings,
            ActLog log) {
        this.rows = rows;
        this.components = components;
        this.torques = torques;
        this.travellers = travellers;
        this.ownSheets = ownSheets;
        this.hasCome = hasCome;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    /** The components of a frame or of one part of it, in the order they were given. */
    @Transactional(readOnly = true)
    public List<FramePart> of(String serial, String part) {
        return whole(rows.findBySerialOrderById(serial).stream()
                .filter(row -> row.standing() && row.part().equals(part))
                .toList());
    }

    /** Every component a frame ever had, those taken off too. */
    @Transactional(readOnly = true)
    public List<FramePart> everOf(String serial) {
        return whole(rows.findBySerialOrderById(serial));
    }

    /** Whether a frame has any, in one statement. */
    boolean any(String serial) {
        return rows.findBySerialOrderById(serial).stream().anyMatch(PartRow::standing);
    }

    private List<FramePart> whole(List<PartRow> list) {
        Map<Long, Component> sheets =
                components.byIds(list.stream().map(PartRow::sheetId).collect(Collectors.toSet()));
        return list.stream().map(row -> row.part(sheets.get(row.sheetId()))).toList();
    }

    /**
     * Gives a frame a component by the revision in force of its sheet.
     *
     * @param place where on the frame; where the route asks for several places it names one of them, or is empty where the
     *     component's sheet says that it has all of them
     */
    @Transactional
    public FramePart give(Act act, long travellerId, String typed, @Nullable String place) {
        String deed = "The component was not given.";
        FrameSheet.Head head = travellers.head(travellerId);
        if (!hasCome.opens(
                act, "give-component", "traveller:" + travellerId, List.of(), Chains.bearing(head.serial()))) {
            return last(head);
        }
        requireMay(act, deed);
        Component sheet = components.of(typed).stream()
                .filter(Component::inForce)
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "component",
                        deed,
                        "The sheet of " + Components.label(typed) + " is not in force.",
                        "QA lead or owner put it in force first."));
        FrameSheet.OperationSheetOfFrame at = open(travellers.head(travellerId), sheet, deed);
        String where = TypedText.lineOrNone("place", "The place", deed, place, 60);
        requirePlace(sheet, at, where, deed);
        requireClampedWithin(head, sheet, deed);
        PartRow row =
                rows.saveAndFlush(new PartRow(head.serial(), head.part(), sheet.id(), where == null ? "" : where, act));
        log.event(
                Chains.bearing(head.serial()),
                "component-given",
                Map.of("part", row.id(), "component", sheet.id(), "called", sheet.called()));
        settle(act, head, sheet.operation());
        return row.part(sheet);
    }

    private FramePart last(FrameSheet.Head head) {
        List<FramePart> all = everOf(head.serial());
        return all.get(all.size() - 1);
    }

    /** Takes a component off the list; what was recorded of it stays. */
    @Transactional
    public void remove(Act act, long partId, @Nullable String words) {
        String deed = "The component was not taken off.";
        PartRow seen = rows.findById(partId)
                .orElseThrow(() -> Refusal.missing(deed, "It is on no list.", "Open the list of the frame again."));
        if (!hasCome.opens(act, "remove-component", "part:" + partId, List.of(), Chains.bearing(seen.serial()))) {
            return;
        }
        requireMay(act, deed);
        PartRow row = rows.findById(partId).orElseThrow();
        FramePart part = whole(List.of(row)).get(0);
        FrameSheet.Head head = travellers.inForce(row.serial(), row.part());
        open(head, part.component(), deed);
        row.remove(act, TypedText.line("words", "The reason", deed, words, 400));
        rows.saveAndFlush(row);
        log.event(
                Chains.bearing(row.serial()),
                "component-taken-off",
                Map.of("part", partId, "component", part.component().id()));
        settle(act, head, part.component().operation());
    }

    /** Whoever answers for how a bicycle is built: owner, QA lead, or who is authorised for torque. */
    private void requireMay(Act act, String deed) {
        Person person = crew.byId(act.by());
        boolean may = person.isAny(Role.OWNER, Role.QA_LEAD)
                || person.maySign() && crew.qualified(person.id(), TORQUE, settings.dayOf(act.at()));
        if (!may) {
            throw Refusal.person(
                    deed,
                    person.name() + " is neither owner nor QA lead, and not authorised for torque.",
                    "One of them says which components a frame has.");
        }
    }

    /** The operation in which a component is fitted; the list is closed once that is done. */
    private FrameSheet.OperationSheetOfFrame open(FrameSheet.Head head, Component sheet, String deed) {
        if (!head.state().open()) {
            throw Refusal.state(
                    deed, head.mark() + " is " + head.state().word() + ".", "Look at it in the story of the frame.");
        }
        List<FrameSheet.OperationSheetOfFrame> all = travellers.whole(head.travellerId()).stream()
                .filter(one -> one.line().code().equals(sheet.operation()))
                .toList();
        if (all.isEmpty()) {
            throw Refusal.input(
                    "component",
                    deed,
                    "The route of " + head.mark() + " has no operation " + sheet.operation() + ", in which "
                            + sheet.called() + " is fitted.",
                    "Write a revision of its sheet for an operation of this route.");
        }
        return all.stream()
                .filter(one -> open(one.line().state()))
                .findFirst()
                .orElseThrow(() -> Refusal.state(
                        deed,
                        "Operation " + sheet.operation() + " of " + head.mark() + " is done.",
                        "The QA lead opens it again by a decision; then the list is open too."));
    }

    /** Bolts of an operation that is done are asked for no more: a part that allows less than they were given is refused. */
    private void requireClampedWithin(FrameSheet.Head head, Component sheet, String deed) {
        BigDecimal most = sheet.clampedMost_Nm();
        if (most == null) {
            return;
        }
        Set<String> open = travellers.whole(head.travellerId()).stream()
                .map(FrameSheet.OperationSheetOfFrame::line)
                .filter(line -> open(line.state()))
                .map(FrameSheet.OperationLine::code)
                .collect(Collectors.toSet());
        for (FramePart part : of(head.serial(), head.part())) {
            for (Fastener fastener : part.component().fasteners()) {
                BigDecimal given = fastener.clamps() == sheet.kind()
                                && !open.contains(part.component().operation())
                        ? given(part, fastener)
                        : null;
                if (given != null && given.compareTo(most) > 0) {
                    throw Refusal.state(
                            deed,
                            fastener.name() + " of " + part.called() + " clamps it and was torqued at operation "
                                    + part.component().operation() + ", which is done, for up to "
                                    + NewFastener.plain(given) + " N·m; " + sheet.called() + " allows "
                                    + NewFastener.plain(most) + " N·m.",
                            "The QA lead opens that operation again by a decision; then it is given and the bolts are"
                                    + " torqued within what it allows. Or take a part that allows as much.");
                }
            }
        }
    }

    /** The greatest torque that the newest bolts of a fastener were allowed; its own sheet's where none is on record. */
    private BigDecimal given(FramePart part, Fastener fastener) {
        List<TorqueRow> all = torques.findByPartIdOrderById(part.id()).stream()
                .filter(row -> row.key().fastenerId() == fastener.id())
                .toList();
        if (all.isEmpty()) {
            return fastener.most_Nm();
        }
        TorqueRow last = all.get(all.size() - 1);
        return all.stream()
                .filter(row -> row.operationId() == last.operationId()
                        && row.bolt().round() == last.bolt().round())
                .map(row -> row.bolt().most_Nm())
                .max(BigDecimal::compareTo)
                .orElseThrow();
    }

    private static boolean open(OperationState state) {
        return state != OperationState.DONE && state != OperationState.REPEATED;
    }

    private static void requirePlace(
            Component sheet, FrameSheet.OperationSheetOfFrame at, @Nullable String place, String deed) {
        for (FrameSheet.CharacteristicLine c : at.characteristics()) {
            boolean there = place == null ? inEveryPlace(sheet, c) : c.points().contains(place);
            if (c.points().size() > 1 && answers(sheet, c) && !there) {
                throw Refusal.input(
                        "place",
                        deed,
                        c.code() + ", " + c.name() + ", has the places " + String.join(", ", c.points()) + "; "
                                + (place == null
                                        ? "the sheet of " + sheet.called() + " does not put a bolt into each of them."
                                        : "“" + place + "” is none of them."),
                        "Name one of them. It is left empty only where the sheet says that its bolts are in every place.");
            }
        }
    }

    private static boolean answers(Component sheet, FrameSheet.CharacteristicLine c) {
        return sheet.fasteners().stream().anyMatch(fastener -> c.code().equals(fastener.answers()));
    }

    /** Whether each place of the characteristic has bolts of the component, equally many, as its own sheet says. */
    private static boolean inEveryPlace(Component sheet, FrameSheet.CharacteristicLine c) {
        List<Fastener> answering = sheet.fasteners().stream()
                .filter(fastener -> c.code().equals(fastener.answers()))
                .toList();
        int bolts = answering.stream().mapToInt(Fastener::bolts).sum();
        return answering.stream().allMatch(Fastener::everyPlace)
                && bolts > 0
                && bolts % c.points().size() == 0;
    }

    /** Tells the frame what of its operation is recorded by its components now. */
    void settle(Act act, FrameSheet.Head head, String operation) {
        List<FramePart> list = of(head.serial(), head.part());
        travellers.whole(head.travellerId()).stream()
                .filter(one ->
                        one.line().code().equals(operation) && open(one.line().state()))
                .forEach(one -> {
                    ownSheets.keep(act, one.line().operationId(), TORQUE, answered(one, list));
                    hasCome.to(act, one.line().operationId());
                });
    }

    /** Codes of the characteristics whose every place has a component that answers it. */
    static Set<String> answered(FrameSheet.OperationSheetOfFrame at, List<FramePart> list) {
        Set<String> codes = new HashSet<>();
        for (FrameSheet.CharacteristicLine c : at.characteristics()) {
            List<FramePart> answering = list.stream()
                    .filter(part ->
                            part.component().operation().equals(at.line().code()))
                    .filter(part -> answers(part.component(), c))
                    .toList();
            Set<String> places = answering.stream().map(FramePart::place).collect(Collectors.toSet());
            boolean every =
                    answering.stream().anyMatch(part -> part.place().isEmpty() && inEveryPlace(part.component(), c));
            if (every
                    || !places.isEmpty() && c.points().size() == 1
                    || !places.isEmpty() && places.containsAll(c.points())) {
                codes.add(c.code());
            }
        }
        return codes;
    }
}
