package org.trammel.calc.geometry;

/**
 * A round tube as it is bought.
 *
 * @param outside_mm diameter
 * @param profile its wall
 */
public record TubeStock(double outside_mm, WallProfile profile) {

    /** Of one wall. */
    public static TubeStock plain(double outside_mm, double wall_mm) {
        return new TubeStock(outside_mm, new WallProfile.Plain(wall_mm));
    }

    void check(Objections objections, FrameTube tube) {
        String name = tube.word();
        objections.length(tube.input("outside"), name + "'s outside", outside_mm);
        wall(objections, tube, "", profile.wallAtOne_mm());
        if (profile instanceof WallProfile.Butted butted) {
            wall(objections, tube, " at the second end", butted.wallAtTwo_mm());
            wall(objections, tube, " in the middle", butted.middleWall_mm());
            objections
                    .length(tube.input("makersLength"), name + "'s length as bought", butted.makersLength_mm())
                    .lengthOrNone(
                            tube.input("endOne"),
                            name + "'s butt at the first end",
                            butted.endOne().length_mm())
                    .lengthOrNone(
                            tube.input("endTwo"),
                            name + "'s butt at the second end",
                            butted.endTwo().length_mm())
                    .unless(
                            !(butted.endOne().length_mm() + butted.endTwo().length_mm() > butted.makersLength_mm()),
                            tube.input("makersLength"),
                            () -> "The " + name + "'s butts of "
                                    + Objections.shown(butted.endOne().length_mm())
                                    + " and " + Objections.shown(butted.endTwo().length_mm())
                                    + " are longer than the tube of " + Objections.shown(butted.makersLength_mm())
                                    + ".");
        }
    }

    private void wall(Objections objections, FrameTube tube, String where, double wall_mm) {
        objections
                .length(tube.input("wall"), tube.word() + "'s wall" + where, wall_mm)
                .unless(
                        !(wall_mm >= outside_mm / 2),
                        tube.input("wall"),
                        () -> "The " + tube.word() + "'s wall" + where + " of " + Objections.shown(wall_mm)
                                + " leaves no bore in " + Objections.shown(outside_mm) + ".");
    }
}
