package org.trammel.shop.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.TestClock;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.people.Signed;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;

/** Who did what is told years later as it was: by the name of that day, and with the words of everybody who decided. */
@FloorTest
class WhoSaidWhatTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Floor floor;

    @Autowired
    private Crew crew;

    @Autowired
    private Roster roster;

    @Autowired
    private Bench bench;

    @Autowired
    private Holds holds;

    @Autowired
    private TestClock clock;

    private Person owner;
    private Person qa;
    private Person auditor;
    private Floor.Frame frame;

    @BeforeEach
    void openTheFloor() {
        floor.open();
        owner = crew.byId(floor.hire(Role.OWNER));
        qa = crew.byId(floor.hire(Role.QA_LEAD));
        auditor = crew.byId(floor.hire(Role.AUDITOR));
        frame = floor.frame(
                SmallRoute.of(SmallRoute.op("130").step("ream").step("face").sheet())
                        .sheet());
    }

    @Test
    void whatSomebodyDidBeforeARenamingIsToldByTheNameOfThatDay() throws Exception {
        String initials = "W" + String.format("%03d", owner.id() % 1000);
        Person worker =
                roster.takeOn(floor.act(owner.id()), initials, "Wyn Orrel " + initials, Set.of(Role.STATION_WORKER));
        tick(worker, 0);
        clock.pass(Duration.ofDays(1));
        String now = "Renamed " + worker.initials();
        roster.rename(floor.act(owner.id()), worker.id(), now);
        tick(worker, 1);
        String then = worker.name() + " (now " + now + ")";
        for (String page : List.of(story(owner, ""), story(owner, "?by=time"))) {
            assertThat(entry(page, "ticked: ream")).contains(then);
            assertThat(entry(page, "ticked: face")).contains(now).doesNotContain(worker.name());
        }
        assertThat(story(auditor, "")).contains(worker.initials()).doesNotContain(worker.name(), now);
    }

    @Test
    void ofSeveralWhoLiftAHoldEachIsToldWithWords() throws Exception {
        long hold = holds.place(
                floor.act(floor.hire(Role.STATION_WORKER)),
                new Holds.Request(
                        frame.travellerId(), HoldScope.FRAME, null, HoldReason.SAFETY, "a dent", "by hand", Set.of()));
        holds.lift(floor.act(qa.id()), hold, "under the limit by the dial");
        assertThat(story(owner, ""))
                .as("it is told while the other is awaited")
                .contains("agreed to lift the hold: safety", "under the limit by the dial", qa.name());
        clock.pass(Duration.ofHours(1));
        holds.lift(floor.act(owner.id()), hold, "told the rider, who agrees");
        for (String page : List.of(story(owner, ""), story(owner, "?by=time"))) {
            assertThat(page)
                    .contains("agreed to lift the hold: safety", "under the limit by the dial", qa.name())
                    .contains("hold lifted: safety", "told the rider, who agrees", owner.name());
        }
    }

    private void tick(Person who, int step) {
        bench.tick(
                floor.act(who.id()), List.of(floor.at(frame).steps().get(step).stepId()), null, null);
    }

    private String story(Person who, String query) throws Exception {
        return mvc.perform(get("/frames/" + frame.serial() + query).with(Signed.on(who)))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    /** What stands around an entry of the story, up to the next one. */
    private static String entry(String page, String what) {
        int at = page.indexOf(what);
        assertThat(at).as(what).isNotNegative();
        int end = page.indexOf("ticked: ", at + what.length());
        return page.substring(at, end < 0 ? page.length() : end);
    }
}
