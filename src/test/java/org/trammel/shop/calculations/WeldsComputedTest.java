package org.trammel.shop.calculations;

import static org.assertj.core.api.Assertions.assertThat;

import com.jayway.jsonpath.DocumentContext;
import java.math.BigDecimal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;

/** Heat and gas of welds, for programs that bring their own figures. */
@ShopTest
class WeldsComputedTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    private Sent worker;

    @BeforeEach
    void hire() {
        worker = new Sent(mvc, crew.byId(hands.hire(Role.STATION_WORKER)));
    }

    /** 0.6 · 14 V · 95 A · 60 s / (150 mm · 1000) = 0.3192 kJ/mm, form of EN 1011-1, worked by hand. */
    @Test
    void theHeatOfAnArcIsTold() throws Exception {
        DocumentContext heat = worker.computed(
                "heat-input", "{\"efficiency\": 0.6, \"volts\": 14, \"amps\": 95, \"lengthMm\": 150, \"seconds\": 60}");
        assertThat(heat.read("$.kJPerMm", BigDecimal.class)).isEqualByComparingTo("0.3192");
    }

    /** ln(209 000 / 50) = 8.338, so 8.34 volumes; of 1.78 L at 8 L/min 1.856 min, so 1.9; worked by hand. */
    @Test
    void theGasOfAPurgeIsTold() throws Exception {
        DocumentContext purge = worker.computed("purge", "{\"oxygenPpm\": 50, \"roomL\": 1.78, \"flowLPerMin\": 8}");
        assertThat(purge.read("$.volumes", BigDecimal.class)).isEqualByComparingTo("8.34");
        assertThat(purge.read("$.minutes", BigDecimal.class)).isEqualByComparingTo("1.9");
        assertThat(worker.computed("purge", "{\"oxygenPpm\": 50}").read("$.minutes", Object.class))
                .isNull();
    }
}
