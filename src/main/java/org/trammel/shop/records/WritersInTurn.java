package org.trammel.shop.records;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.locks.ReentrantLock;
import javax.sql.DataSource;
import org.springframework.orm.jpa.JpaTransactionManager;
import org.springframework.transaction.TransactionDefinition;

/**
 * On H2 lets one transaction write at a time. When H2 stores its file it takes the maps of its tables one after another: what
 * another transaction changes meanwhile may reach the disk without the means to take it back. Killed then, and before the
 * next store, H2 comes back with part of an act that was never finished. With one writer nothing is under way when the file
 * is stored. Those who read are not kept waiting; on PostgreSQL nobody is.
 */
class WritersInTurn extends JpaTransactionManager {

    private static final long serialVersionUID = 1L;

    /** Fair, so that a burst of one tablet does not keep another waiting. */
    private final ReentrantLock turn = new ReentrantLock(true);

    /** Of the transactions a thread has begun, the newest first, whether each holds a turn. */
    private final transient ThreadLocal<Deque<Boolean>> begun = ThreadLocal.withInitial(ArrayDeque::new);

    private final boolean inTurn;

    WritersInTurn(DataSource database) throws SQLException {
        try (Connection connection = database.getConnection()) {
            inTurn = connection.getMetaData().getDatabaseProductName().equals("H2");
        }
    }

    @Override
    protected void doBegin(Object transaction, TransactionDefinition definition) {
        boolean waits = inTurn && !definition.isReadOnly();
        if (waits) {
            turn.lock();
        }
        try {
            super.doBegin(transaction, definition);
        } catch (RuntimeException | Error e) {
            if (waits) {
                turn.unlock();
            }
            throw e;
        }
        begun.get().push(waits);
    }

    @Override
    protected void doCleanupAfterCompletion(Object transaction) {
        Deque<Boolean> mine = begun.get();
        boolean held = mine.pop();
        if (mine.isEmpty()) {
            begun.remove();
        }
        try {
            super.doCleanupAfterCompletion(transaction);
        } finally {
            if (held) {
                turn.unlock();
            }
        }
    }
}
