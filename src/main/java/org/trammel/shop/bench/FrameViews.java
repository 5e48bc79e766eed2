package org.trammel.shop.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.AtHand;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.web.Formats;

/** Lays out the sheet of one frame for whoever looks at it. */
@Component
class FrameViews {

    private static final int AHEAD = 6;
    private static final Duration NEAR = Duration.ofDays(1);

    private final AtHand atHand;
    private final Plates plates;
    private final Strips strips;
    private final AtHandPictures drawings;
    private final Words words;
    private final Formats formats;
    private final Settings settings;
    private final Clock clock;
    private final Designs designs;

    FrameViews(
            AtHand atHand,
            Plates plates,
            Strips strips,
            AtHandPictures drawings,
            Words words,
            Formats formats,
            Settings settings,
            Clock clock,
            Designs designs) {
        this.designs = designs;
        this.atHand = atHand;
        this.plates = plates;
        this.strips = strips;
        this.drawings = drawings;
        this.words = words;
        this.formats = formats;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * What the address of the sheet asks for beside the frame.
     *
     * @param stepId a step chosen before its turn; null for the next one
     * @param characteristicId a characteristic chosen before its turn
     * @param here work at this tablet although the operation belongs to another station
     */
    record Asked(@Nullable Long stepId, @Nullable Long characteristicId, boolean here) {

        static final Asked NOTHING = new Asked(null, null, false);
    }

    FrameView of(FrameSheet sheet, SignedOn who, Asked asked) {
        return of(sheet, who, asked, sheet.at());
    }

    /** The sheet, told from an operation that need not be at hand any more. */
    FrameView of(FrameSheet sheet, SignedOn who, Asked asked, FrameSheet.@Nullable OperationSheetOfFrame at) {
        Instant now = clock.instant();
        FrameView.Plate plate = plates.of(sheet, who, asked);
        FrameSheet.StepLine current = plate.step();
        return new FrameView(
                sheet.head(),
                at,
                heading(sheet.head(), at),
                line(at, current),
                sheet.clocks().stream()
                        .filter(c -> concerns(c, at, now))
                        .map(c -> words.clock(c, now))
                        .filter(Objects::nonNull)
                        .toList(),
                strips.of(sheet),
                sheet.holds().stream().map(h -> banner(h, who, sheet)).toList(),
                past(sheet, who),
                plate,
                toCome(sheet, current),
                measured(at, asked.characteristicId()),
                at == null || !at.characteristics().isEmpty() ? List.of() : ahead(sheet, at),
                sheet.notes(),
                pictures(at),
                waiting(sheet.head()),
                at == null || !at.characteristics().isEmpty() ? null : drawings.of(sheet.head(), current));
    }

    /** Nothing is asked of an operation that waits and wants no photograph: there can be none. */
    private List<FrameView.Picture> pictures(FrameSheet.@Nullable OperationSheetOfFrame at) {
        boolean none = at == null
                || at.line().state() == OperationState.WAITING
                        && at.steps().stream().noneMatch(FrameSheet.StepLine::photo);
        return none
                ? List.of()
                : atHand.pictures(at.line().operationId()).stream()
                        .map(p -> new FrameView.Picture(
                                p.sha256(),
                                at.steps().stream()
                                                .filter(s -> p.stepId() != null && s.stepId() == p.stepId())
                                                .map(s -> "Step " + s.number() + ", " + s.text() + ", ")
                                                .findFirst()
                                                .orElse("")
                                        + formats.moment(p.at())))
                        .toList();
    }

    /** Work goes on by the older revision until the newer one is released; whoever does it is told. */
    private @Nullable String waiting(FrameSheet.Head head) {
        Long drawn = head.designRevisionId();
        return drawn == null || !head.state().open()
                ? null
                : designs.waitingAfter(drawn).orElse(null);
    }

    /** A clock is told where it matters; elsewhere while it runs out within a day, for the sheet has little room. */
    private static boolean concerns(ClockView clock, FrameSheet.@Nullable OperationSheetOfFrame at, Instant now) {
        Instant ends = clock.endsAt();
        return !clock.closedAt(now) && (ends == null || ends.isBefore(now.plus(NEAR)))
                || at != null
                        && (clock.gates().contains(at.line().code())
                                || at.characteristics().stream()
                                        .anyMatch(c -> clock.code().equals(c.coldSetClock())));
    }

    private String heading(FrameSheet.Head head, FrameSheet.@Nullable OperationSheetOfFrame at) {
        if (at == null) {
            return switch (head.state()) {
                case WITHDRAWN -> "Withdrawn";
                case SCRAPPED -> "Scrapped";
                case SHIPPED -> "Shipped";
                default -> "All operations done";
            };
        }
        String station = at.line().station();
        return station.isEmpty() ? at.line().name() : formats.station(station);
    }

    private String line(FrameSheet.@Nullable OperationSheetOfFrame at, FrameSheet.@Nullable StepLine current) {
        if (at == null) {
            return "";
        }
        StringBuilder line =
                new StringBuilder(Words.called(at.line()) + " " + at.line().name());
        if (current != null && at.steps().size() > 1) {
            line.append(", step ")
                    .append(current.number())
                    .append(" of ")
                    .append(at.steps().size());
        }
        if (at.line().startedAt() != null && at.line().state() == OperationState.IN_WORK) {
            line.append(", begun ").append(formats.moment(at.line().startedAt()));
        }
        return line.toString();
    }

    private FrameView.HoldBanner banner(FrameSheet.HoldLine hold, SignedOn who, FrameSheet sheet) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        boolean elsewhere = HoldReason.decidedElsewhere(hold.source());
        boolean lifter = hold.reason().lifters().isEmpty()
                ? who.person().maySign()
                : hold.reason().lifters().stream().anyMatch(who.person()::is);
        boolean reaches = hold.scope() != HoldScope.OPERATION
                || at != null && Objects.equals(hold.operationId(), at.line().operationId());
        boolean freeable =
                at != null && reaches && !at.irreversible() && at.line().state() != OperationState.DONE;
        return new FrameView.HoldBanner(
                hold.holdId(),
                hold.reason().word(),
                hold.words(),
                (reaches ? "" : notHere(hold, sheet)) + "placed by " + hold.placedByName() + " "
                        + formats.moment(hold.placedAt())
                        + (hold.source().equals(HoldForms.BY_HAND) ? "" : ", " + hold.source()),
                hold.reason().liftedBy(hold.source()),
                lifter && !elsewhere,
                freeable && who.person().is(Role.QA_LEAD));
    }

