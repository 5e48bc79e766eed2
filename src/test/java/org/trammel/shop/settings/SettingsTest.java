package org.trammel.shop.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
class SettingsTest {

    @Autowired
    private Settings settings;

    @Autowired
    private DefinitionRepository definitions;

    @Autowired
    private SettingRepository rows;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Statements statements;

    @Autowired
    private Clock clock;

    @Test
    void everyDefinitionHasAValueInForceThatItAllowsAndASource() {
        assertThat(settings.all()).isNotEmpty().allSatisfy(setting -> {
            Definition definition = settings.definition(setting.key());
            assertThat(Worth.of(definition, setting.value())).isEqualTo(setting.value());
            assertThat(setting.source()).isNotBlank();
        });
        assertThat(jdbc.sql("select count(*) from setting_definition")
                        .query(Integer.class)
                        .single())
                .isEqualTo(settings.all().size());
    }

    /** The one-sided 95 % point of the standard normal distribution is 1,645 (tables of ISO 2854; from memory). */
    @Test
    void theGuardFactorCoversTheOneSidedNinetyFivePercentPoint() {
        assertThat(settings.number("guard.factor")).isBetween(new BigDecimal("1.645"), new BigDecimal("1.66"));
    }

    @Test
    void aChangeComesIntoForceAndTheOldValueStaysInTheHistory() {
        Setting before = settings.inForce("triage.tolerances");
        Setting after = settings.change(act(), "triage.tolerances", "3,5", "own trial 7", "too many calls");
        assertThat(settings.number("triage.tolerances")).isEqualByComparingTo("3.5");
        assertThat(settings.history("triage.tolerances").get(0)).isEqualTo(after);
        assertThat(settings.history("triage.tolerances")).contains(before);
        assertThat(after.id()).isGreaterThan(before.id());
    }

    @Test
    void theSameActTwiceIsOneValue() {
        Act act = act();
        Setting first = settings.change(act, "lot.warn.days", "21", "own trial", "shelf life");
        Setting second = settings.change(act, "lot.warn.days", "21", "own trial", "shelf life");
        assertThat(second).isEqualTo(first);
        assertThat(settings.history("lot.warn.days"))
                .filteredOn(row -> row.source().equals("own trial"))
                .hasSize(1);
    }

    @Test
    void aValueWithoutASourceIsRefused() {
        assertThatThrownBy(() -> settings.change(act(), "readings.alike", "4", "  ", "why"))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.field()).isEqualTo("source");
                    assertThat(refusal.kind()).isEqualTo(Refusal.Kind.INPUT);
                });
        assertThat(settings.history("readings.alike")).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "guard.factor|0",
                "guard.factor|-1,65",
                "guard.factor|3,01",
                "guard.factor|1,6,5",
                "guard.factor|1.234,5",
                "guard.factor|1e1",
                "guard.factor|NaN",
                "guard.factor|Infinity",
                "guard.factor|0x2",
                "guard.factor|''",
                "undo.free.minutes|1,5",
                "undo.free.minutes|11",
                "shop.zone|Nowhere/Port",
                "shop.locale|not a tag",
                "shop.currency|crowns",
                "shop.zone|-1",
                "shop.locale|NaN",
                "shop.locale|xx-YY",
                "shop.locale|sv-YY",
                "shop.currency|xxx",
                "shop.currency|XAU",
                "shop.name|''"
            })
    void aValueItsDefinitionDoesNotAllowIsRefused(String key, String typed) {
        Setting before = settings.inForce(key);
        assertThatThrownBy(() -> settings.change(act(), key, typed, "own trial", "why"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("value"));
        assertThat(settings.inForce(key)).isEqualTo(before);
    }

    @Test
    void aKeyNobodyDefinedIsMissing() {
        assertThatThrownBy(() -> settings.inForce("no.such"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.MISSING));
    }

    @Test
    void aChangeOfAValueSomebodyElseChangedMeanwhileIsStale() {
        long seen = settings.inForce("backup.warn.hours").id();
        settings.change(act(), "backup.warn.hours", "30", "own trial", "first", seen);
        assertThatThrownBy(() -> settings.change(act(), "backup.warn.hours", "40", "own trial", "second", seen))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STALE));
        assertThat(settings.whole("backup.warn.hours")).isEqualTo(30);
    }

    @Test
    void readingCostsNoStatementAndAChangeThatIsRolledBackIsNeverSeenOutside() throws Exception {
        String before = settings.text("witness.wait.minutes");
        transaction.executeWithoutResult(status -> {
            settings.change(act(), "witness.wait.minutes", "44", "own trial", "try");
            assertThat(settings.whole("witness.wait.minutes")).isEqualTo(44);
            status.setRollbackOnly();
        });
        assertThat(settings.text("witness.wait.minutes")).isEqualTo(before);
        assertThat(statements.during(() -> settings.text("witness.wait.minutes")))
                .isEmpty();
    }

    @Test
    void aChangeOnAnotherInstanceArrivesWhenTheCopyIsOld() {
        AtomicLong nanos = new AtomicLong();
        SettingsCopy other = new SettingsCopy(definitions, rows, nanos::get);
        String before = other.now().inForce().get("qualification.warn.days").value();
        settings.change(act(), "qualification.warn.days", "45", "own trial", "holidays");
        assertThat(other.now().inForce().get("qualification.warn.days").value()).isEqualTo(before);
        nanos.addAndGet(SettingsCopy.LIFE.toNanos());
        assertThat(other.now().inForce().get("qualification.warn.days").value()).isEqualTo("45");
    }

    /** Midnight in Stockholm in winter is 23:00 UTC (UTC+1, tz database). */
    @Test
    void aDayEndsAtMidnightInTheShopsZone() {
        assertThat(settings.dayOf(Instant.parse("2026-03-18T22:59:59Z"))).isEqualTo(LocalDate.of(2026, 3, 18));
        assertThat(settings.dayOf(Instant.parse("2026-03-18T23:00:00Z"))).isEqualTo(LocalDate.of(2026, 3, 19));
        assertThat(settings.today()).isEqualTo(LocalDate.of(2026, 3, 18));
    }

    @Test
    void theHistoryCannotBeRewrittenInTheDatabaseEither() {
        assertThatThrownBy(() -> jdbc.sql("update setting set worth = '9'").update())
                .isInstanceOf(DataAccessException.class);
        assertThatThrownBy(() -> jdbc.sql("delete from setting").update()).isInstanceOf(DataAccessException.class);
    }

    private Act act() {
        return new Act(UUID.randomUUID(), 0, null, clock.instant(), null);
    }
}
