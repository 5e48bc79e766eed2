package org.trammel.calc.metrology;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Something of a frame that was measured, and what follows from it. */
sealed interface FramePart {

    /** What it tells. */
    Set<Deviation> tells();

    /**
     * Computes it.
     *
     * @param q values of all quantities
     * @param into takes what the part tells, mm and radians
     */
    void tell(double[] q, Datum datum, Map<Deviation, Double> into);

    /** A tube's axis of least squares. */
    record Axis(Vec mean, Vec along, Vec lower, Vec upper) {

        static Axis of(List<Spot> spots, double[] q) {
            List<Vec> points = Spot.at(spots, q);
            Vec ends = points.get(points.size() - 1).minus(points.get(0));
            double[] weights = Spot.weights(spots);
            Vec mean = Vec.mean(points, weights);
            Vec along = points.size() == 2
                    ? ends.unit()
                    : Scatter.of(points, weights).along();
            Vec up = along.dot(ends) < 0 ? along.times(-1) : along;
            double least = points.stream()
                    .mapToDouble(p -> p.minus(mean).dot(up))
                    .min()
                    .orElse(0);
            double most = points.stream()
                    .mapToDouble(p -> p.minus(mean).dot(up))
                    .max()
                    .orElse(0);
            return new Axis(mean, up, mean.plus(up.times(least)), mean.plus(up.times(most)));
        }

        double lean_rad(Datum datum) {
            return Math.asin(along.dot(datum.normal()));
        }

        Vec middle() {
            return lower.plus(upper).times(0.5);
        }
    }

    /** Head tube and seat tube; one of them may be empty. */
    record Tubes(List<Spot> head, List<Spot> seat) implements FramePart {

        @Override
        public Set<Deviation> tells() {
            Set<Deviation> all = EnumSet.noneOf(Deviation.class);
            if (!head.isEmpty()) {
                all.add(Deviation.HEAD_TUBE_LEAN);
                all.add(Deviation.HEAD_TUBE_OFFSET);
            }
            if (!seat.isEmpty()) {
                all.add(Deviation.SEAT_TUBE_LEAN);
            }
            if (!head.isEmpty() && !seat.isEmpty()) {
                all.add(Deviation.TWIST);
            }
            return all;
        }

        @Override
        public void tell(double[] q, Datum datum, Map<Deviation, Double> into) {
            Optional<Axis> headAxis = head.isEmpty() ? Optional.empty() : Optional.of(Axis.of(head, q));
            Optional<Axis> seatAxis = seat.isEmpty() ? Optional.empty() : Optional.of(Axis.of(seat, q));
            headAxis.ifPresent(axis -> {
                into.put(Deviation.HEAD_TUBE_LEAN, axis.lean_rad(datum));
                into.put(Deviation.HEAD_TUBE_OFFSET, datum.offset_mm(axis.middle()));
            });
            seatAxis.ifPresent(axis -> into.put(Deviation.SEAT_TUBE_LEAN, axis.lean_rad(datum)));
            headAxis.ifPresent(
                    h -> seatAxis.ifPresent(s -> into.put(Deviation.TWIST, h.lean_rad(datum) - s.lean_rad(datum))));
        }
    }

    /**
     * The dropouts at the axle: the mean of each inner face's points or, where the axle's ends and three points or more of
     * each face are known, the plane of the face where the axle passes it.
     *
     * @param widths places of quantities that are inside widths; empty if the faces tell it
     */
    record Axle(
            List<Spot> drive,
            List<Spot> nonDrive,
            List<Integer> widths,
            @Nullable Spot driveEnd,
            @Nullable Spot nonDriveEnd)
            implements FramePart {

        @Override
        public Set<Deviation> tells() {
            return EnumSet.of(Deviation.REAR_AXLE_OFFSET, Deviation.AXLE_WIDTH);
        }

        /** Whether the faces are to give planes. */
        boolean planes() {
            return driveEnd != null && nonDriveEnd != null && drive.size() >= 3 && nonDrive.size() >= 3;
        }

        @Override
        public void tell(double[] q, Datum datum, Map<Deviation, Double> into) {
            double d = offset_mm(drive, driveEnd, q, datum);
            double n = offset_mm(nonDrive, nonDriveEnd, q, datum);
            into.put(Deviation.REAR_AXLE_OFFSET, (d + n) / 2);
            into.put(
                    Deviation.AXLE_WIDTH,
                    widths.stream().mapToDouble(at -> q[at]).average().orElse(d - n));
        }

        private double offset_mm(List<Spot> face, @Nullable Spot end, double[] q, Datum datum) {
            List<Vec> points = Spot.at(face, q);
            double[] weights = Spot.weights(face);
            Vec mean = Vec.mean(points, weights);
            if (end == null || !planes()) {
                return datum.offset_mm(mean);
            }
            Vec across = Scatter.of(points, weights).across();
            Vec at = end.at(q);
            double ahead = across.dot(mean.minus(at)) / across.dot(datum.normal());
            return datum.offset_mm(at) + ahead;
        }
    }

    /** Stays measured by calliper; the axle part before it tells the width. */
    record StayLengths(int drive, int nonDrive, boolean width) implements FramePart {

        @Override
        public Set<Deviation> tells() {
            return width
                    ? EnumSet.of(Deviation.CHAINSTAY_DIFFERENCE, Deviation.REAR_YAW)
                    : EnumSet.of(Deviation.CHAINSTAY_DIFFERENCE);
        }

        @Override
        public void tell(double[] q, Datum datum, Map<Deviation, Double> into) {
            double difference = q[drive] - q[nonDrive];
            into.put(Deviation.CHAINSTAY_DIFFERENCE, difference);
            if (width) {
                into.put(Deviation.REAR_YAW, Math.atan2(difference, into.getOrDefault(Deviation.AXLE_WIDTH, 0.0)));
            }
        }
    }

