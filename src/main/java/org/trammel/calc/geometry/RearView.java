package org.trammel.calc.geometry;

import java.util.Optional;

/** A rear end as it is seen from above: with stays, or a swing arm. */
public sealed interface RearView permits RearPlan, ArmPlan {

    /** The room between the tyre and what runs beside it to the axle; empty where the tyre's width is not known. */
    Optional<TyreRoom> tyreRoom();
}
