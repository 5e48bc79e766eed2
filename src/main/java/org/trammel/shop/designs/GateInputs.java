package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Which inputs of a drawing a check of the gate rests on: those its figures are computed from, and those that whoever
 * answers looks at beside them. Where it is in doubt an input belongs to a check, for then an answer lapses once too often
 * and never once too seldom.
 */
final class GateInputs {

    /** What the side view is closed from. */
    private static final Set<GeometryInput> CLOSED = of(
            GeometryInput.Group.LAYOUT,
            input -> input != GeometryInput.STACK_ASKED && input != GeometryInput.AXLE_WIDTH);

    /** What places the ends of the head tube. */
    private static final Set<GeometryInput> FRONT = EnumSet.of(
            GeometryInput.HEAD_ANGLE,
            GeometryInput.REACH,
            GeometryInput.HEAD_TUBE,
            GeometryInput.LOWER_STACK,
            GeometryInput.FORK_LENGTH,
            GeometryInput.FORK_OFFSET,
            GeometryInput.SHELL_DROP,
            GeometryInput.FRONT_WHEEL_RADIUS,
            GeometryInput.SHELL_TO_SHELL);

    private static final Set<GeometryInput> SEAT_AXIS =
            EnumSet.of(GeometryInput.SEAT_ANGLE, GeometryInput.SEAT_TUBE, GeometryInput.SEAT_TUBE_OFFSET);

    private GateInputs() {}