    /** A hold of one operation does not stop the work before it; the banner says so. */
    private static String notHere(FrameSheet.HoldLine hold, FrameSheet sheet) {
        return sheet.operations().stream()
                .filter(o -> Objects.equals(hold.operationId(), o.operationId()))
                .map(o -> "it holds operation " + Words.called(o) + ", not the work here; ")
                .findFirst()
                .orElse("");
    }

    private FrameView.@Nullable Past past(FrameSheet sheet, SignedOn who) {
        AtHand.LastTick last = atHand.lastTick(sheet.head().travellerId()).orElse(null);
        if (last == null || last.at() == null || !sheet.head().state().open()) {
            return null;
        }
        Instant free = last.at().plus(Duration.ofMinutes(settings.whole("undo.free.minutes")));
        boolean atHandNow = sheet.at() != null && sheet.at().line().operationId() == last.operationId();
        boolean fresh = !clock.instant().isAfter(free);
        if (!atHandNow && !fresh) {
            return null;
        }
        boolean own = last.by() != null && last.by() == who.person().id();
        boolean passed = passed(sheet, last, atHandNow);
        if (passed && !who.person().is(Role.QA_LEAD)) {
            return null;
        }
        return new FrameView.Past(
                last.stepId(),
                String.valueOf(last.number()),
                last.text() + ", done " + formats.moment(last.at()),
                own && fresh && !passed ? formats.time(free) : null);
    }

