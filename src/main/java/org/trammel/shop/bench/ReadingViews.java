package org.trammel.shop.bench;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.ConformityDecision;
import org.trammel.calc.metrology.DecisionRule;
import org.trammel.calc.metrology.Limits;
import org.trammel.calc.metrology.Reduction;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.GivenByRecord;
import org.trammel.shop.inspection.GivenReadings;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.ScaleView;

/** Lays out the sheet of one characteristic. */
@Component
class ReadingViews {

    private final FrameViews frames;
    private final Travellers travellers;
    private final Evidence evidence;
    private final Readings readings;
    private final ColdSets coldSets;
    private final Gauges gauges;
    private final GivenReadings given;
    private final Verdicts verdicts;
    private final Words words;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    ReadingViews(
            FrameViews frames,
            Travellers travellers,
            Evidence evidence,
            Readings readings,
            ColdSets coldSets,
            Gauges gauges,
            GivenReadings given,
            Verdicts verdicts,
            Words words,
            Settings settings,
            Formats formats,
            Clock clock) {
        this.frames = frames;
        this.travellers = travellers;
        this.evidence = evidence;
        this.readings = readings;
        this.coldSets = coldSets;
        this.gauges = gauges;
        this.given = given;
        this.verdicts = verdicts;
        this.words = words;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    /**
     * What is asked for.
     *
     * @param again read once more although there is a verdict
     * @param correct id of a mistyped reading to correct; null for none
     * @param gauge code of the gauge used here last, or asked for by name; null if none is known
     */
    record Asked(
            long characteristicId,
            boolean again,
            @Nullable Long correct,
            @Nullable String gauge) {}

    /**
     * The sheet of one characteristic.
     *
     * @param known the frame's own sheet, where it is laid out already; else null
     */
    ReadingView of(FrameSheet sheet, SignedOn who, Asked asked, @Nullable FrameView known) {
        FrameSheet.OperationSheetOfFrame at = operationOf(sheet, asked.characteristicId());
        int index = IntStream.range(0, at.characteristics().size())
                .filter(i -> at.characteristics().get(i).characteristicId() == asked.characteristicId())
                .findFirst()
                .orElseThrow(() -> FrameViews.notAtHand(sheet.head()));
        FrameSheet.CharacteristicLine c = at.characteristics().get(index);
        FrameView frame = known == null
                ? frames.of(sheet, who, new FrameViews.Asked(null, c.characteristicId(), true), at)
                : known;
        ReadingLine last = last(c);
        boolean first = c.state() == CharacteristicState.FIRST_READ;
        GivenByRecord.Source source =
                given.at(at.line().operationId(), at.line().code()).get(c.code());
        boolean keying = source == null
                && (asked.again() || asked.correct() != null || c.state() == CharacteristicState.OPEN || first);
        Map<String, Means> usable = keying || c.state() == CharacteristicState.UNDECIDED ? usable(c) : Map.of();
        Means means = chosen(usable, asked.gauge());
        boolean hidden = first || c.blind();
        ColdSets.Room room = c.state() == CharacteristicState.NOT_CONFORMING && c.coldSetClock() != null
                ? coldSets.room(c.characteristicId(), clock.instant())
                : null;
        return new ReadingView(
                frame,
                c,
                Words.letter(index),
                words.limits(c),
                keying,
                asked.correct(),
                fields(c),
                labelled(usable),
                means == null ? "" : means.code(),
                means,
                means == null || c.blind() ? List.of() : gauges.doubts(means, c.lowerLimit(), c.upperLimit()),
                hidden ? null : last,
                keying ? wanted(c, means) : last == null ? null : scale(last, c),
                keying || last == null || source != null && c.readingId() == null
                        ? null
                        : answer(sheet, frame, who, c, last, usable, room),
                keying && !hidden && last != null && c.state() == CharacteristicState.OPEN
                        ? formats.with(last.value().abs(), c.decimals(), c.unit()) + " "
                                + verdicts.side(last.value(), c)
                        : null,
                room,
                source,
                last != null && last.record() == null && correctable(sheet, at, c, last, who),
                first && last != null && last.personId() == who.person().id());
    }

    private static boolean correctable(
            FrameSheet sheet,
            FrameSheet.OperationSheetOfFrame at,
            FrameSheet.CharacteristicLine c,
            ReadingLine last,
            SignedOn who) {
        boolean mine = last.personId() == who.person().id() || who.person().is(Role.QA_LEAD);
        return sheet.head().state().open()
                && c.state() != CharacteristicState.CONCESSION
                && (mine || at.line().state() != OperationState.DONE);
    }

    /** A verdict may be looked at when the frame has gone on to its next operation. */
    private FrameSheet.OperationSheetOfFrame operationOf(FrameSheet sheet, long characteristicId) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        if (at != null && at.characteristics().stream().anyMatch(c -> c.characteristicId() == characteristicId)) {
            return at;
        }
        Evidence.Wanted wanted = evidence.wanted(characteristicId);
        if (wanted.travellerId() != sheet.head().travellerId()) {
            throw FrameViews.notAtHand(sheet.head());
        }
        return travellers.operation(wanted.operationId());
    }

