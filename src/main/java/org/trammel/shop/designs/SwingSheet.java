package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.Suspension;
import org.trammel.calc.geometry.Swing;
import org.trammel.calc.geometry.SwingClearance;
import org.trammel.calc.units.Answer;
import org.trammel.shop.settings.Setting;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.CurveView;
import org.trammel.shop.web.Formats;

/** How a rear end swings and drives its shock, and what is measured when it is joined, as the sheet shows it. */
@Component
class SwingSheet {

    private static final int DRAWN_STEPS = 60;
    private static final int TABLE_STEPS = 10;
    private static final List<String> STACK = List.of("join.front", "join.arm", "join.bearing", "join.dropout");

    private final Settings settings;
    private final Formats formats;

    SwingSheet(Settings settings, Formats formats) {
        this.settings = settings;
        this.formats = formats;
    }

    /**
     * What is shown.
     *
     * @param figures empty where the rear end cannot be computed
     * @param curve null there
     * @param steps the curve as a table, at even steps of travel
     * @param join what is measured when both parts are joined
     * @param rising the ratio grows towards the end of the travel
     * @param gaps why something is missing, one sentence each
     */
    record Shown(
            List<FramePage.Figure> figures,
            @Nullable CurveView curve,
            List<Step> steps,
            List<Join> join,
            boolean rising,
            List<String> gaps) {}

    /** The rear end at a travel, in mm; the axle ahead of and above the shell. */
    record Step(double travel_mm, double axleX_mm, double axleY_mm, double shock_mm, double ratio) {}

    /** A number of the join gate, in mm. */
    record Join(String what, String value, String where) {}

    /** Null for a frame without a swing arm. */
    @Nullable
    Shown of(DesignSheet sheet, ComputedFrame frame) {
        if (!GateCheck.SWING.concerns(sheet)) {
            return null;
        }
        GivenInputs in = new GivenInputs(sheet.geometry());
        Answer<Suspension> rear = frame.geometry().then(geometry -> SwingInputs.suspension(in, geometry));
        if (rear instanceof Answer.Determined<Suspension> there) {
            Answer<Double> tyre = frame.geometry()
                    .then(geometry -> SwingFigures.seatTube(in, geometry))
                    .then(tube -> Answer.of(SwingClearance.tyre_mm(
                            there.value().swing(),
                            tube,
                            in.number(GeometryInput.REAR_WHEEL_RADIUS),
                            there.value().swing().travel_mm())));
            return shown(there.value(), sag(in), tyre);
        }
        return new Shown(List.of(), null, List.of(), List.of(), false, words((Answer.NotDeterminable<?>) rear));
    }

    private List<String> words(Answer.NotDeterminable<?> none) {
        return none.gaps().stream()
                .map(Answer.Gap::words)
                .map(formats::sentence)
                .toList();
    }

    /** As a share; the shop's usual one where the drawing gives none. */
    private double sag(GivenInputs in) {
        return in.number(GeometryInput.SAG, settings.number("suspension.sag").doubleValue()) / 100;
    }

    private Shown shown(Suspension rear, double sag, Answer<Double> tyre) {
        double sagLength = rear.shock().atSag_mm(sag);
        Suspension.At atSag = rear.at(rear.travelAt_mm(sagLength));
        return new Shown(
                figures(rear, sag, atSag, tyre),
                curve(rear, sag, atSag),
                rear.curve(TABLE_STEPS).stream()
                        .map(at -> new Step(
                                at.travel_mm(), at.axle().x_mm(), at.axle().y_mm(), at.shockLength_mm(), at.ratio()))
                        .toList(),
                join(rear, tyre),
                rear.change() < 0,
                tyre instanceof Answer.NotDeterminable<Double> none ? words(none) : List.of());
    }