    static Set<GeometryInput> of(GateCheck check) {
        return switch (check) {
            case CLOSURE -> with(CLOSED, GeometryInput.STACK_ASKED);
            case TRAIL ->
                EnumSet.of(GeometryInput.HEAD_ANGLE, GeometryInput.FORK_OFFSET, GeometryInput.FRONT_WHEEL_RADIUS);
            case TYRE_CLEARANCE ->
                with(
                        union(CLOSED, of(GeometryInput.Group.SUSPENSION, input -> true)),
                        GeometryInput.SEAT_TUBE_OUTSIDE,
                        GeometryInput.FORMED_SEAT_TUBE_SHELL,
                        GeometryInput.FORMED_SEAT_TUBE_SHELL_ZONE);
            case TYRE_STAYS ->
                with(
                        union(
                                union(CLOSED, of(GeometryInput.Group.SUSPENSION, input -> true)),
                                union(of(GeometryInput.Group.STAYS, input -> true), named("FORMED_CHAINSTAY"))),
                        GeometryInput.AXLE_WIDTH,
                        GeometryInput.REAR_TYRE_WIDTH,
                        GeometryInput.CHAINSTAY_AT_SHELL,
                        GeometryInput.SHELL_OUTSIDE,
                        GeometryInput.CHAINSTAY_OUTSIDE,
                        GeometryInput.SEATSTAY_AT_SEAT,
                        GeometryInput.SEAT_TUBE_OUTSIDE,
                        GeometryInput.SEATSTAY_OUTSIDE);
            case SWING ->
                with(
                        union(CLOSED, of(GeometryInput.Group.SUSPENSION, input -> true)),
                        GeometryInput.DOWN_TUBE_AT_HEAD,
                        GeometryInput.SEAT_TUBE_OUTSIDE,
                        GeometryInput.DOWN_TUBE_OUTSIDE,
                        GeometryInput.FORMED_SEAT_TUBE_SHELL,
                        GeometryInput.FORMED_SEAT_TUBE_SHELL_ZONE,
                        GeometryInput.FORMED_DOWN_TUBE_SHELL,
                        GeometryInput.FORMED_DOWN_TUBE_SHELL_ZONE);
            case TOE_CLEARANCE -> with(FRONT, GeometryInput.CRANK, GeometryInput.FEET_HELD);
            case STANDOVER ->
                with(
                        union(FRONT, SEAT_AXIS),
                        GeometryInput.TOP_TUBE_AT_HEAD,
                        GeometryInput.TOP_TUBE_AT_SEAT,
                        GeometryInput.TOP_TUBE_OUTSIDE,
                        GeometryInput.HEAD_TUBE_OUTSIDE,
                        GeometryInput.SEAT_TUBE_OUTSIDE,
                        GeometryInput.FORMED_TOP_TUBE_HEAD,
                        GeometryInput.FORMED_TOP_TUBE_HEAD_ZONE,
                        GeometryInput.FORMED_TOP_TUBE_SEAT,
                        GeometryInput.FORMED_TOP_TUBE_SEAT_ZONE);
            case HEAD_NODES ->
                with(
                        union(FRONT, SEAT_AXIS),
                        GeometryInput.TOP_TUBE_AT_HEAD,
                        GeometryInput.TOP_TUBE_AT_SEAT,
                        GeometryInput.DOWN_TUBE_AT_HEAD,
                        GeometryInput.HEAD_TUBE_OUTSIDE,
                        GeometryInput.TOP_TUBE_OUTSIDE,
                        GeometryInput.DOWN_TUBE_OUTSIDE,
                        GeometryInput.FORMED_TOP_TUBE_HEAD,
                        GeometryInput.FORMED_TOP_TUBE_HEAD_ZONE,
                        GeometryInput.FORMED_DOWN_TUBE_HEAD,
                        GeometryInput.FORMED_DOWN_TUBE_HEAD_ZONE);
            case SEATPOST ->
                with(
                        union(
                                union(SEAT_AXIS, of(GeometryInput.Group.SUSPENSION, input -> true)),
                                union(named("SEAT_TUBE_"), union(named("FORMED_SEAT_TUBE"), named("SEATPOST")))),
                        GeometryInput.SHELL_TO_SHELL,
                        GeometryInput.SADDLE_CLAMP,
                        GeometryInput.SADDLE_HEIGHT,
                        GeometryInput.SADDLE_STACK,
                        GeometryInput.TOP_TUBE_AT_SEAT,
                        GeometryInput.TOP_TUBE_OUTSIDE,
                        GeometryInput.SEATSTAY_AT_SEAT);
            case OVERALL_LENGTH ->
                with(
                        CLOSED,
                        GeometryInput.PIVOT_AHEAD,
                        GeometryInput.AXLE_TO_STAY,
                        GeometryInput.HEAD_TUBE_OUTSIDE,
                        GeometryInput.SHELL_OUTSIDE,
                        GeometryInput.SEAT_TUBE_OUTSIDE);
            case MITRES -> drawnBut(GeometryInput.Group.PARTS, GeometryInput.Group.FIT);
            case TEST_FAMILY -> drawnBut(GeometryInput.Group.PARTS, GeometryInput.Group.FIT);
            case COMPONENTS ->
                drawnBut(GeometryInput.Group.NODES, GeometryInput.Group.BUTTS, GeometryInput.Group.FORMED);
            case NOMINALS -> EnumSet.allOf(GeometryInput.class);
            case RIDER_DATA ->
                EnumSet.of(
                        GeometryInput.SADDLE_HEIGHT,
                        GeometryInput.SADDLE_SETBACK,
                        GeometryInput.SADDLE_TO_BAR,
                        GeometryInput.SADDLE_OVER_BAR);
            case COUNTRY, DEPOSIT -> Set.of();
        };
    }

    /** How heavy its parts are says nothing about the room that a frame leaves. */
    private static Set<GeometryInput> drawnBut(GeometryInput.Group... left) {
        Set<GeometryInput.Group> groups = EnumSet.allOf(GeometryInput.Group.class);
        groups.remove(GeometryInput.Group.MASS);
        Arrays.asList(left).forEach(groups::remove);
        return Arrays.stream(GeometryInput.values())
                .filter(input -> groups.contains(input.group()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(GeometryInput.class)));
    }

    private static Set<GeometryInput> of(GeometryInput.Group group, Predicate<GeometryInput> which) {
        return Arrays.stream(GeometryInput.values())
                .filter(input -> input.group() == group && which.test(input))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(GeometryInput.class)));
    }

    private static Set<GeometryInput> named(String begins) {
        return Arrays.stream(GeometryInput.values())
                .filter(input -> input.code().startsWith(begins))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(GeometryInput.class)));
    }

    private static Set<GeometryInput> with(Set<GeometryInput> inputs, GeometryInput... more) {
        return union(inputs, EnumSet.copyOf(Arrays.asList(more)));
    }

    private static Set<GeometryInput> union(Set<GeometryInput> one, Set<GeometryInput> other) {
        Set<GeometryInput> all = EnumSet.copyOf(one);
        all.addAll(other);
        return all;
    }
}