    /** Gaps between the dropouts. */
    record Gaps(int fore, int aft, int up, int down, double span_mm) implements FramePart {

        @Override
        public Set<Deviation> tells() {
            return EnumSet.of(Deviation.DROPOUTS_FORE_AFT, Deviation.DROPOUTS_UP_DOWN);
        }

        @Override
        public void tell(double[] q, Datum datum, Map<Deviation, Double> into) {
            into.put(Deviation.DROPOUTS_FORE_AFT, (q[fore] - q[aft]) * SideView.DROPOUT_MM / span_mm);
            into.put(Deviation.DROPOUTS_UP_DOWN, (q[up] - q[down]) * SideView.DROPOUT_MM / span_mm);
        }
    }

    /** The side view by positions of its own. */
    record Side(Spot shell, Spot axle, List<Spot> head, List<Spot> seat, double drawnX_mm, double drawnY_mm)
            implements FramePart {

        @Override
        public Set<Deviation> tells() {
            Set<Deviation> all = EnumSet.of(Deviation.HEAD_ANGLE, Deviation.STACK, Deviation.REACH);
            if (!seat.isEmpty()) {
                all.add(Deviation.SEAT_ANGLE);
            }
            return all;
        }

        @Override
        public void tell(double[] q, Datum datum, Map<Deviation, Double> into) {
            Axis up = Axis.of(head, q);
            SideView view = SideView.of(shell.at(q), axle.at(q), up.along(), new Vec(0, 0, 1), drawnX_mm, drawnY_mm);
            into.put(Deviation.HEAD_ANGLE, view.angle_rad(up.along()));
            Vec top = head.get(head.size() - 1).at(q).minus(shell.at(q));
            into.put(Deviation.STACK, view.up().dot(top));
            into.put(Deviation.REACH, view.ahead().dot(top));
            if (!seat.isEmpty()) {
                into.put(Deviation.SEAT_ANGLE, view.angle_rad(Axis.of(seat, q).along()));
            }
        }
    }

    /**
     * What points in space tell of the side view: stays, yaw, dropouts and, with the drawing's axle, angles, stack and
     * reach.
     *
     * @param bore points round the shell's bore
     * @param top centre of the head tube's upper end, or null
     * @param drawn place of the axle on the drawing, or null
     */
    record InSpace(
            List<Spot> bore,
            Spot driveEnd,
            Spot nonDriveEnd,
            List<Spot> head,
            List<Spot> seat,
            @Nullable Spot top,
            List<Spot> driveDropout,
            List<Spot> nonDriveDropout,
            PointReadings.@Nullable DrawnAxle drawn)
            implements FramePart {

        private boolean viewed() {
            return drawn != null && !head.isEmpty();
        }

        private boolean dropouts() {
            return viewed() && driveDropout.size() >= 3 && nonDriveDropout.size() >= 3;
        }

        @Override
        public Set<Deviation> tells() {
            Set<Deviation> all = EnumSet.of(Deviation.CHAINSTAY_DIFFERENCE, Deviation.REAR_YAW);
            if (viewed()) {
                all.add(Deviation.HEAD_ANGLE);
                if (!seat.isEmpty()) {
                    all.add(Deviation.SEAT_ANGLE);
                }
                if (top != null) {
                    all.add(Deviation.STACK);
                    all.add(Deviation.REACH);
                }
            }
            if (dropouts()) {
                all.add(Deviation.DROPOUTS_FORE_AFT);
                all.add(Deviation.DROPOUTS_UP_DOWN);
            }
            return all;
        }

        @Override
        public void tell(double[] q, Datum datum, Map<Deviation, Double> into) {
            Vec n = datum.normal();
            Vec d = driveEnd.at(q);
            Vec o = nonDriveEnd.at(q);
            Vec shell = SideView.centre(datum, Spot.at(bore, q), d);
            double longer =
                    d.minus(shell).across(n).length() - o.minus(shell).across(n).length();
            into.put(Deviation.CHAINSTAY_DIFFERENCE, longer);
            into.put(Deviation.REAR_YAW, Math.atan2(longer, n.dot(d.minus(o))));
            if (drawn == null || head.isEmpty()) {
                return;
            }
            Vec headUp = Axis.of(head, q).along();
            SideView view = SideView.of(shell, d.plus(o).times(0.5), headUp, n, drawn.x_mm(), drawn.y_mm());
            into.put(Deviation.HEAD_ANGLE, view.angle_rad(headUp));
            if (!seat.isEmpty()) {
                into.put(Deviation.SEAT_ANGLE, view.angle_rad(Axis.of(seat, q).along()));
            }
            if (top != null) {
                Vec end = top.at(q).minus(shell);
                into.put(Deviation.STACK, view.up().dot(end));
                into.put(Deviation.REACH, view.ahead().dot(end));
            }
            if (dropouts()) {
                Vec opens = slope(driveDropout, q, n).minus(slope(nonDriveDropout, q, n));
                into.put(
                        Deviation.DROPOUTS_FORE_AFT,
                        SideView.DROPOUT_MM * view.ahead().dot(opens));
                into.put(
                        Deviation.DROPOUTS_UP_DOWN,
                        SideView.DROPOUT_MM * view.up().dot(opens));
            }
        }

        /** Rise of a face towards the drive side per length, as a vector in the middle plane. */
        private static Vec slope(List<Spot> face, double[] q, Vec n) {
            Vec across = Scatter.of(Spot.at(face, q), Spot.weights(face)).across();
            return across.across(n).times(-1 / across.dot(n));
        }
    }
}
