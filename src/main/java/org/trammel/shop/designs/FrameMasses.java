package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.ExpectedMass;
import org.trammel.calc.geometry.FramePart;
import org.trammel.calc.geometry.MassCause;
import org.trammel.calc.geometry.MassComparison;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.settings.Settings;

/** Holds a weighed frame against what its drawing says it should weigh. */
@Service
public class FrameMasses {

    private static final double G_PER_KG = 1000;
    private static final int NEAREST = 5;

    private final DesignRevisionRepository revisions;
    private final SawDrawer saws;
    private final MassBasis basis;
    private final Settings settings;

    FrameMasses(DesignRevisionRepository revisions, SawDrawer saws, MassBasis basis, Settings settings) {
        this.revisions = revisions;
        this.saws = saws;
        this.basis = basis;
        this.settings = settings;
    }

    /**
     * Whether a characteristic of a traveller asks for the mass that a drawing knows.
     *
     * @param kind of the traveller's route
     */
    public static boolean isWeighing(String kind, String name, String unit) {
        return DrawnFeature.asked(kind, name, unit)
                .filter(feature -> feature == DrawnFeature.MASS || feature == DrawnFeature.ARM_MASS)
                .isPresent();
    }

    /**
     * The comparison; empty where the revision does not say what it should weigh.
     *
     * @param kind of the traveller's route
     * @param weighed_g uncoated on the scale
     * @param scaleU_g standard uncertainty of the weighing
     */
    @Transactional(readOnly = true)
    public Optional<WeighedFrame> compared(long revisionId, String kind, BigDecimal weighed_g, BigDecimal scaleU_g) {
        return revisions
                .whole(revisionId)
                .map(DesignRevision::sheet)
                .flatMap(sheet -> compared(
                        sheet,
                        WeighedPart.of(kind, sheet.geometry()),
                        weighed_g.doubleValue(),
                        scaleU_g.doubleValue()));
    }

    private Optional<WeighedFrame> compared(DesignSheet sheet, WeighedPart part, double weighed_g, double scaleU_g) {
        ComputedFrame frame = ComputedFrame.of(sheet, saws.rules());
        Answer<MassBasis.Metal> metal = basis.of(sheet.metal());
        Answer<ExpectedMass> mass = part == WeighedPart.SWING_ARM
                ? FrameMass.ofArm(sheet.geometry(), frame, saws.rules(), metal)
                : FrameMass.of(sheet.geometry(), frame, metal);
        Answer<MassComparison> compared = mass.then(
                expected -> MassComparison.of(expected, weighed_g / G_PER_KG, basis.search(scaleU_g / G_PER_KG)));
        return compared instanceof Answer.Determined<MassComparison> there
                ? Optional.of(words(there.value(), part))
                : Optional.empty();
    }

    private WeighedFrame words(MassComparison compared, WeighedPart part) {
        ExpectedMass expected = compared.expected();
        return new WeighedFrame(
                part,
                compared.weighed_kg() * G_PER_KG,
                expected.mass_kg() * G_PER_KG,
                expected.u_kg() * G_PER_KG,
                compared.difference_kg() * G_PER_KG,
                compared.u_kg() * G_PER_KG,
                compared.differenceInU(),
                Nominal.plain(BigDecimal.valueOf(compared.limit())),
                compared.flagged(),
                compared.flagged()
                        ? compared.causes().stream()
                                .limit(NEAREST)
                                .map(cause -> new WeighedFrame.Cause(
                                        words(cause.cause()),
                                        cause.change_kg() * G_PER_KG,
                                        cause.leftOver_kg() * G_PER_KG,
                                        cause.explains()))
                                .toList()
                        : List.of());
    }

    private String words(MassCause cause) {
        if (cause instanceof MassCause.OtherWall other) {
            FramePart.Tube tube = other.tube();
            String walls = " with a wall of " + written(other.wall_mm(), 2) + " mm in place of "
                    + (tube.sections().size() == 1
                            ? written(tube.sections().get(0).wallFrom_mm(), 2)
                            : "the butted one");
            return (other.count() == tube.count() ? "" : other.count() + " of the ") + tube.name() + walls;
        }
        if (cause instanceof MassCause.Missing missing) {
            return one(missing.pieces()) + "missing";
        }
        if (cause instanceof MassCause.Doubled doubled) {
            return one(doubled.pieces()) + "there twice";
        }
        MassCause.OtherWeld weld = (MassCause.OtherWeld) cause;
        return written(weld.mass_kg() * G_PER_KG, 0) + " g of weld in place of "
                + written(weld.weld().mass_kg() * G_PER_KG, 0);
    }

    private static String one(FramePart.Pieces pieces) {
        return (pieces.count() == 1 ? "" : "one of the ") + pieces.name() + " ";
    }

    private String written(double amount, int decimals) {
        return DecimalSign.of(settings.locale())
                .write(BigDecimal.valueOf(amount).setScale(decimals, java.math.RoundingMode.HALF_EVEN));
    }
}
