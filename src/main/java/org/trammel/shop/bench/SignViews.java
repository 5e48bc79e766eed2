package org.trammel.shop.bench;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SeenAs;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Signing;
import org.trammel.shop.web.Formats;

/** Lays out a point to sign: which signatures are outstanding and who may give them. */
@Component
class SignViews {

    private final FrameViews frames;
    private final Evidence evidence;
    private final Signing signing;
    private final Crew crew;
    private final Formats formats;

    SignViews(FrameViews frames, Evidence evidence, Signing signing, Crew crew, Formats formats) {
        this.frames = frames;
        this.evidence = evidence;
        this.signing = signing;
        this.crew = crew;
        this.formats = formats;
    }

    SignView of(FrameSheet sheet, SignedOn who, @Nullable Signer wanted) {
        FrameSheet.OperationSheetOfFrame at = sheet.at();
        if (at == null || at.line().state() != OperationState.AT_POINT) {
            throw Refusal.state(
                    "There is nothing to sign for " + sheet.head().mark() + ".",
                    at == null
                            ? "Every operation of it is done."
                            : "Operation " + Words.called(at.line()) + " is "
                                    + at.line().state().word() + ".",
                    "Open the frame again to see what is at hand.");
        }
        List<SignView.Asked> asked = asked(at);
        Signer as = asked.stream()
                .filter(a -> a.by() == null && (wanted == null || a.signer() == wanted))
                .map(SignView.Asked::signer)
                .findFirst()
                .orElse(null);
        return new SignView(
                frames.of(sheet, who, FrameViews.Asked.NOTHING),
                asked,
                as,
                as == null ? List.of() : candidates(at, as, who));
    }

    private List<SignView.Asked> asked(FrameSheet.OperationSheetOfFrame at) {
        List<Signer> signers = at.signers().isEmpty() ? List.of(Signer.SECOND) : at.signers();
        return signers.stream()
                .map(signer -> at.signatures().stream()
                        .filter(s -> s.counts() && s.signer() == signer)
                        .findFirst()
                        .map(s -> new SignView.Asked(signer, s.name(), formats.moment(s.at())))
                        .orElseGet(() -> new SignView.Asked(signer, null, "")))
                .toList();
    }

    /** Whoever is signed on here stands first; the service checks each of them again. */
    private List<SignView.Candidate> candidates(FrameSheet.OperationSheetOfFrame at, Signer as, SignedOn who) {
        Set<Long> barred = evidence.barredFrom(at.line().operationId(), as);
        Set<Long> took = evidence.tookPart(at.line().operationId());
        Set<Long> signed = at.signatures().stream()
                .filter(FrameSheet.SignatureLine::counts)
                .map(FrameSheet.SignatureLine::signedBy)
                .collect(Collectors.toSet());
        Set<Long> worked = as == Signer.WORKER ? signing.asWorker(at.line().operationId(), signed) : Set.of();
        List<Person> may = crew.active().stream()
                .filter(Person::maySign)
                .filter(person -> holds(person, as))
                .filter(person -> !barred.contains(person.id()))
                .filter(person -> !signed.contains(person.id()))
                .filter(person -> worked.isEmpty() || worked.contains(person.id()))
                .sorted((a, b) -> Boolean.compare(here(b, who), here(a, who)))
                .toList();
        return may.stream()
                .map(person -> new SignView.Candidate(
                        person.id(),
                        SeenAs.of(person),
                        here(person, who) ? "signed on here" : took.contains(person.id()) ? "took part" : "",
                        may.size() == 1))
                .toList();
    }

    private static boolean here(Person person, SignedOn who) {
        return person.id() == who.person().id()
                || who.second() != null && who.second().id() == person.id();
    }

    private static boolean holds(Person person, Signer as) {
        return switch (as) {
            case WORKER, SECOND -> true;
            case QA -> person.is(Role.QA_LEAD);
            case OWNER -> person.is(Role.OWNER);
            case ALIGNER -> person.isAny(Role.ALIGNER, Role.QA_LEAD);
            case HEAT_TREATER -> person.is(Role.HEAT_TREATER);
        };
    }
}