    /** Once somebody signed that it is done, only the QA lead takes a tick back, with a reason. */
    private static boolean passed(FrameSheet sheet, AtHand.LastTick last, boolean atHandNow) {
        return atHandNow
                ? sheet.at().signatures().stream().anyMatch(FrameSheet.SignatureLine::counts)
                : sheet.operations().stream()
                        .anyMatch(o -> o.operationId() == last.operationId() && o.point() != Point.NONE);
    }

    private List<FrameView.ToCome> toCome(FrameSheet sheet, FrameSheet.@Nullable StepLine current) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        if (at == null) {
            return List.of();
        }
        List<FrameView.ToCome> rows = new ArrayList<>();
        String address = "/station/" + sheet.head().tag();
        boolean open = at.line().state() == OperationState.WAITING || at.line().state() == OperationState.IN_WORK;
        at.steps().stream()
                .filter(s -> !s.ticked() && (current == null || s.stepId() != current.stepId()))
                .forEach(s -> rows.add(new FrameView.ToCome(
                        "step",
                        String.valueOf(s.number()),
                        s.text(),
                        s.photo() ? "photograph" : s.lotKind() == null ? "" : "lot",
                        open ? address + "?step=" + s.stepId() : null)));
        for (int i = 0; i < at.characteristics().size(); i++) {
            FrameSheet.CharacteristicLine c = at.characteristics().get(i);
            if (!c.state().settled()) {
                rows.add(new FrameView.ToCome(
                        "letter",
                        Words.letter(i),
                        c.name(),
                        words.limits(c),
                        open ? address + "?read=" + c.characteristicId() : null));
            }
        }
        if (at.line().point() != Point.NONE && at.line().state() != OperationState.AT_POINT) {
            rows.add(new FrameView.ToCome(
                    "point", "", point(at), at.line().point() == Point.HOLD ? "hold point" : "witness point", null));
        }
        sheet.operations().stream()
                .dropWhile(o -> o.operationId() != at.line().operationId())
                .skip(1)
                .limit(2)
                .forEach(o -> rows.add(new FrameView.ToCome(
                        "next", "", o.name(), Words.called(o) + " " + formats.station(o.station()), null)));
        return rows;
    }

    static String point(FrameSheet.OperationSheetOfFrame at) {
        return at.signers().isEmpty()
                ? "To be signed"
                : "Signed by "
                        + String.join(
                                " and ", at.signers().stream().map(Signer::word).toList());
    }

    List<FrameView.Measured> measured(FrameSheet.@Nullable OperationSheetOfFrame at, @Nullable Long chosen) {
        if (at == null) {
            return List.of();
        }
        List<FrameView.Measured> rows = new ArrayList<>();
        for (int i = 0; i < at.characteristics().size(); i++) {
            FrameSheet.CharacteristicLine c = at.characteristics().get(i);
            rows.add(new FrameView.Measured(
                    c.characteristicId(),
                    Words.letter(i),
                    c.name(),
                    words.limits(c),
                    c.state().word(),
                    Words.mark(c.state()),
                    c.state().settled(),
                    chosen != null && chosen == c.characteristicId()));
        }
        return rows;
    }

    private List<FrameView.Ahead> ahead(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at) {
        return sheet.operations().stream()
                .dropWhile(o -> o.operationId() != at.line().operationId())
                .skip(1)
                .limit(AHEAD)
                .map(o -> new FrameView.Ahead(
                        Words.called(o),
                        o.name(),
                        formats.station(o.station()),
                        switch (o.point()) {
                            case NONE -> "";
                            case HOLD -> "hold point";
                            case WITNESS -> "witness point";
                        }))
                .toList();
    }

    /** The refusal of a page whose characteristic is not on it. */
    static Refusal notAtHand(FrameSheet.Head head) {
        return Refusal.missing(
                "There is nothing to read here.",
                "The characteristic does not belong to the operation at hand of " + head.mark() + ".",
                "Open the frame again to see what is at hand.");
    }
}
