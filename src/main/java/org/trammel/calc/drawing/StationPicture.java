package org.trammel.calc.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.geometry.SideView.Hub;
import org.trammel.calc.geometry.SideView.Member;
import org.trammel.calc.geometry.SideView.Part;

/**
 * A small picture of the frame from its drive side on which the part at hand stands out: by lines more than twice as wide,
 * by a ring about the joint where two parts are named, and by its name with a leader.
 */
public final class StationPicture {

    private static final double LETTERS_MM = 5.2;
    private static final double AROUND_MM = 5;
    private static final double[] LEADERS_MM = {14, 18, 24, 30, 36, 44, 52, 60};

    private final SideView view;
    private final AtHand atHand;
    private final Board board;
    private final Scale scale;
    private final double width;
    private final double height;

    private StationPicture(SideView view, AtHand atHand, Lettering lettering, double width_mm, double height_mm) {
        this.view = view;
        this.atHand = atHand;
        this.width = width_mm;
        this.height = height_mm;
        this.board = new Board(lettering, Box.between(1, 1, width_mm - 1, height_mm - 1));
        List<Point> all = Stream.concat(
                        view.members().stream().flatMap(member -> member.corners().stream()),
                        view.hubs().stream().flatMap(StationPicture::edges))
                .toList();
        double back = all.stream().mapToDouble(Point::x_mm).min().orElse(0);
        double front = all.stream().mapToDouble(Point::x_mm).max().orElse(1);
        double low = all.stream().mapToDouble(Point::y_mm).min().orElse(0);
        double high = all.stream().mapToDouble(Point::y_mm).max().orElse(1);
        // no sheet: it is as large as it fits, and says so by having no scale
        int fits = (int) Math.ceil(
                Math.max((front - back) / (width_mm - 2 * AROUND_MM), (high - low) / (height_mm - 2 * AROUND_MM)));
        this.scale =
                new Scale(fits, new At(width_mm - AROUND_MM - front / fits, height_mm / 2 - (high + low) / 2 / fits));
    }

    private static Stream<Point> edges(Hub hub) {
        double r = hub.outside_mm() / 2;
        return Stream.of(
                new Point(hub.centre().x_mm() - r, hub.centre().y_mm() - r),
                new Point(hub.centre().x_mm() + r, hub.centre().y_mm() + r));
    }

    /** Whether a text names a part that one frame or another has. */
    public static boolean names(String words) {
        return AtHand.in(words, List.of(Part.values())).named();
    }

    /**
     * The picture; empty where the words name no part that this frame has.
     *
     * @param words of the step at hand, or the name of what is measured
     */
    public static Optional<DrawnSheet> of(
            SideView view, String words, Lettering lettering, double width_mm, double height_mm) {
        AtHand atHand = AtHand.in(
                words,
                Stream.concat(
                                view.members().stream().map(Member::part),
                                view.hubs().stream().map(Hub::part))
                        .toList());
        return atHand.named()
                ? Optional.of(new StationPicture(view, atHand, lettering, width_mm, height_mm).drawn())
                : Optional.empty();
    }

    private DrawnSheet drawn() {
        Part first = atHand.parts().get(0);
        SideSheet.outlines(board, scale, view, List.of(first));
        emphasised(first);
        At place = joint().map(this::ringed).orElseGet(() -> scale.at(middle(first)));
        new Dimensions(board).note(place, atHand.words(), LETTERS_MM, LEADERS_MM);
        return new DrawnSheet("At hand: " + atHand.words() + ".", width, height, 0, board.marks());
    }

    /** Once more over what lies over it, so that its whole outline stands out. */
    private void emphasised(Part part) {
        view.members().stream()
                .filter(member -> member.part() == part)
                .forEach(member ->
                        board.area(member.corners().stream().map(scale::at).toList(), Pen.EMPHASIS, Fill.NONE));
    }

    private Point middle(Part part) {
        return places(part).stream().findFirst().orElseThrow();
    }

    private List<Point> places(Part part) {
        List<Point> places = new ArrayList<>();
        view.members().stream()
                .filter(member -> member.part() == part)
                .forEach(member -> places.add(new Point(
                        (member.from().x_mm() + member.to().x_mm()) / 2,
                        (member.from().y_mm() + member.to().y_mm()) / 2)));
        view.hubs().stream().filter(hub -> hub.part() == part).forEach(hub -> places.add(hub.centre()));
        return places;
    }

    /** Where the first part named ends on the second, if there are two. */
    private Optional<Point> joint() {
        if (atHand.parts().size() < 2) {
            return Optional.empty();
        }
        Point best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Point end : ends(atHand.parts().get(0))) {
            double distance = distance_mm(end, atHand.parts().get(1));
            if (distance < least) {
                least = distance;
                best = end;
            }
        }
        return Optional.ofNullable(best);
    }

    private List<Point> ends(Part part) {
        List<Point> ends = new ArrayList<>();
        view.members().stream().filter(member -> member.part() == part).forEach(member -> {
            ends.add(member.from());
            ends.add(member.to());
        });
        return ends.isEmpty() ? places(part) : ends;
    }

    private double distance_mm(Point place, Part part) {
        double least = Double.POSITIVE_INFINITY;
        for (Member member : view.members()) {
            if (member.part() == part) {
                least = Math.min(least, distance_mm(place, member));
            }
        }
        for (Hub hub : view.hubs()) {
            if (hub.part() == part) {
                least = Math.min(
                        least,
                        Math.hypot(
                                place.x_mm() - hub.centre().x_mm(),
                                place.y_mm() - hub.centre().y_mm()));
            }
        }
        return least;
    }

    private static double distance_mm(Point place, Member member) {
        At from = new At(member.from().x_mm(), member.from().y_mm());
        At run = new At(member.to().x_mm(), member.to().y_mm()).minus(from);
        At at = new At(place.x_mm(), place.y_mm());
        double share = Math.max(0, Math.min(1, at.minus(from).dot(run) / run.dot(run)));
        return at.minus(from.plus(run.times(share))).length();
    }

    private At ringed(Point joint) {
        At at = scale.at(joint);
        double radius = Math.max(4.5, scale.length(38));
        board.ring(at, radius, Pen.NARROW, Fill.NONE);
        // the leader points at the ring from outside its frame
        At middle = new At(width / 2, height / 2);
        At out = at.minus(middle).length() < 1 ? new At(0, 1) : middle.minus(at).unit();
        board.keepFree(new Box(at, new At(1, 0), radius * 0.7, radius * 0.7));
        return at.plus(out, radius);
    }
}
