package org.trammel.shop.load;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.trammel.shop.outside.RecordsAt;
import org.trammel.shop.outside.WrittenFrame;
import org.trammel.shop.outside.WrittenFrames;
import org.trammel.shop.outside.WrittenRoutes;
import org.trammel.shop.outside.WrittenShop;

/**
 * The records of a shop of some age: frames with everything they left behind, most of them shipped, some at each station;
 * and besides frames that nobody has begun, for the acts that are timed.
 *
 * @param atStations frames of the history that stand at a station
 * @param toTick that the service is to tick, and as many for the bare tick
 */
record History(
        List<WrittenShop.Worker> workers,
        List<WrittenFrame> atStations,
        List<WrittenFrame> toTick,
        List<WrittenFrame> toTickBare,
        long rows,
        double seconds) {

    private static final int STATIONS = 9;
    private static final int AT_A_STATION = 20;
    private static final int FRAMES_IN_A_TRANSACTION = 40;

    static History write(RecordsAt records, int frames, int clients, int toTick) throws SQLException {
        long began = System.nanoTime();
        try (Connection connection = records.connectToWriteMuch()) {
            connection.setAutoCommit(false);
            Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
            WrittenShop shop = WrittenShop.write(connection, clients, now);
            WrittenFrames written = new WrittenFrames(connection, shop);
            List<WrittenFrame> atStations = new ArrayList<>();
            int shipped = Math.max(0, frames - STATIONS * AT_A_STATION);
            for (int i = 0; i < frames; i++) {
                Instant released = now.minus(Duration.ofDays(20)).minus(Duration.ofHours(2L * (frames - i)));
                if (i < shipped) {
                    written.write(WrittenRoutes.forHistory(), new WrittenFrames.Reached(10, 0, true), released);
                } else {
                    atStations.add(written.write(
                            WrittenRoutes.forHistory(),
                            new WrittenFrames.Reached(i % STATIONS, i % 3, false),
                            now.minus(Duration.ofDays(3))));
                }
                if (i % FRAMES_IN_A_TRANSACTION == 0) {
                    connection.commit();
                }
            }
            List<WrittenFrame> ticked = waiting(written, toTick, now);
            List<WrittenFrame> tickedBare = waiting(written, toTick, now);
            written.end();
            connection.commit();
            connection.setAutoCommit(true);
            try (Statement statement = connection.createStatement()) {
                statement.execute(records.h2() ? "analyze" : "vacuum analyze");
            }
            return new History(
                    shop.workers(), atStations, ticked, tickedBare, written.rows(), (System.nanoTime() - began) / 1e9);
        }
    }

    private static List<WrittenFrame> waiting(WrittenFrames written, int count, Instant now) throws SQLException {
        List<WrittenFrame> frames = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            frames.add(written.write(WrittenRoutes.forTicks(), WrittenFrames.Reached.NOTHING, now));
        }
        return frames;
    }
}
