package org.trammel.shop.settings;

import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * The settings in memory. A copy lives a few seconds, because another instance may have changed a value; a change made
 * here is seen at once, and only once it is committed.
 */
@Component
class SettingsCopy {

    /** How long another instance's change may go unseen. */
    static final Duration LIFE = Duration.ofSeconds(3);

    private final DefinitionRepository definitions;
    private final SettingRepository rows;
    private final LongSupplier nanos;
    private final AtomicLong changes = new AtomicLong();
    private volatile @Nullable Copy copy;

    @Autowired
    SettingsCopy(DefinitionRepository definitions, SettingRepository rows) {
        this(definitions, rows, System::nanoTime);
    }

    SettingsCopy(DefinitionRepository definitions, SettingRepository rows, LongSupplier nanos) {
        this.definitions = definitions;
        this.rows = rows;
        this.nanos = nanos;
    }

    Copy now() {
        if (TransactionSynchronizationManager.hasResource(this)) {
            return load();
        }
        Copy known = copy;
        if (known != null && nanos.getAsLong() - known.readAt < LIFE.toNanos()) {
            return known;
        }
        long before = changes.get();
        Copy fresh = load();
        // A change committed while this was read would otherwise be hidden by what was read before it.
        if (before == changes.get()) {
            copy = fresh;
        }
        return fresh;
    }

    /** To be called inside the transaction that changes a value: it reads its own change from now on. */
    void changed() {
        if (TransactionSynchronizationManager.hasResource(this)) {
            return;
        }
        TransactionSynchronizationManager.bindResource(this, Boolean.TRUE);
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCompletion(int status) {
                TransactionSynchronizationManager.unbindResourceIfPossible(SettingsCopy.this);
                changes.incrementAndGet();
                copy = null;
            }
        });
    }

    private Copy load() {
        long readAt = nanos.getAsLong();
        Map<String, SettingRow> read = new HashMap<>();
        rows.inForce().forEach(row -> read.put(row.code(), row));
        SettingRow currency = read.get("shop.currency");
        Map<String, Definition> known = new LinkedHashMap<>();
        for (DefinitionRow row : definitions.findAllByOrderBySequence()) {
            Definition definition = row.definition();
            known.put(
                    definition.key(),
                    currency == null
                            ? definition
                            : definition.in(currency.setting("").value()));
        }
        Map<String, Setting> ordered = new LinkedHashMap<>();
        known.forEach((key, definition) -> {
            SettingRow row = read.get(key);
            if (row != null) {
                ordered.put(key, row.setting(definition.unit()));
            }
        });
        return new Copy(readAt, known, ordered);
    }

    record Copy(long readAt, Map<String, Definition> definitions, Map<String, Setting> inForce) {}
}
