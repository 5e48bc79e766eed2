package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A welder of what was read before this program: one of the crew by number, anybody else by a name that can be erased. */
class EarlierWeldersTest extends WatchedJigs {

    @Autowired
    private EarlierWelders welders;

    @Autowired
    private SeriesPoints points;

    @Autowired
    private JdbcTemplate plain;

    private Map<String, String> welderByFrame() {
        Map<String, String> found = new java.util.HashMap<>();
        points.read(Set.of(code), Set.of(Factor.WELDER))
                .get(code)
                .forEach(point -> found.put(point.frame(), String.valueOf(point.welder())));
        return found;
    }

    @Test
    void aNameIsKeptApartAndErasedWhileTheReadingStays() throws Exception {
        String initials = crew.byId(hands.hire(Role.WELDER)).initials();
        String gone = "Arvid Quillfeather " + code;
        Series series = watch(one);
        takeOver(
                series,
                read("2026-01-05", "a", "0.2", initials.toLowerCase(java.util.Locale.ROOT), null),
                read("2026-01-06", "b", "0.3", gone, null),
                read("2026-01-07", "c", "0.1", gone, null),
                read("2026-01-08", "d", "0.1", null, null));
        assertThat(welderByFrame())
                .containsOnly(
                        Map.entry("a", initials), Map.entry("b", gone), Map.entry("c", gone), Map.entry("d", "null"));
        assertThat(inTables(gone)).isEqualTo(1);
        assertThat(list(qa)).contains(gone, "Erase it for good");
        assertThat(list(owner)).doesNotContain(gone);
        assertThat(catchThrowableOfType(Refusal.class, () -> welders.erase(hands.act(owner), gone))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
        assertThat(catchThrowableOfType(Refusal.class, () -> welders.erase(hands.act(qa), "nobody of this name"))
                        .field())
                .isEqualTo("name");
        mvc.perform(post("/qa/drift/welder-names/erase")
                        .with(csrf())
                        .with(Signed.on(crew.byId(qa)))
                        .param("actId", UUID.randomUUID().toString())
                        .param("name", gone))
                .andExpect(redirectedUrl("/qa/drift"));
        assertThat(inTables(gone)).isZero();
        assertThat(list(qa)).doesNotContain(gone);
        assertThat(welderByFrame()).containsEntry("b", "null").containsEntry("a", initials);
        assertThat(charts.of(series.id()).values()).containsExactly(0.2, 0.3, 0.1, 0.1);
    }

    @Test
    void anErasureSentTwiceIsDoneOnce() {
        String gone = "Ottoline Brackwater " + code;
        takeOver(watch(one), read("2026-01-05", "a", "0.2", gone, null));
        Act act = hands.act(qa);
        welders.erase(act, gone);
        welders.erase(act, gone);
        assertThat(welders.names()).doesNotContain(gone);
    }

    private int inTables(String name) {
        return plain.queryForObject("select count(*) from kept_words_text where words = ?", Integer.class, name)
                + plain.queryForObject(
                        "select count(*) from drift_history where frame = ? or source = ? or tube_set = ?",
                        Integer.class,
                        name,
                        name,
                        name)
                + plain.queryForObject(
                        "select count(*) from log_entry where payload like ?", Integer.class, "%" + name + "%");
    }

    private String list(long who) throws Exception {
        return mvc.perform(get("/qa/drift").with(Signed.on(crew.byId(who))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
