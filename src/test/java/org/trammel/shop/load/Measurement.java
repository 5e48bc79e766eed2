package org.trammel.shop.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.trammel.shop.outside.RecordsAt;
import org.trammel.shop.outside.ServiceProcess;
import org.trammel.shop.outside.Tablet;
import org.trammel.shop.outside.WrittenFrame;
import org.trammel.shop.outside.WrittenShop;

/**
 * One engine with a history of one length. Whole and bare ticks, sheets and lists are taken in turn, round by round, so
 * that what else goes on at the machine meets all of them alike.
 */
final class Measurement {

    static final int CLIENTS = 8;
    private static final int STARTS = 5;

    private final RecordsAt records;
    private final int frames;
    private final Size size;
    private final Path folder;

    /**
     * How much is done.
     *
     * @param warmUps rounds that are not counted
     * @param alone how often one client does a thing in a round
     * @param each how often each of several does
     */
    record Size(int rounds, int warmUps, int alone, int each) {

        /** A round and a client may leave the frame at hand unfinished; each client holds one more. */
        int framesFor(int actsOfAFrame) {
            return (rounds + warmUps) * (alone + CLIENTS * each) / actsOfAFrame + CLIENTS + 1;
        }
    }

    /** @param folder where the service writes what it says */
    Measurement(RecordsAt records, int frames, Size size, Path folder) {
        this.records = records;
        this.frames = frames;
        this.size = size;
        this.folder = folder;
    }

    Result run() throws IOException, InterruptedException, SQLException {
        Files.createDirectories(folder);
        ServiceProcess.build();
        ServiceProcess.start(records, folder.resolve("first.log")).stop();
        History history = History.write(records, frames, CLIENTS, size.framesFor(40));
        List<Double> starts = new ArrayList<>();
        for (int i = 1; i < STARTS; i++) {
            ServiceProcess again = ServiceProcess.start(records, folder.resolve("start-" + i + ".log"));
            starts.add(again.startedIn().toMillis() / 1000.0);
            again.stop();
        }
        RecordsAt bare = forBareTicks();
        ServiceProcess service = ServiceProcess.start(records, folder.resolve("measured.log"));
        starts.add(service.startedIn().toMillis() / 1000.0);
        Result result;
        try {
            result = measured(service, bare, history);
        } finally {
            service.stop();
        }
        ServiceProcess.Verified verified = ServiceProcess.verify(records);
        ServiceProcess.Verified verifiedBare = bare.equals(records) ? verified : ServiceProcess.verify(bare);
        starts.sort(null);
        return result.with(starts, verified, verifiedBare, sameRows(bare, history));
    }

    /** An H2 file belongs to one process: the bare ticks go to a copy of it, on the same disk, of the same size. */
    private RecordsAt forBareTicks() throws IOException {
        if (!records.h2()) {
            return records;
        }
        Path copy = Files.createDirectories(records.home().resolve("bare"));
        try (Stream<Path> files = Files.list(records.home())) {
            for (Path file : files.filter(f -> f.toString().endsWith(".db")).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        return RecordsAt.file(copy);
    }

    private Result measured(ServiceProcess service, RecordsAt bareRecords, History history)
            throws IOException, InterruptedException, SQLException {
        List<Tablet> tablets = history.workers().stream()
                .map(WrittenShop.Worker::token)
                .map(Tablet::new)
                .toList();
        List<BareTick> bare = new ArrayList<>();
        try {
            Work.Waiting forService = new Work.Waiting(history.toTick());
            Work.Waiting forBare = new Work.Waiting(history.toTickBare());
            List<WholeTick> whole = new ArrayList<>();
            List<Look> sheets = new ArrayList<>();
            List<Look> lists = new ArrayList<>();
            for (int i = 0; i < CLIENTS; i++) {
                whole.add(new WholeTick(tablets.get(i), service.port(), forService));
                bare.add(new BareTick(
                        bareRecords.connectAsService(), history.workers().get(i), forBare));
                sheets.add(new Look(tablets.get(i), service.port(), sheetsOf(history.atStations()), i * 5));
                lists.add(new Look(tablets.get(i), service.port(), List.of(new Look.Page("/station", "Station")), 0));
            }
            Result result = new Result(history);
            for (int round = -size.warmUps(); round < size.rounds(); round++) {
                Result to = round < 0 ? new Result(history) : result;
                Clients.let(bare.subList(0, 1), size.alone(), to.bareAlone);
                Clients.let(whole.subList(0, 1), size.alone(), to.wholeAlone);
                Clients.let(bare, size.each(), to.bareTogether);
                Clients.let(whole, size.each(), to.wholeTogether);
                Clients.let(sheets.subList(0, 1), size.alone(), to.sheetAlone);
                Clients.let(sheets, size.each(), to.sheetTogether);
                Clients.let(lists, size.each(), to.listTogether);
            }
            result.peakMemoryMb = service.peakMemoryMb();
            return result;
        } finally {
            for (BareTick connection : bare) {
                connection.close();
            }
            for (Tablet tablet : tablets) {
                tablet.close();
            }
        }
    }

    private static List<Look.Page> sheetsOf(List<WrittenFrame> atStations) {
        return atStations.stream()
                .map(frame -> new Look.Page("/station/" + frame.serial(), frame.serial()))
                .toList();
    }

    /** What the first frame left that the service ticked, and the first that was ticked barely. */
    private List<List<String>> sameRows(RecordsAt bare, History history) throws SQLException {
        try (Connection ofService = records.connect();
                Connection ofBare = bare.connect()) {
            return List.of(
                    SameRows.of(ofService, history.toTick().get(0)),
                    SameRows.of(ofBare, history.toTickBare().get(0)));
        }
    }
}
