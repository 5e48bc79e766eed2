package org.trammel.shop.designs;

import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.routes.RouteBook;

/** A desk at which a frame is drawn, computed and let through the gate. */
@ShopTest
abstract class AtTheDrawingDesk {

    @Autowired
    private DrawnFrame.DesignDesk desk;

    @Autowired
    MockMvc mvc;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TestCrew hands;

    @Autowired
    Crew crew;

    @Autowired
    Designs designs;

    @Autowired
    DrawingOffice office;

    @Autowired
    DesignGate gate;

    @Autowired
    DesignReading reading;

    @Autowired
    RouteBook routes;

    DrawnFrame frame;

    @BeforeEach
    void openTheOffice() {
        frame = new DrawnFrame(desk);
    }
}
