package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class FewestDecimalsTest {

    @Test
    void aColumnHasTheDecimalsThatOneOfItsFiguresNeeds() {
        assertThat(DrawnCharts.fewest(List.of(0.3, -0.1, 1.0), 3)).isEqualTo(1);
        assertThat(DrawnCharts.fewest(List.of(new BigDecimal("0.3500"), new BigDecimal("0.2")), 4))
                .isEqualTo(2);
    }

    @Test
    void wholeFiguresHaveNone() {
        assertThat(DrawnCharts.fewest(List.of(0.0, -20.0), 3)).isZero();
        assertThat(DrawnCharts.fewest(List.of(), 3)).isZero();
    }

    @Test
    void whatIsNotToldApartIsNotWritten() {
        assertThat(DrawnCharts.fewest(List.of(0.1 + 0.2), 3)).isEqualTo(1);
        assertThat(DrawnCharts.fewest(List.of(1.0 / 3), 3)).isEqualTo(3);
    }
}
