package org.trammel.shop.travellers;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.trammel.calc.marks.ScribeMark;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.web.ScribeMarks;

/**
 * Gives every frame that enters the shop a scribe mark that no open frame's is like, and tells pages which it is.
 *
 * <p>Pages ask a copy in memory, one row for a mark and so never large: it is read at the start, after every mark given
 * here, and now and then for marks given by another instance.
 */
@Component
class FrameMarks implements ScribeMarks, SmartInitializingSingleton {

    private final ScribeMarkRepository marks;
    private final TravellerRepository travellers;
    private final ActLog log;
    private volatile Map<String, String> codeBySerial = Map.of();

    FrameMarks(ScribeMarkRepository marks, TravellerRepository travellers, ActLog log) {
        this.marks = marks;
        this.travellers = travellers;
        this.log = log;
    }

    @Override
    public @Nullable String codeOf(String serial) {
        int part = serial.indexOf('-');
        return codeBySerial.get(part < 0 ? serial : serial.substring(0, part));
    }

    /** Gives the frame its mark inside an act that is open; a frame that has one keeps it. */
    void give(Act act, String serial) {
        List<ScribeMarkRow> given = marks.findAll();
        if (given.stream().anyMatch(row -> row.serial().equals(serial))) {
            return;
        }
        Set<String> open = travellers.openSerials();
        List<ScribeMark> inUse = given.stream()
                .filter(row -> open.contains(row.serial()))
                .map(row -> ScribeMark.ofCode(row.code()))
                .toList();
        if (ScribeMark.nextFree(inUse) instanceof ScribeMark.NextFree.Free free) {
            String code = free.mark().code();
            given.stream()
                    .filter(row -> row.code().equals(code))
                    .findFirst()
                    .ifPresentOrElse(
                            row -> row.passTo(serial, act.at()),
                            () -> marks.save(new ScribeMarkRow(code, serial, act.at())));
            log.event(Chains.frame(serial), "mark-given", Map.of("mark", code));
            readAfterCommit();
        }
        // Where every mark is too like another, the number alone tells the frame: that is no reason not to build it.
    }

    private void readAfterCommit() {
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCompletion(int status) {
                read();
            }
        });
    }

    @Override
    public void afterSingletonsInstantiated() {
        read();
    }

    @Scheduled(initialDelayString = "${trammel.marks-read:60s}", fixedDelayString = "${trammel.marks-read:60s}")
    void read() {
        codeBySerial = marks.findAll().stream()
                .collect(Collectors.toUnmodifiableMap(ScribeMarkRow::serial, ScribeMarkRow::code));
    }
}
