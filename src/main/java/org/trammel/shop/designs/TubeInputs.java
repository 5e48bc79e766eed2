package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.ArmPlan;
import org.trammel.calc.geometry.BentStay;
import org.trammel.calc.geometry.DropoutPlate;
import org.trammel.calc.geometry.FormedEnd;
import org.trammel.calc.geometry.FormedPlace;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.Stay;
import org.trammel.calc.geometry.StayBend;
import org.trammel.calc.geometry.StayPlaces;
import org.trammel.calc.geometry.StaySet;
import org.trammel.calc.geometry.Stays;
import org.trammel.calc.geometry.TubeSet;
import org.trammel.calc.geometry.TubeStock;
import org.trammel.calc.geometry.WallProfile;
import org.trammel.calc.units.Answer;

/**
 * The tubes of a frame as its inputs tell them: plain or butted, round or with formed ends, stays straight or bent. What
 * of an optional part is given at all must be given whole.
 */
final class TubeInputs {

    /** The shop's dropouts: a plate of 6 mm that reaches 25 mm into the stay, whose tube ends 18 mm from the axle. */
    private static final double PLATE_MM = 6;

    private static final double SLOT_PLAY_MM = 0.1;
    private static final double SLOT_DEPTH_MM = 25;
    private static final double AXLE_TO_STAY_MM = 18;
    private static final double OUTSIDE_FACE_MM = 4;

    private final GivenInputs in;

    TubeInputs(GivenInputs in) {
        this.in = in;
    }

    /** All of them; the stays only where no swing arm takes their place, and none of a tandem's behind its front part. */
    Answer<TubeSet> set(FrameGeometry geometry) {
        return each(
                        in.all(GeometryInput.HEAD_TUBE_OUTSIDE, GeometryInput.SHELL_OUTSIDE),
                        List.of(FrameTube.DOWN_TUBE, FrameTube.TOP_TUBE, FrameTube.SEAT_TUBE))
                .then(stock -> formed().then(ends ->
                        in.has(GeometryInput.PIVOT_AHEAD) || in.has(GeometryInput.SHELL_TO_SHELL)
                                ? Answer.of(set(stock, ends, null))
                                : stays(geometry).then(stays -> Answer.of(set(stock, ends, stays)))));
    }

    /** Of what the lower and the upper members of a swing arm are made. */
    Answer<Map<FrameTube, TubeStock>> ofTheArm() {
        return each(Answer.of(in), List.of(FrameTube.CHAINSTAY, FrameTube.SEATSTAY));
    }

    private TubeSet set(Map<FrameTube, TubeStock> stock, Map<FormedPlace, FormedEnd> ends, @Nullable StaySet stays) {
        return new TubeSet(
                in.number(GeometryInput.HEAD_TUBE_OUTSIDE),
                in.number(GeometryInput.SHELL_OUTSIDE),
                stock.get(FrameTube.DOWN_TUBE),
                stock.get(FrameTube.TOP_TUBE),
                stock.get(FrameTube.SEAT_TUBE),
                ends,
                stays);
    }

    /** Every one of them, or all that is missing of any and of what else is needed. */
    private Answer<Map<FrameTube, TubeStock>> each(Answer<GivenInputs> besides, List<FrameTube> tubes) {
        Map<FrameTube, TubeStock> stock = new EnumMap<>(FrameTube.class);
        List<Answer.Gap> gaps =
                new ArrayList<>(besides instanceof Answer.NotDeterminable<GivenInputs> none ? none.gaps() : List.of());
        for (FrameTube tube : tubes) {
            Answer<TubeStock> answer = stock(TubeWalls.of(tube));
            if (answer instanceof Answer.Determined<TubeStock> there) {
                stock.put(tube, there.value());
            } else {
                gaps.addAll(((Answer.NotDeterminable<TubeStock>) answer).gaps());
            }
        }
        return gaps.isEmpty() ? Answer.of(stock) : new Answer.NotDeterminable<>(gaps);
    }

    private Answer<TubeStock> stock(TubeWalls walls) {
        Answer<GivenInputs> plain = in.all(walls.outside(), walls.wall());
        if (walls.butting().noneMatch(in::has)) {
            return plain.then(there -> Answer.of(TubeStock.plain(in.number(walls.outside()), in.number(walls.wall()))));
        }
        return plain.then(there -> in.all(walls.length(), walls.buttOne(), walls.middle(), walls.buttTwo()))
                .then(there -> butted(walls));
    }

