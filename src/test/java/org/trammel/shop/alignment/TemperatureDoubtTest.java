package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.metrology.Contribution;
import org.trammel.calc.metrology.ErrorKind;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.settings.Settings;

/**
 * A length read while part and gauge may lie some kelvin apart: u = (α of the part − α of the gauge) · L · u(t), JCGM
 * 100:2008, H.1.3, with the expansions that are in force as settings.
 */
class TemperatureDoubtTest extends OnThePlate {

    @Autowired
    private Doubts doubts;

    @Autowired
    private Settings settings;

    @ParameterizedTest
    @CsvSource({"AL6061", "AL7005", "STEEL", "TI"})
    void theExpansionsOfTheSettingsMakeAFigureDoubtful(String metal) {
        Map<String, String> before = new HashMap<>();
        List.of("table.temperature", "expansion." + metal, "gauge.expansion")
                .forEach(key -> before.put(key, settings.text(key)));
        set("table.temperature", "5");
        set("expansion." + metal, "21.5");
        set("gauge.expansion", "10.5");
        try {
            WholeShop.Frame frame = frame();
            read(frame, Spot.AXLE_DRIVE, "224.10");
            RawLine line = Objects.requireNonNull(sheet(frame).at(Spot.AXLE_DRIVE));
            // 11.0e-6 1/K · 224.10 mm · 5 K
            assertThat(doubts.height(Spot.AXLE_DRIVE, line, metal).contributions().stream()
                            .filter(cause -> cause.kind() == ErrorKind.TEMPERATURE)
                            .mapToDouble(Contribution::u))
                    .singleElement()
                    .satisfies(u -> assertThat(u).isCloseTo(0.0123255, within(1e-9)));
        } finally {
            before.forEach(this::set);
        }
    }

    private void set(String key, String value) {
        settings.change(shop.act(qa), key, value, "a test", "to see that it counts");
    }
}
