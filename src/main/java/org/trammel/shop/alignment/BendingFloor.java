package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.metrology.ElasticFloor;
import org.trammel.calc.statistics.PushProposal;
import org.trammel.calc.units.Answer;
import org.trammel.shop.designs.DrawnFrames;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/**
 * What only springs back, by the bending of a stay whose end is moved sideways. Of a twist, a lean or a dropout that is turned
 * nothing is computed: no single tube of known length bends there.
 */
@Component
class BendingFloor {

    /** MPa; handbook values, from memory. */
    private static final Map<String, Double> YOUNGS_MODULUS_MPA =
            Map.of("AL6061", 70_000.0, "AL7005", 70_000.0, "STEEL", 205_000.0, "TI", 105_000.0);

    private final Settings settings;
    private final Formats formats;

    BendingFloor(Settings settings, Formats formats) {
        this.settings = settings;
        this.formats = formats;
    }

    /**
     * In words; or why it is not computed.
     *
     * @param tube null where the drawing does not give it
     * @param set_mm to be taken out
     */
    String floor(String metal, Deviation what, DrawnFrames.@Nullable Section tube, double set_mm) {
        boolean both = what == Deviation.AXLE_WIDTH;
        if (!both && what != Deviation.REAR_AXLE_OFFSET) {
            return "Nothing is computed from bending: no single tube stands for the " + what.words()
                    + ". What only springs back is not known beforehand; measure after each push.";
        }
        BigDecimal length = tube == null ? null : tube.length_mm();
        Double modulus = YOUNGS_MODULUS_MPA.get(metal);
        if (tube == null || length == null || modulus == null) {
            return "Nothing is computed from bending: the drawing does not give section and length of the stay.";
        }
        Answer<String> words = ElasticFloor.of(
                        tube.outside_mm().doubleValue(),
                        tube.wall_mm().doubleValue(),
                        length.doubleValue(),
                        modulus,
                        settings.number("cold-set.yield." + metal).doubleValue())
                .then(floor -> floor.pushFor(both ? set_mm / 2 : set_mm, PushProposal.FIRST_SHARE)
                        .then(push -> Answer.of(bent(both, tube, length, floor, push))));
        return words instanceof Answer.Determined<String> there
                ? there.value()
                : formats.sentence(
                        ((Answer.NotDeterminable<String>) words).gaps().get(0).words());
    }

    /** A width is brought by both stays: each by half of it, or the frame is no longer even. */
    private String bent(
            boolean both, DrawnFrames.Section tube, BigDecimal length, ElasticFloor floor, ElasticFloor.Push push) {
        return (both ? "Each stay takes half of the width. " : "")
                + "Up to " + formats.with(floor.floor_mm(), 1, "mm") + " at the axle, "
                + formats.with(floor.force_N(), 0, "N")
                + ", nothing stays: the " + tube.tube() + ", " + section(tube) + " and "
                + formats.with(length, 0, "mm") + " free, springs back. By bending alone "
                + (both ? "each half" : "the set") + " wants "
                + formats.number(push.least_mm(), 1) + " to " + formats.with(push.most_mm(), 1, "mm")
                + "; from below, begin with " + formats.with(push.first_mm(), 1, "mm") + ".";
    }

    String section(DrawnFrames.Section tube) {
        return formats.number(tube.outside_mm().stripTrailingZeros()) + " × "
                + formats.with(tube.wall_mm().stripTrailingZeros(), 1, "mm");
    }
}
