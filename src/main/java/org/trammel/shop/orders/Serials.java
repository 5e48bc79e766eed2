package org.trammel.shop.orders;

import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Gives each frame a serial of its own, counted within the year, and never one that was given before. */
@Service
public class Serials {

    private static final int LAST_OF_A_YEAR = 999;

    private final SerialSeriesRepository series;
    private final OrderSeriesRepository keeper;
    private final FrameSerialRepository given;
    private final SerialMark mark;
    private final Settings settings;
    private final ActLog log;
    private final Crew crew;

    Serials(
            SerialSeriesRepository series,
            OrderSeriesRepository keeper,
            FrameSerialRepository given,
            SerialMark mark,
            Settings settings,
            ActLog log,
            Crew crew) {
        this.series = series;
        this.keeper = keeper;
        this.given = given;
        this.mark = mark;
        this.settings = settings;
        this.log = log;
        this.crew = crew;
    }

    /** The next serial, stored form; the act is open on the order's chain. */
    String give(Act act, ShopOrder order) {
        SerialSeries.Key key = key(act);
        SerialSeries mine = lock(key);
        UUID installation = installation();
        int outside = mark.highest(installation, key.text());
        int last = Math.max(mine.lastNumber(), outside);
        if (last >= LAST_OF_A_YEAR) {
            throw Refusal.state(
                    OrderVerb.ASSIGN_SERIAL.undone(order.number()),
                    "All " + LAST_OF_A_YEAR + " serials of " + key.text() + " were given.",
                    "Set other letters for the serials, or wait for the new year.");
        }
        if (outside > mine.lastNumber()) {
            log.event(
                    Chains.order(order.number()),
                    "serial-mark-ahead",
                    Map.of("series", key.text(), "database", mine.lastNumber(), "outside", outside));
        }
        mine.moveTo(last + 1);
        String serial = SerialNumber.of(key.prefix(), Integer.parseInt(key.yearOfCentury()), last + 1)
                .stored();
        given.save(new FrameSerial(serial, order.id(), act.at()));
        order.serial(serial);
        log.event(Chains.order(order.number()), "serial-given", Map.of("order", order.id(), "serial", serial));
        afterCommit(() -> mark.note(installation, key.text(), last + 1));
        return serial;
    }

    /**
     * Says that serials up to a number were given elsewhere, such as on paper before this service was used.
     *
     * @throws Refusal if the series of this year has gone as far already: it never goes back
     */
    @Transactional
    public void raise(Act act, int number) {
        String deed = "The mark of serials was not raised.";
        if (!log.opens(act, "raise-serials", "serials", Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
        SerialSeries.Key key = key(act);
        SerialSeries mine = lock(key);
        UUID installation = installation();
        int last = Math.max(mine.lastNumber(), mark.highest(installation, key.text()));
        if (number <= last || number > LAST_OF_A_YEAR) {
            throw Refusal.input(
                    "number",
                    deed,
                    number + " cannot be the last one given: " + key.text() + " has gone to " + last
                            + ", and a year ends" + " at " + LAST_OF_A_YEAR + ".",
                    "Enter a number above " + last + "; a serial is never given twice.");
        }
        mine.moveTo(number);
        log.event(Chains.SHOP, "serials-raised", Map.of("series", key.text(), "from", last, "to", number));
        afterCommit(() -> mark.note(installation, key.text(), number));
    }

    /**
     * Reads the serial of a frame that comes back.
     *
     * @return stored form
     * @throws Refusal if it is no whole serial, or one this year's series has not reached
     */
    String ofReturnedFrame(Act act, String deed, String typed) {
        SerialNumber.Result read = SerialNumber.read(typed);
        if (read instanceof SerialNumber.Result.Whole whole && whole.serial().part() == null) {
            SerialNumber serial = whole.serial();
            SerialSeries.Key now = key(act);
            String theirs = serial.stored().substring(0, 4);
            int reached = series.findById(now).map(SerialSeries::lastNumber).orElse(0);
            if (theirs.equals(now.text()) && serial.number() > reached) {
                throw Refusal.input(
                        "returnedSerial",
                        deed,
                        serial.shown() + " was not given yet: " + now.text() + " has gone to " + reached + ".",
                        "Read the serial again. If it was given on paper, raise the mark of serials first.");
            }
            return serial.stored();
        }
        String why = read instanceof SerialNumber.Result.WrongCheck wrong
                ? wrong.reason()
                : read instanceof SerialNumber.Result.Unreadable unreadable
                        ? unreadable.reason()
                        : "This is the end of a serial or that of a part; the whole serial of the frame is needed.";
        throw Refusal.input("returnedSerial", deed, why, "Type the serial as it stands on the frame.");
    }

    private SerialSeries.Key key(Act act) {
        String prefix = settings.text("serial.prefix").strip().toUpperCase(Locale.ROOT);
        if (!prefix.matches("[A-Z]{2}")) {
            throw Refusal.state(
                    "No serial was given.",
                    "The letters of the serials are set to " + prefix + "; two letters A to Z are needed.",
                    "Set them on the settings page.");
        }
        int year = settings.dayOf(act.at()).getYear() % 100;
        return new SerialSeries.Key(prefix, String.format(Locale.ROOT, "%02d", year));
    }

    private SerialSeries lock(SerialSeries.Key key) {
        return series.lock(key).orElseGet(() -> series.save(new SerialSeries(key)));
    }

    private UUID installation() {
        return keeper.lock()
                .orElseGet(() -> keeper.save(new OrderSeries(UUID.randomUUID())))
                .installation();
    }

    private static void afterCommit(Runnable note) {
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                note.run();
            }
        });
    }
}