    private @Nullable ReadingLine last(FrameSheet.CharacteristicLine c) {
        return readings.of(List.of(c.characteristicId())).stream()
                .filter(reading -> !reading.replaced())
                .reduce((earlier, later) -> later)
                .orElse(null);
    }

    private static List<ReadingView.Field> fields(FrameSheet.CharacteristicLine c) {
        return IntStream.range(0, c.points().size())
                .mapToObj(i -> new ReadingView.Field(i, c.points().get(i)))
                .toList();
    }

    private Map<String, Means> usable(FrameSheet.CharacteristicLine c) {
        Map<String, Means> usable = new LinkedHashMap<>();
        Reduction reduction = Reduction.valueOf(c.reduction().name());
        gauges.usableFor(c.gaugeKind(), c.unit(), settings.dayOf(clock.instant()))
                .forEach(means -> usable.put(means.code(), means.reducedBy(reduction)));
        return usable;
    }

    private static @Nullable Means chosen(Map<String, Means> usable, @Nullable String gauge) {
        if (gauge != null && usable.containsKey(gauge)) {
            return usable.get(gauge);
        }
        return usable.size() == 1 ? usable.values().iterator().next() : null;
    }

    private Map<String, String> labelled(Map<String, Means> usable) {
        Map<String, String> labels = new LinkedHashMap<>();
        usable.forEach((code, means) -> labels.put(
                code,
                code + ", " + means.what()
                        + (means.u() == null
                                ? ""
                                : ", u " + formats.number(means.u().stripTrailingZeros()) + " " + means.unit())));
        return labels;
    }

    private @Nullable ScaleView wanted(FrameSheet.CharacteristicLine c, @Nullable Means means) {
        if (c.blind() || c.lowerLimit() == null && c.upperLimit() == null) {
            return null;
        }
        BigDecimal u = means == null ? null : means.u();
        Limits limits = new Limits(c.lowerLimit(), c.upperLimit());
        BigDecimal guard = u == null
                        || ConformityDecision.used(DecisionRule.valueOf(c.rule().name()), limits, c.nominal(), u)
                                == DecisionRule.PLAIN
                ? null
                : ConformityDecision.guardBand(u, settings.number("guard.factor"), Verdicts.KEPT);
        ScaleView view = ScaleView.limits(
                        c.lowerLimit(),
                        c.upperLimit(),
                        c.nominal(),
                        c.unit(),
                        Words.decimals(c.nominal(), c.lowerLimit(), c.upperLimit(), c.decimals()))
                .guarded(guard);
        return c.sided() ? view.bySides() : view;
    }

    private @Nullable ScaleView scale(ReadingLine last, FrameSheet.CharacteristicLine c) {
        return last.lowerLimit() == null && last.upperLimit() == null ? null : verdicts.scale(last, c);
    }

    private ReadingView.Answer answer(
            FrameSheet sheet,
            FrameView frame,
            SignedOn who,
            FrameSheet.CharacteristicLine c,
            ReadingLine last,
            Map<String, Means> usable,
            ColdSets.@Nullable Room room) {
        String address = "/station/" + sheet.head().tag();
        String read = address + "?read=" + c.characteristicId();
        String action = goesOn(frame.plate());
        String leads = address;
        if (c.state() == CharacteristicState.UNDECIDED) {
            Means better = better(usable, last);
            action = better == null ? "Call QA: no better gauge is in date" : "Measure with " + better.code();
            leads = better == null
                    ? address + "/stop?characteristic=" + c.characteristicId()
                    : read + "&again=true&gauge=" + better.code();
        } else if (c.state() == CharacteristicState.NOT_CONFORMING) {
            action = "Next frames";
            leads = "/station";
            if (room != null && room.open()) {
                boolean held = !sheet.inTheWay().isEmpty();
                boolean aligner = who.person().isAny(Role.ALIGNER, Role.QA_LEAD);
                action = held
                        ? "Ask the QA lead to free the cold-set"
                        : aligner ? "Set it straight, cold" : "Call an aligner to cold-set";
                leads = held
                        ? address + "/holds"
                        : aligner ? address + "/cold-set?characteristic=" + c.characteristicId() : address + "/stop";
            }
        }
        return new ReadingView.Answer(
                c.state() == CharacteristicState.CONCESSION
                        ? "concession"
                        : last.verdict().word(),
                c.state() == CharacteristicState.CONCESSION ? "concession" : Verdicts.mark(last.verdict()),
                verdicts.value(last, c),
                verdicts.side(last.value(), c),
                verdicts.sentence(last, c),
                verdicts.lines(last, c),
                action,
                leads);
    }

    private static String goesOn(FrameView.Plate plate) {
        return switch (plate.kind()) {
            case STEP, READING, POINT, BLOCKED -> "Go on: " + plate.heading();
            default -> "Go on";
        };
    }

    private static @Nullable Means better(Map<String, Means> usable, ReadingLine last) {
        BigDecimal u = last.u();
        return usable.values().stream()
                .filter(means -> means.u() != null && (u == null || means.u().compareTo(u) < 0))
                .findFirst()
                .orElse(null);
    }
}
