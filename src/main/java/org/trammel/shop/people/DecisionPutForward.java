package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.WordsRef;

/**
 * That a frame stays as it is although nothing more is known of it, as somebody put it forward. What it is about is told
 * by the sheet it stands on. Only added to.
 */
@MappedSuperclass
public abstract class DecisionPutForward {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private int number;

    @Column(name = "words_id")
    private long wordsId;

    @Column(name = "changes_what_was_ordered")
    private boolean changesWhatWasOrdered;

    @Column(name = "customer_words_id")
    private @Nullable Long customerWordsId;

    @Column(name = "by_person")
    private long by;

    private Instant at;

    protected DecisionPutForward() {}

    /**
     * @param number which of those ever put forward for the same frame on the same sheet
     * @param customer who of the customer agreed, when and how; needed where it changes what was ordered
     */
    protected DecisionPutForward(
            int number, WordsRef words, boolean changesWhatWasOrdered, @Nullable WordsRef customer, Act act) {
        this.number = number;
        this.wordsId = words.id();
        this.changesWhatWasOrdered = changesWhatWasOrdered;
        this.customerWordsId = customer == null ? null : customer.id();
        this.by = act.by();
        this.at = act.at();
    }

    /**
     * How the customer agreed, as it was typed; null if nothing was.
     *
     * @throws Refusal if what was ordered may change and nothing was
     */
    public static @Nullable String customer(
            boolean changesWhatWasOrdered, @Nullable String typed, String deed, int longest) {
        String customer = TypedText.wordsOrNone("customer", "How the customer agreed", deed, typed, longest);
        if (changesWhatWasOrdered && customer == null) {
            throw Refusal.input(
                    "customer",
                    deed,
                    "Dimension, looks or weight may differ from what was ordered, and the customer has not agreed.",
                    "Ask the customer, then enter who agreed, when and how.");
        }
        return customer;
    }

    /**
     * Nobody agrees to another than the one that was read.
     *
     * @param sheet what people call the sheet it stands on
     */
    public void requireNumber(int read, String deed, String sheet) {
        if (number != read) {
            throw Refusal.stale(deed, "Another was put forward since.", "Open " + sheet + " and read it.");
        }
    }

    public long id() {
        return id;
    }

    public int number() {
        return number;
    }

    public long wordsId() {
        return wordsId;
    }

    public boolean changesWhatWasOrdered() {
        return changesWhatWasOrdered;
    }

    public @Nullable Long customerWordsId() {
        return customerWordsId;
    }
}
