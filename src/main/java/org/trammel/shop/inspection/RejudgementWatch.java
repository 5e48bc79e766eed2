package org.trammel.shop.inspection;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.event.EventListener;
import org.springframework.core.task.TaskExecutor;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.event.TransactionalEventListener;
import org.trammel.shop.gauges.GaugeFailed;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.settings.Settings;

/**
 * Opens a re-judgement in the transaction that fails a gauge, and judges what was read with it once that is kept. What a
 * kill interrupted is found and gone on with after the next start.
 */
@Component
class RejudgementWatch {

    private static final Logger LOG = LoggerFactory.getLogger(RejudgementWatch.class);

    private final RejudgementRepository rejudgements;
    private final ReadingRepository readings;
    private final Rejudgements all;
    private final Settings settings;
    private final ActLog log;
    private final TaskExecutor executor;

    RejudgementWatch(
            RejudgementRepository rejudgements,
            ReadingRepository readings,
            Rejudgements all,
            Settings settings,
            ActLog log,
            TaskExecutor applicationTaskExecutor) {
        this.rejudgements = rejudgements;
        this.readings = readings;
        this.all = all;
        this.settings = settings;
        this.log = log;
        this.executor = applicationTaskExecutor;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void open(GaugeFailed failed) {
        LocalDate lastGood = failed.lastGoodOn();
        Instant since = lastGood == null
                ? Instant.EPOCH
                : lastGood.atStartOfDay(settings.zone()).toInstant();
        Instant until = failed.act().at();
        Rejudgement opened = rejudgements.save(new Rejudgement(
                failed,
                since,
                settings.number("gauge.error.equal"),
                readings.extent(failed.means(), since, until)
                        .and(readings.extentUnderAnotherName(failed.means(), since, until))));
        log.event(Chains.SHOP, "rejudgement-opened", Map.of("rejudgement", opened.id(), "gauge", failed.gaugeId()));
    }

    @TransactionalEventListener
    void opened(GaugeFailed failed) {
        executor.execute(this::look);
    }

    /** Goes on with whatever is not judged to its end. */
    @Scheduled(fixedDelayString = "${trammel.rejudgement-watch:20s}")
    void look() {
        try {
            all.judgeToTheEnd();
        } catch (RuntimeException e) {
            LOG.warn("A re-judgement is not judged to its end yet: {}", e.getMessage());
        }
    }
}