    private List<FramePage.Figure> figures(Suspension rear, double sag, Suspension.At atSag, Answer<Double> tyre) {
        Swing swing = rear.swing();
        double travel = swing.travel_mm();
        String share = formats.number(100 * sag, 0) + " % of the stroke";
        List<FramePage.Figure> figures = new ArrayList<>(List.of(
                new FramePage.Figure("Travel of the rear axle", travel, "mm"),
                new FramePage.Figure("Pivot to axle", swing.radius_mm(), "mm"),
                new FramePage.Figure("The arm turns by", Math.toDegrees(swing.rotation_rad(travel)), "°", 1),
                new FramePage.Figure("Ratio at the start", rear.ratioAt(0), "", 2),
                new FramePage.Figure("Ratio at the sag", atSag.ratio(), "", 2),
                new FramePage.Figure("Ratio at the end", rear.ratioAt(1), "", 2),
                new FramePage.Figure("Mean ratio", rear.meanRatio(), "", 2),
                new FramePage.Figure("Change of the ratio, start less end", 100 * rear.change(), "%", 1),
                new FramePage.Figure("Shock with nothing on the frame", rear.extended_mm(), "mm"),
                new FramePage.Figure("Shock at the sag, " + share, atSag.shockLength_mm(), "mm"),
                new FramePage.Figure("Shock at the end of the travel", rear.bottomed_mm(), "mm"),
                new FramePage.Figure("Travel at the sag", atSag.travel_mm(), "mm")));
        if (tyre instanceof Answer.Determined<Double> room) {
            figures.add(new FramePage.Figure("Tyre to seat tube at the end of the travel", room.value(), "mm"));
        }
        return figures;
    }

    private CurveView curve(Suspension rear, double sag, Suspension.At atSag) {
        double end = rear.swing().travel_mm();
        return new CurveView(
                "Ratio of the rear axle's travel to the shock's over the travel: from "
                        + formats.number(rear.ratioAt(0), 2) + " at the start by "
                        + formats.number(atSag.ratio(), 2) + " at the sag to "
                        + formats.number(rear.ratioAt(1), 2) + " at the end, at "
                        + formats.with(end, 0, "mm"),
                "travel of the rear axle, mm",
                "ratio",
                rear.curve(DRAWN_STEPS).stream()
                        .map(at -> new CurveView.Point(at.travel_mm(), at.ratio()))
                        .toList(),
                List.of(new CurveView.Mark(
                        "sag " + formats.number(100 * sag, 0) + " %", atSag.travel_mm(), atSag.ratio())));
    }

    private List<Join> join(Suspension rear, Answer<Double> tyre) {
        Point pivot = rear.swing().pivot();
        Point axle = rear.swing().axle();
        List<Join> join = new ArrayList<>(List.of(
                new Join("Shock, eye to eye", mm(rear.extended_mm()), "with its bushings, nothing on the frame"),
                new Join(
                        "Shock, eye to eye at the end of the travel",
                        mm(rear.bottomed_mm()),
                        "without spring or air, let down to its end"),
                new Join(
                        "Main pivot from the shell",
                        mm(pivot.x_mm()) + " ahead, " + mm(pivot.y_mm()) + " above",
                        "centre of the frame's bores"),
                new Join(
                        "Rear axle from the main pivot",
                        mm(axle.x_mm() - pivot.x_mm()) + " along, " + mm(axle.y_mm() - pivot.y_mm()) + " up",
                        "nothing on the frame; the arm is measured from its own pivot bores"),
                new Join(
                        "Shock's eye on the swing arm, from the main pivot",
                        mm(rear.armEye().x_mm() - pivot.x_mm()) + " along, "
                                + mm(rear.armEye().y_mm() - pivot.y_mm()) + " up",
                        "nothing on the frame"),
                new Join(
                        "Shock's eye on the frame, from the shell",
                        mm(rear.frameEye().x_mm()) + " ahead, "
                                + mm(rear.frameEye().y_mm()) + " above",
                        "centre of its mount")));
        if (tyre instanceof Answer.Determined<Double> room) {
            join.add(
                    new Join("Tyre to seat tube at the end of the travel", mm(room.value()), limit("gate.swing.tyre")));
        }
        List<Double> parts =
                STACK.stream().map(key -> settings.number(key).doubleValue()).toList();
        double worst = parts.stream().mapToDouble(Double::doubleValue).sum();
        double likely =
                Math.sqrt(parts.stream().mapToDouble(part -> part * part).sum());
        join.add(new Join(
                "Rear wheel off the middle plane",
                formats.with(worst, 2, "mm") + " if all are off to one side, " + formats.with(likely, 2, "mm")
                        + " by the root of the squares",
                stack()));
        return join;
    }

    /** The chain of joined parts: at worst all are off to one side; the root of the squares is what is likely. */
    private String stack() {
        return STACK.stream()
                .map(key -> lower(settings.definition(key).name()) + " "
                        + formats.number(settings.number(key).doubleValue(), 2))
                .reduce((one, other) -> one + "; " + other)
                .orElse("");
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private String limit(String key) {
        Setting limit = settings.inForce(key);
        return "limit " + formats.number(Double.parseDouble(limit.value()), 1) + " or more (" + limit.source() + ")";
    }

    private String mm(double length_mm) {
        return formats.with(length_mm, 1, "mm");
    }
}
