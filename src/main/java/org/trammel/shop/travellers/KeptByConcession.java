package org.trammel.shop.travellers;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/**
 * Who may keep something by concession under a newer revision: the QA lead and the owner, neither of whom took part in
 * it, and two people wherever somebody else is here who could speak for either.
 */
@Component
class KeptByConcession {

    private static final String WHAT = "The newer revision was not released.";

    private static final int LONGEST = 1000;

    private final OperationRepository operations;
    private final Settings settings;
    private final Evidence evidence;
    private final Crew crew;
    private final Crewed crewed;

    KeptByConcession(OperationRepository operations, Settings settings, Evidence evidence, Crew crew, Crewed crewed) {
        this.operations = operations;
        this.settings = settings;
        this.evidence = evidence;
        this.crew = crew;
        this.crewed = crewed;
    }

    /**
     * Refuses unless both may, the customer agreed, and limits and a last day are given.
     *
     * @param act of who releases the newer revision, for the QA lead
     * @param agreed null where nobody was asked
     * @param kept ids of the operations that are kept by concession
     */
    void require(Act act, Revising.@Nullable Agreed agreed, Collection<Long> kept) {
        if (agreed == null || agreed.customer().isBlank()) {
            throw Refusal.input(
                    agreed == null ? "owner" : "customer",
                    WHAT,
                    "Something is to be kept by concession, and " + (agreed == null ? "the owner" : "the customer")
                            + " has not agreed.",
                    "Have the owner sign with their own PIN and enter who of the customer agreed, or say repeat.");
        }
        TypedText.words("customer", "How the customer agreed", WHAT, agreed.customer(), LONGEST);
        TypedText.words("limits", "What it is limited to", WHAT, agreed.limits(), LONGEST);
        LocalDate today = settings.dayOf(act.at());
        if (agreed.expiresOn() == null || agreed.expiresOn().isBefore(today)) {
            throw Refusal.input(
                    "expiresOn",
                    WHAT,
                    agreed.expiresOn() == null
                            ? "What is kept by concession has no last day."
                            : "Its last day, " + agreed.expiresOn() + ", is past.",
                    "Enter the last day on which a gate may be passed with it.");
        }
        requireBoth(act.by(), agreed.ownerId(), kept);
    }

    private void requireBoth(long leadId, long ownerId, Collection<Long> kept) {
        crewed.holding(ownerId, Role.OWNER, "Agreeing to keep something by concession");
        Set<Long> tookPart = new HashSet<>();
        for (Long id : kept) {
            Operation operation = operations.findById(id).orElseThrow(() -> Bench.noSuch("operation"));
            Set<Long> here = new HashSet<>();
            evidence.operationsOf(operation.travellerId(), operation.code())
                    .forEach(same -> here.addAll(evidence.tookPart(same)));
            requireNoPart(leadId, operation, here);
            requireNoPart(ownerId, operation, here);
            tookPart.addAll(here);
        }
        if (leadId == ownerId) {
            requireNobodyElse(leadId, tookPart);
        }
    }

    private void requireNoPart(long personId, Operation operation, Set<Long> tookPart) {
        if (tookPart.contains(personId)) {
            throw Refusal.person(
                    WHAT,
                    crewed.person(personId).name() + " took part in operation " + operation.called()
                            + ", which is to be kept by concession.",
                    "QA lead and owner who took no part in it keep it by concession, or say repeat.");
        }
    }

    private void requireNobodyElse(long personId, Set<Long> tookPart) {
        Set<Long> standIns = crew.standInsForQaLead(tookPart);
        crew.here().stream()
                .filter(p -> p.id() != personId && p.maySign() && !tookPart.contains(p.id()))
                .filter(p -> p.isAny(Role.QA_LEAD, Role.OWNER) || standIns.contains(p.id()))
                .map(Person::name)
                .findFirst()
                .ifPresent(other -> {
                    throw Refusal.person(
                            WHAT,
                            "One person would speak for QA lead and owner, and " + other + " is here.",
                            "Two people agree to keep something by concession: let " + other
                                    + " speak for one of them.");
                });
    }
}
