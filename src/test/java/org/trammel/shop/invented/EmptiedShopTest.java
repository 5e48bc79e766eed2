package org.trammel.shop.invented;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.trammel.shop.ShopTest;
import org.trammel.shop.demo.DemoWords;
import org.trammel.shop.invented.Screen.Moment;
import org.trammel.shop.people.FirstStart;

/**
 * A shop without the demo, from its first start to the first frame in its box, typed by hand. At four moments everything
 * that answers GET is opened: it is there, or answers as the table of screens says, without a fault in the log.
 */
@ShopTest(properties = {"trammel.test.database=emptied_shop", "spring.test.mockmvc.print=none"})
class EmptiedShopTest {

    private static final Pattern UNRENDERED = Pattern.compile("\\$\\{|\\*\\{|\\bth:[a-z]|\\?\\?[a-z_.]+\\?\\?|@\\{/");
    private static final Pattern MARKUP = Pattern.compile("<script>alert|<[bi]>odd|\\[object |Exception");
    private static final Pattern CELL = Pattern.compile("\"((?:[^\"]|\"\")*)\"|[^,;\\r\\n]+");

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping mapping;

    private final List<Screen> screens = Screen.all();
    private final List<String> faults = new ArrayList<>();

    @Test
    void theTableOfScreensHasEverythingThatAnswersGet() {
        Set<String> answered = new TreeSet<>();
        mapping.getHandlerMethods().keySet().stream()
                .filter(EmptiedShopTest::answersGet)
                .forEach(info -> answered.addAll(info.getPatternValues()));
        assertThat(answered).hasSizeGreaterThan(100);
        Set<String> tabled = screens.stream().map(Screen::pattern).collect(Collectors.toSet());
        assertThat(tabled).containsExactlyInAnyOrderElementsOf(answered);
        assertThat(screens)
                .as("what does not answer 200 everywhere says why")
                .allSatisfy(screen -> assertThat(
                                Stream.of(screen.first(), screen.work(), screen.point(), screen.shipped())
                                                .allMatch("200"::equals)
                                        || !screen.why().isBlank())
                        .as(screen.address())
                        .isTrue());
    }

    private static boolean answersGet(RequestMappingInfo info) {
        Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
        return methods.isEmpty() || methods.contains(RequestMethod.GET);
    }

    @Test
    void everyScreenWorksInAnEmptyShopAndWithTheOneFrameOfIt() throws Exception {
        ListAppender<ILoggingEvent> log = new ListAppender<>();
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        log.start();
        root.addAppender(log);
        try {
            InventedShop shop = new InventedShop(mvc, jdbc);
            shop.firstOwner(firstStart.newCode());
            walk(shop, Moment.FIRST);
            shop.setUp();
            shop.frame();
            shop.workToATwist();
            walk(shop, Moment.WORK);
            shop.workToAPoint();
            walk(shop, Moment.POINT);
            shop.workToTheBox();
            walk(shop, Moment.SHIPPED);
        } finally {
            root.detachAppender(log);
        }
        log.list.stream()
                .filter(event -> event.getLevel().isGreaterOrEqual(Level.ERROR) || event.getThrowableProxy() != null)
                .forEach(event -> faults.add("log: " + event.getFormattedMessage()));
        assertThat(faults).isEmpty();
    }

    private void walk(InventedShop shop, Moment moment) throws Exception {
        Set<String> demo = DemoWords.names();
        for (Screen screen : screens) {
            String address = screen.in(shop.facts());
            MockHttpServletResponse answer = shop.owner.open(address);
            String where = moment + " " + address + ": ";
            if (!String.valueOf(answer.getStatus()).equals(screen.status(moment))) {
                faults.add(where + answer.getStatus() + " instead of " + screen.status(moment) + " "
                        + Hand.refusalIn(answer) + answer.getRedirectedUrl());
            }
            look(where, answer, demo);
            if (moment == Moment.WORK) {
                atTheTablet(shop, address, demo);
            }
        }
    }

    /** A worker may not see everything, and is told so. */
    private void atTheTablet(InventedShop shop, String address, Set<String> demo) throws Exception {
        MockHttpServletResponse answer = shop.tablet.again().open(address);
        if (answer.getStatus() >= 500) {
            faults.add("at a tablet " + address + ": " + answer.getStatus());
        }
        look("at a tablet " + address + ": ", answer, demo);
    }

    private void look(String where, MockHttpServletResponse answer, Set<String> demo) throws Exception {
        String type = String.valueOf(answer.getContentType());
        if (type.startsWith("application/pdf") || type.startsWith("image/")) {
            return;
        }
        String body = answer.getContentAsString();
        Set<String> found = new LinkedHashSet<>();
        if (type.startsWith("text/html")) {
            found.addAll(all(UNRENDERED, body));
            found.addAll(all(MARKUP, body));
            if (answer.getStatus() == 200 && !body.contains("<h1")) {
                found.add("no heading");
            }
        }
        if (type.startsWith("text/csv")) {
            CELL.matcher(body)
                    .results()
                    .map(cell -> cell.group(1) == null ? cell.group() : cell.group(1))
                    .filter(cell -> cell.matches("(?s)[=+@\\t].*"))
                    .forEach(found::add);
        }
        if (answer.getStatus() >= 400 && type.contains("json") && !body.contains("\"instead\"")) {
            found.add("a problem without a way on: " + body);
        }
        demo.stream().filter(body::contains).forEach(found::add);
        found.forEach(fault -> faults.add(where + fault));
    }

    private static List<String> all(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map(match -> match.group())
                .distinct()
                .toList();
    }
}
