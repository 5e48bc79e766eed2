package org.trammel.shop.materials;

import java.util.List;
import org.trammel.calc.scheduling.CutPlan;
import org.trammel.calc.scheduling.TubeKind;

/**
 * How the blanks of all frames that wait for the saw are laid into the bars and remnants on the rack.
 *
 * @param kinds one section and metal each, laid apart from all others
 * @param butted tubes that are bought in one length, told and not laid
 * @param undrawn marks of frames whose blanks cannot be computed
 */
public record SawPlan(List<Kind> kinds, List<Want> butted, List<String> undrawn) {

    /** A tube that a frame wants. */
    public record Want(String mark, String tube, TubeKind kind, double length_mm) {}

    /**
     * One section and metal.
     *
     * @param section outside and wall, as it is written
     * @param metal code of the metal
     * @param wanted how many blanks
     * @param bars in the order they are cut
     * @param newStock_mm length of new bars that are opened
     * @param least_mm what no plan can stay below
     * @param proven whether no plan opens less
     * @param waste_percent of what is used up, the part that becomes no tube
     * @param split frames whose blanks of this kind come from several lots
     * @param gaps why there is no plan, one sentence each
     */
    public record Kind(
            String section,
            String metal,
            int wanted,
            List<Bar> bars,
            double newStock_mm,
            double least_mm,
            boolean proven,
            double waste_percent,
            List<String> split,
            List<String> gaps) {

        static String none(String section, String metal) {
            return "There is no bar and no remnant of " + section + " " + metal + " on the rack.";
        }

        static Kind planned(TubeKind kind, int wanted, CutPlan plan) {
            CutPlan.Share share = plan.shares().get(0);
            return new Kind(
                    kind.section(),
                    kind.alloy(),
                    wanted,
                    plan.bars().stream()
                            .map(bar -> new Bar(
                                    bar.stock().lot(),
                                    bar.stock().remnant(),
                                    bar.stock().length_mm(),
                                    bar.blanks().stream()
                                            .map(blank -> new Piece(blank.frame(), blank.name(), blank.length_mm()))
                                            .toList(),
                                    bar.offcut_mm(),
                                    bar.kept()))
                            .toList(),
                    share.newStock_mm(),
                    share.leastNewStock_mm(),
                    share.proven(),
                    plan.waste_percent(),
                    plan.lotsOfSplitFrames().entrySet().stream()
                            .map(one -> one.getKey() + ": " + String.join(", ", one.getValue()))
                            .toList(),
                    List.of());
        }

        /** Whether the rack has none of it, so that nothing more is to be said of it. */
        public boolean none() {
            return gaps.equals(List.of(none(section, metal)));
        }

        static Kind unplanned(TubeKind kind, int wanted, List<String> gaps) {
            return new Kind(kind.section(), kind.alloy(), wanted, List.of(), 0, 0, false, 0, List.of(), gaps);
        }
    }

    /** A bar and what is cut from it, in order; kept where what is left goes back to the rack. */
    public record Bar(
            String lot, boolean remnant, double length_mm, List<Piece> pieces, double left_mm, boolean kept) {}

    /** A blank of a frame. */
    public record Piece(String mark, String tube, double length_mm) {}
}
