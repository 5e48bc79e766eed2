package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;

/**
 * Keeps what somebody read back blind and was asked about. The question is no verdict, but that a jig stood on another
 * frame's numbers is a fact, also where it was set right before it was read again.
 */
@Service
public class BlindAttempts {

    private final BlindAttemptRepository attempts;
    private final Evidence evidence;
    private final Settings settings;
    private final ActLog log;
    private final TransactionTemplate transaction;

    BlindAttempts(
            BlindAttemptRepository attempts,
            Evidence evidence,
            Settings settings,
            ActLog log,
            TransactionTemplate transaction) {
        this.attempts = attempts;
        this.evidence = evidence;
        this.transaction = transaction;
        this.settings = settings;
        this.log = log;
    }

    /** @param readAs in the unit of the characteristic */
    public record Told(long operationId, long characteristicId, String code, String readAs, long by, Instant at) {}

    /** What was asked about at operations, oldest first. */
    @Transactional(readOnly = true)
    public List<Told> of(Collection<Long> operationIds) {
        return operationIds.isEmpty()
                ? List.of()
                : attempts.findByOperationIdInOrderById(operationIds).stream()
                        .map(BlindAttempt::told)
                        .toList();
    }

    private record Taken(
            @Nullable ReadingLine line, @Nullable Refusal asked) {}

    /** Takes a reading in a transaction of its own that stays where a blind one is asked about. */
    ReadingLine keeping(Act act, long characteristicId, List<BigDecimal> raw, Supplier<ReadingLine> reading) {
        Taken taken = Objects.requireNonNull(transaction.execute(begun -> {
            try {
                return new Taken(reading.get(), null);
            } catch (Refusal asked) {
                Evidence.Wanted wanted = asked.kind() == Refusal.Kind.ASK ? evidence.wanted(characteristicId) : null;
                if (wanted == null || !wanted.readBack()) {
                    throw asked;
                }
                if (attempts.findByActId(act.id()).isEmpty()) {
                    keep(act, wanted, raw, asked);
                }
                return new Taken(null, asked);
            }
        }));
        if (taken.asked() != null) {
            throw taken.asked();
        }
        return Objects.requireNonNull(taken.line());
    }

    /** The question that an act was answered with that took no reading. */
    Refusal asked(Act act) {
        BlindAttempt attempt = attempts.findByActId(act.id()).orElseThrow();
        return Refusal.ask(
                "value",
                attempt.told().code() + " is not taken yet.",
                attempt.why(),
                "Read the gauge again; correct the value, or confirm that it reads so.");
    }

    private void keep(Act act, Evidence.Wanted wanted, List<BigDecimal> raw, Refusal asked) {
        DecimalSign sign = DecimalSign.of(settings.locale());
        String read = raw.stream().map(sign::write).collect(Collectors.joining("; ")) + " " + wanted.unit();
        attempts.saveAndFlush(new BlindAttempt(wanted, shortened(read), shortened(asked.why()), act));
        log.event(
                wanted.chain(),
                "blind-reading-asked-about",
                Map.of(
                        "operation",
                        wanted.operationId(),
                        "characteristic",
                        wanted.characteristicId(),
                        "read",
                        raw.stream().map(BigDecimal::toPlainString).toList()));
    }

    private static String shortened(String words) {
        return words.length() <= 400 ? words : words.substring(0, 399) + "…";
    }
}