    private Answer<TubeStock> butted(TubeWalls walls) {
        double one = in.number(walls.wall());
        double two = in.number(walls.wallTwo(), one);
        double middle = in.number(walls.middle());
        if (middle > Math.max(one, two)) {
            return Answer.none(
                    walls.middle().code(),
                    walls.middle().label() + " is " + walls.middle().written(middle)
                            + ", thicker than both butts, of " + walls.wall().written(one) + " and "
                            + walls.wallTwo().written(two) + ".");
        }
        return Answer.of(new TubeStock(
                in.number(walls.outside()),
                new WallProfile.Butted(
                        in.number(walls.length()),
                        new WallProfile.Butt(one, in.number(walls.buttOne())),
                        middle,
                        new WallProfile.Butt(two, in.number(walls.buttTwo())))));
    }

    /** The ovals that ends are formed to. */
    Answer<Map<FormedPlace, FormedEnd>> formed() {
        Map<FormedPlace, FormedEnd> ends = new EnumMap<>(FormedPlace.class);
        List<Answer.Gap> gaps = new ArrayList<>();
        boolean swings = in.has(GeometryInput.PIVOT_AHEAD);
        for (FormedPlace place : FormedPlace.values()) {
            if (swings && place.tube() == FrameTube.CHAINSTAY) {
                continue;
            }
            Answer<FormedEnd> answer = formed(place);
            if (answer instanceof Answer.Determined<FormedEnd> there) {
                ends.put(place, there.value());
            } else if (isAsked(place)) {
                gaps.addAll(((Answer.NotDeterminable<FormedEnd>) answer).gaps());
            }
        }
        return gaps.isEmpty() ? Answer.of(ends) : new Answer.NotDeterminable<>(gaps);
    }

    private boolean isAsked(FormedPlace place) {
        return in.has(upright(place)) || in.has(zone(place));
    }

    /** The oval of an end; without an answer where it stays round. */
    private Answer<FormedEnd> formed(FormedPlace place) {
        GeometryInput outside = TubeWalls.of(place.tube()).outside();
        return in.all(outside, upright(place), zone(place))
                .then(there -> named(
                        upright(place),
                        FormedEnd.of(in.number(outside), in.number(upright(place)), in.number(zone(place)))));
    }

    /** How high an end stands in the frame's plane: as it is formed, else as round as its tube. */
    Answer<Double> upright_mm(FormedPlace place) {
        GeometryInput outside = TubeWalls.of(place.tube()).outside();
        return isAsked(place)
                ? formed(place).then(end -> Answer.of(end.inFramePlane_mm()))
                : in.all(outside).then(there -> Answer.of(in.number(outside)));
    }

    /** How wide an end is across the frame's plane: as it is formed, else as round as its tube. */
    Answer<Double> across_mm(FormedPlace place) {
        GeometryInput outside = TubeWalls.of(place.tube()).outside();
        return isAsked(place)
                ? formed(place).then(end -> Answer.of(end.acrossFrame_mm()))
                : in.all(outside).then(there -> Answer.of(in.number(outside)));
    }

    /**
     * How high a tube stands so far from its node: as round as it is, or as high as its end is formed as far as that
     * reaches. An end that is pressed lower grows round again, so it is taken as round all along.
     */
    Answer<Double> highest_mm(FormedPlace place, double fromNode_mm) {
        return outermost_mm(place).then(outermost -> {
            boolean reaches = fromNode_mm <= in.number(mate(place), 0) / 2 + in.number(zone(place), 0);
            return Answer.of(
                    reaches ? outermost : in.number(TubeWalls.of(place.tube()).outside()));
        });
    }

    private static GeometryInput mate(FormedPlace place) {
        return switch (place) {
            case DOWN_TUBE_AT_HEAD, TOP_TUBE_AT_HEAD -> GeometryInput.HEAD_TUBE_OUTSIDE;
            case TOP_TUBE_AT_SEAT -> GeometryInput.SEAT_TUBE_OUTSIDE;
            case DOWN_TUBE_AT_SHELL, SEAT_TUBE_AT_SHELL, CHAINSTAY_AT_SHELL -> GeometryInput.SHELL_OUTSIDE;
        };
    }

    /** How far a dropout reaches behind its axle: as far as its stay ends before it, which is common practice. */
    double behindTheAxle_mm() {
        return in.number(GeometryInput.AXLE_TO_STAY, AXLE_TO_STAY_MM);
    }

    /** Twice what a tube with this end may stand out of its axis in the frame's plane: round, or higher where it is formed so. */
    Answer<Double> outermost_mm(FormedPlace place) {
        return upright_mm(place)
                .then(high -> Answer.of(
                        Math.max(high, in.number(TubeWalls.of(place.tube()).outside()))));
    }

