package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.StepSheet;

/** A sheet says before the tap what the tick would be refused for. */
class BeforehandTest extends AtTheTablet {

    @Test
    void whoIsNotQualifiedIsOfferedNoTickAndToldWhy() throws Exception {
        Floor.Frame frame = floor.frame(
                SmallRoute.of(op("180").qualified("TORQUE").step("brakes").sheet())
                        .sheet());
        String page = page(address(frame));
        assertThat(page)
                .doesNotContain("Tick step 1")
                .contains("may not tick step 1")
                .contains("TORQUE");
        long fitter = floor.qualified("TORQUE", Role.STATION_WORKER);
        assertThat(page(address(frame), fitter)).contains("Tick step 1");
    }

    @Test
    void aStepWhoseRecordIsMissingLeadsToTheSheetOfTheRecord() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(op("020")
                        .step(new StepSheet("tubes", "", false, false, null, null, null, Proof.TUBES))
                        .sheet())
                .sheet());
        long operation = floor.at(frame).line().operationId();
        assertThat(page(address(frame)))
                .doesNotContain("Tick step 1")
                .containsPattern("class=\"btn main\" href=\"/tubes/" + operation + "\">First:");
    }
}
