package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.DoneSince;

/** What a decision put forward must say. */
final class ProposalCheck {

    private static final int LONGEST_CODE = 12;
    private static final BigDecimal MOST_HOURS = BigDecimal.valueOf(1000);
    private static final BigDecimal MOST_COST = BigDecimal.valueOf(1_000_000);

    private static final int LONGEST = 1000;

    private ProposalCheck() {}

    /** Refuses a decision that does not say everything its kind must say, or says what cannot be kept. */
    static void requireComplete(Nonconformance n, Proposal p, LocalDate today) {
        String what = "The decision was not put forward.";
        TypedText.words("words", "The reason", what, p.words(), LONGEST);
        if (p.fromCode() != null && p.fromCode().length() > LONGEST_CODE) {
            throw Refusal.input(
                    "from",
                    what,
                    "No operation has a code of that length.",
                    "Choose one of the operations that were done.");
        }
        TypedText.wordsOrNone("limits", "What it is limited to", what, p.limits(), LONGEST);
        TypedText.wordsOrNone("customerAgreement", "How the customer agreed", what, p.customerAgreement(), LONGEST);
        if (p.decision().loops() && blank(p.fromCode())) {
            throw Refusal.input(
                    "from", what, "It does not say which operations are done over.", "Choose the first of them.");
        }
        if (p.decision() == Decision.CONCESSION) {
            if (!n.concedable()) {
                throw Refusal.state(
                        what,
                        n.number() + " is about no characteristic or record that a concession could release.",
                        "Decide on rework, repair or scrap, or open one for the characteristic.");
            }
            if (blank(p.limits()) || p.expiresOn() == null) {
                throw Refusal.input(
                        "limits",
                        what,
                        "A concession says how far it reaches and until when it may be used.",
                        "Enter limits and last day.");
            }
            if (p.expiresOn().isBefore(today)) {
                throw Refusal.input(
                        "expiresOn", what, "The last day, " + p.expiresOn() + ", is past.", "Enter a day to come.");
            }
            if (p.changesWhatWasOrdered() && blank(p.customerAgreement())) {
                throw Refusal.input(
                        "customerAgreement",
                        what,
                        "Dimension, looks or weight differ from what was ordered, and the customer has not agreed.",
                        "Ask the customer, then enter who agreed, when and how.");
            }
        }
        requireCost("hours", what, p.hours(), MOST_HOURS);
        requireCost("materialCost", what, p.materialCost(), MOST_COST);
    }

    /**
     * What is said to be valid still is something that was done after the fault was found; of what is scrapped itself
     * nothing is.
     */
    static void requireDoneSince(Nonconformance n, Proposal p, List<DoneSince.Done> since) {
        boolean scrap = p.decision() == Decision.SCRAP;
        p.stillValid().stream()
                .filter(id -> since.stream()
                        .noneMatch(done -> done.operationId() == id
                                && !(scrap && done.part().equals(n.part()))))
                .findFirst()
                .ifPresent(id -> {
                    throw Refusal.input(
                            "stillValid",
                            "The decision was not put forward.",
                            "Operation number " + id + " is not among those done since it was found"
                                    + (scrap ? ", or is one of what is scrapped." : "."),
                            "Open the sheet again and tick what stays valid.");
                });
    }

    private static void requireCost(String field, String what, @Nullable BigDecimal number, BigDecimal most) {
        if (number != null && (number.signum() < 0 || number.compareTo(most) > 0)) {
            throw Refusal.input(
                    field,
                    what,
                    number.toPlainString() + " is not between 0 and " + most.toPlainString() + ".",
                    "Enter what it costs, or nothing.");
        }
    }

    private static boolean blank(@Nullable String words) {
        return words == null || words.isBlank();
    }
}