    private static GeometryInput upright(FormedPlace place) {
        return switch (place) {
            case DOWN_TUBE_AT_HEAD -> GeometryInput.FORMED_DOWN_TUBE_HEAD;
            case DOWN_TUBE_AT_SHELL -> GeometryInput.FORMED_DOWN_TUBE_SHELL;
            case TOP_TUBE_AT_HEAD -> GeometryInput.FORMED_TOP_TUBE_HEAD;
            case TOP_TUBE_AT_SEAT -> GeometryInput.FORMED_TOP_TUBE_SEAT;
            case SEAT_TUBE_AT_SHELL -> GeometryInput.FORMED_SEAT_TUBE_SHELL;
            case CHAINSTAY_AT_SHELL -> GeometryInput.FORMED_CHAINSTAY_SHELL;
        };
    }

    private static GeometryInput zone(FormedPlace place) {
        return GeometryInput.valueOf(upright(place).code() + "_ZONE");
    }

    private Answer<StaySet> stays(FrameGeometry geometry) {
        return each(
                        in.all(
                                GeometryInput.SEATSTAY_AT_SEAT,
                                GeometryInput.CHAINSTAY_AT_SHELL,
                                GeometryInput.AXLE_WIDTH),
                        List.of(FrameTube.CHAINSTAY, FrameTube.SEATSTAY))
                .then(stock -> Stays.of(
                                geometry,
                                new StayPlaces(
                                        in.number(GeometryInput.SEATSTAY_AT_SEAT),
                                        in.number(GeometryInput.CHAINSTAY_AT_SHELL),
                                        in.number(GeometryInput.AXLE_WIDTH),
                                        in.number(GeometryInput.AXLE_TO_STAY, AXLE_TO_STAY_MM),
                                        in.number(GeometryInput.STAY_OUTSIDE_FACE, OUTSIDE_FACE_MM),
                                        in.number(GeometryInput.SHELL_OUTSIDE),
                                        in.number(GeometryInput.SEAT_TUBE_OUTSIDE)))
                        .then(stays -> with(
                                bent(FrameTube.CHAINSTAY, stays.chainstay()),
                                bent(FrameTube.SEATSTAY, stays.seatstay()),
                                (chainstay, seatstay) -> Answer.of(new StaySet(
                                        chainstay,
                                        seatstay,
                                        stock.get(FrameTube.CHAINSTAY),
                                        stock.get(FrameTube.SEATSTAY),
                                        plate())))));
    }

    /** Where the sides of a swing arm end: as stays do. */
    ArmPlan.Ends ends(List<StayBend> bends) {
        return new ArmPlan.Ends(
                in.number(GeometryInput.AXLE_TO_STAY, AXLE_TO_STAY_MM),
                in.number(GeometryInput.STAY_OUTSIDE_FACE, OUTSIDE_FACE_MM),
                bends);
    }

    DropoutPlate plate() {
        return new DropoutPlate(
                in.number(GeometryInput.DROPOUT_PLATE, PLATE_MM),
                in.number(GeometryInput.SLOT_PLAY, SLOT_PLAY_MM),
                in.number(GeometryInput.SLOT_DEPTH, SLOT_DEPTH_MM));
    }

    private Answer<BentStay> bent(FrameTube tube, Stay chord) {
        List<StayBend> bends = new ArrayList<>();
        for (int number = 1; number <= 2; number++) {
            GeometryInput at = GeometryInput.valueOf(tube.name() + "_BEND_" + number);
            GeometryInput out = GeometryInput.valueOf(at.code() + "_OUT");
            GeometryInput radius = GeometryInput.valueOf(at.code() + "_RADIUS");
            if (Stream.of(at, out, radius).noneMatch(in::has)) {
                continue;
            }
            if (in.all(at, out, radius) instanceof Answer.NotDeterminable<GivenInputs> none) {
                return new Answer.NotDeterminable<>(none.gaps());
            }
            bends.add(new StayBend(in.number(at), in.number(out), in.number(radius)));
        }
        GeometryInput first = GeometryInput.valueOf(tube.name() + "_BEND_1");
        return bends.isEmpty() ? BentStay.of(chord, bends) : named(tube.word(), first, BentStay.of(chord, bends));
    }

    private static <T> Answer<T> named(GeometryInput input, Answer<T> answer) {
        return named(input.label(), input, answer);
    }

    /** A computation speaks of a tube or a bend without knowing whose it is. */
    private static <T> Answer<T> named(String whose, GeometryInput input, Answer<T> answer) {
        if (answer instanceof Answer.NotDeterminable<T> none) {
            return new Answer.NotDeterminable<>(none.gaps().stream()
                    .map(gap -> new Answer.Gap(
                            input.code(),
                            Character.toUpperCase(whose.charAt(0)) + whose.substring(1) + ": " + gap.words()))
                    .toList());
        }
        return answer;
    }

    static <A, B, R> Answer<R> with(Answer<A> one, Answer<B> other, BiFunction<A, B, Answer<R>> then) {
        return one.then(a -> other.then(b -> then.apply(a, b)));
    }
}
