package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.result.MockMvcResultMatchers;
import org.trammel.shop.Statements;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;

/** How many statements the sheets of the table send, however many figures stand on them. */
class TableStatementsTest extends OnThePlate {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Autowired
    private Statements statements;

    @Autowired
    private TableCharacteristics characteristics;

    private List<String> sentBy(String address) throws Exception {
        characteristics.inForce();
        return statements
                .during(() -> mvc.perform(get(address).with(Signed.on(crew.byId(aligner))))
                        .andExpect(MockMvcResultMatchers.status().isOk()))
                .stream()
                .filter(sql -> !sql.matches("(?s).* from (setting|setting_definition|station) .*"))
                .toList();
    }

    @Test
    void aSheetIsReadInAFixedNumberOfStatements() throws Exception {
        WholeShop.Frame frame = frame();
        read(frame, Spot.SEAT_LOW, "150.10");
        String address = "/alignment/" + operation(frame);
        sentBy(address);
        int few = sentBy(address).size();
        read(frame, Spot.SEAT_HIGH, "150.15");
        read(frame, Spot.HEAD_LOW, "150.02");
        read(frame, Spot.HEAD_HIGH, "150.05");
        assertThat(sentBy(address)).hasSize(few);
        assertThat(few).isLessThanOrEqualTo(30);
        reduce(frame);
        // the deviations of its reductions are read once for all of them, the last values of one axis beside them
        int reduced = sentBy(address).size();
        onThe(frame, TableSetUp.Base.MANDREL);
        read(frame, Spot.MANDREL_LOW, "150.02");
        read(frame, Spot.MANDREL_HIGH, "150.10");
        reduce(frame);
        assertThat(sentBy(address)).hasSize(reduced);
    }
}
