package org.trammel.shop.travellers;

import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** Hold points and witness points: who signs them, and that it is never somebody who did the work. */
@Service
public class Signing {

    private final Bench bench;
    private final SignatureRepository signatures;
    private final Doers doers;
    private final SecondLook secondLook;
    private final Progress progress;
    private final Gate gate;
    private final Crewed crewed;
    private final CharacteristicRepository characteristics;
    private final Settings settings;
    private final ActLog log;
    private final Formats formats;

    Signing(
            Bench bench,
            SignatureRepository signatures,
            Doers doers,
            SecondLook secondLook,
            Progress progress,
            Gate gate,
            Crewed crewed,
            CharacteristicRepository characteristics,
            Settings settings,
            ActLog log,
            Formats formats) {
        this.bench = bench;
        this.signatures = signatures;
        this.doers = doers;
        this.secondLook = secondLook;
        this.progress = progress;
        this.gate = gate;
        this.crewed = crewed;
        this.characteristics = characteristics;
        this.settings = settings;
        this.log = log;
        this.formats = formats;
    }

    /**
     * Signs the point of an operation whose work is done. The caller has checked the signer's own PIN at this moment.
     *
     * @param signerId who signs; need not be who sends the act
     * @param as what the signature stands for, one of those the route asks for
     */
    @Transactional
    public void sign(Act act, long operationId, long signerId, Signer as) {
        bench.onOperation(act, "sign " + as.name(), operationId, (traveller, operation) -> {
            String deed = "Signing operation " + operation.called() + " of " + traveller.mark();
            operation.requireAt("signed", OperationState.AT_POINT);
            Person person = crewed.signing(signerId, deed);
            Gate.refuseFirst(gate.earlier(traveller, operation));
            Gate.refuseFirst(gate.heldForGood(traveller, operation, "be signed"));
            Gate.refuseFirst(gate.awaited(traveller, operation));
            requireConcessions(operation, act, deed);
            secondLook.requireStands(operation, deed);
            List<Signature> before = signatures.findByOperationIdOrderById(operationId).stream()
                    .filter(operation::counts)
                    .toList();
            requireWanted(operation, as, before, deed);
            requireMaySign(act, operation, person, as, before, deed);
            Signature signature =
                    signatures.save(new Signature(operation, person, as, meaning(traveller, operation, as), act));
            log.event(
                    traveller.chain(),
                    "signed",
                    Map.of(
                            "operation",
                            operationId,
                            "signer",
                            as.name(),
                            "person",
                            signerId,
                            "signature",
                            signature.id()));
            Set<Signer> wanted = EnumSet.copyOf(operation.signers().isEmpty() ? List.of(as) : operation.signers());
            before.forEach(s -> wanted.remove(s.signer()));
            wanted.remove(as);
            if (wanted.isEmpty()) {
                operation.signedOff(act.at());
                progress.done(act, traveller, operation);
            }
        });
    }

    /** A concession lets the gate be passed up to its last day, and not after it. */
    private void requireConcessions(Operation operation, Act act, String deed) {
        LocalDate day = settings.dayOf(act.at());
        characteristics.findByOperationIdOrderByPosition(operation.id()).stream()
                .filter(c -> c.concessionOver(day))
                .findFirst()
                .ifPresent(c -> {
                    throw c.concessionEnded(deed + " is not done.");
                });
    }

    private static String meaning(Traveller traveller, Operation operation, Signer as) {
        return "Operation " + operation.called() + ", " + operation.name() + ", of " + traveller.mark() + " revision "
                + traveller.letter() + " may go on; signed as " + as.word();
    }

    private static void requireWanted(Operation operation, Signer as, List<Signature> before, String deed) {
        if (before.stream().anyMatch(s -> s.signer() == as)) {
            throw Refusal.stale(
                    deed + " is not done again.",
                    "It is already signed as " + as.word() + ".",
                    "Open the frame again to see what is outstanding.");
        }
        if (!operation.signers().isEmpty() && !operation.signers().contains(as)) {
            throw Refusal.state(
                    deed + " as " + as.word() + " is not asked for.",
                    "The route asks for "
                            + String.join(
                                    ", ",
                                    operation.signers().stream()
                                            .map(Signer::word)
                                            .toList()) + ".",
                    "Sign as one of these.");
        }
    }

