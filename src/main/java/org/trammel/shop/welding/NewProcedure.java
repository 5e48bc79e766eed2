package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Embedded;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a procedure asks for.
 *
 * @param process its number in ISO 4063, such as 141
 * @param joints BW for butt welds, FW for fillet welds
 * @param thicknessFrom_mm thinnest wall it is for; null while it is a draft
 */
@Embeddable
public record NewProcedure(
        @Column(name = "what", nullable = false) String what,
        @Column(name = "metal", nullable = false) String metal,
        @Column(name = "process", nullable = false) String process,

        @Convert(converter = WordList.class) @Column(name = "joint", nullable = false)
        List<String> joints,

        @Nullable @Column(name = "thickness_from_mm") BigDecimal thicknessFrom_mm,
        @Nullable @Column(name = "thickness_to_mm") BigDecimal thicknessTo_mm,
        @Embedded GuardedOperations operations,
        @Embedded ArcSettings arc,
        @Embedded HeatRules heat,
        @Embedded NodeRules nodes,
        @Embedded LookRules looks,
        @Embedded Papers papers) {

    /** What a program leaves out is empty, as in a form. */
    public NewProcedure {
        what = what == null ? "" : what;
        metal = metal == null ? "" : metal;
        process = process == null ? "" : process;
        joints = joints == null ? List.of() : List.copyOf(joints);
        operations = operations == null ? new GuardedOperations(List.of(), List.of(), List.of()) : operations;
        arc = arc == null ? new ArcSettings(List.of(), null, List.of(), null, "", "", null, null) : arc;
        heat = heat == null ? new HeatRules(null, null, null, null, 0) : heat;
        nodes = nodes == null ? new NodeRules(null, null, null, false, false, 2) : nodes;
        looks = looks == null ? new LookRules("", "", "") : looks;
        papers = papers == null ? new Papers("", "", "", "") : papers;
    }

    static final Set<String> METALS = new LinkedHashSet<>(List.of("AL6061", "AL7005", "STEEL", "TI"));
    static final List<String> JOINTS = List.of("BW", "FW");

    boolean isForWall(BigDecimal wall_mm) {
        return (thicknessFrom_mm == null || wall_mm.compareTo(thicknessFrom_mm) >= 0)
                && (thicknessTo_mm == null || wall_mm.compareTo(thicknessTo_mm) <= 0);
    }
}