    private void requireMaySign(
            Act act, Operation operation, Person person, Signer as, List<Signature> before, String deed) {
        if (before.stream().anyMatch(s -> s.personId() == person.id())) {
            throw Refusal.person(
                    deed + " a second time is not open to " + person.name() + ".",
                    "The signatures of one point come from different people.",
                    "Call somebody else.");
        }
        if (doers.barredFrom(operation.id(), as).contains(person.id())) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    person.name() + " ticked or measured at this operation; the one who signs took no part in it.",
                    "Call somebody who took no part.");
        }
        if (as == Signer.WORKER) {
            requireWorked(operation, person, before, deed);
        }
        switch (as) {
            case QA -> crewed.holding(person.id(), Role.QA_LEAD, deed);
            case OWNER -> crewed.holding(person.id(), Role.OWNER, deed);
            case ALIGNER -> {
                if (!person.is(Role.QA_LEAD)) {
                    crewed.holding(person.id(), Role.ALIGNER, deed);
                }
            }
            case HEAT_TREATER -> crewed.holding(person.id(), Role.HEAT_TREATER, deed);
            case WORKER, SECOND -> {
                // any worker who may sign
            }
        }
    }

    /**
     * Who signs the point of an operation as the worker; empty where anybody may.
     *
     * @param signed who signed it already
     */
    @Transactional(readOnly = true)
    public Set<Long> asWorker(long operationId, Set<Long> signed) {
        return doers.signingAsWorker(operationId, signed);
    }

    private void requireWorked(Operation operation, Person person, List<Signature> before, String deed) {
        Set<Long> did = doers.signingAsWorker(
                operation.id(), before.stream().map(Signature::personId).collect(Collectors.toSet()));
        if (!did.isEmpty() && !did.contains(person.id())) {
            throw Refusal.person(
                    deed + " as worker is not open to " + person.name() + ".",
                    person.name() + " did none of the work of it; the worker's signature is that of somebody who did.",
                    "Call "
                            + did.stream()
                                    .map(id -> crewed.person(id).name())
                                    .sorted()
                                    .collect(Collectors.joining(" or "))
                            + " to sign as worker.");
        }
    }

    /** Passes a witness point to which nobody came in the waiting time. */
    @Transactional
    public void passWitness(Act act, long operationId) {
        bench.onOperation(act, "pass witness point", operationId, (traveller, operation) -> {
            String deed = "Passing the witness point of operation " + operation.called();
            crewed.signing(act.by(), deed);
            operation.requireAt("passed", OperationState.AT_POINT);
            if (operation.point() != Point.WITNESS) {
                throw Refusal.state(
                        deed + " is not possible.",
                        "It is a hold point: the work does not pass until it is signed.",
                        "Call the people who sign it.");
            }
            Duration wait = Duration.ofMinutes(settings.whole("witness.wait.minutes"));
            if (act.at().isBefore(operation.atPointSince().plus(wait))) {
                throw Refusal.state(
                        deed + " is not possible yet.",
                        "The witness was invited at " + formats.time(operation.atPointSince()) + " and has "
                                + wait.toMinutes() + " minutes.",
                        "Wait, or call the witness to sign.");
            }
            Gate.refuseFirst(gate.earlier(traveller, operation));
            Gate.refuseFirst(gate.heldForGood(traveller, operation, "be passed"));
            Gate.refuseFirst(gate.awaited(traveller, operation));
            requireConcessions(operation, act, deed);
            secondLook.requireStands(operation, deed);
            operation.signedOff(act.at());
            log.event(traveller.chain(), "witness point passed unattended", Map.of("operation", operationId));
            progress.done(act, traveller, operation);
        });
    }
}
