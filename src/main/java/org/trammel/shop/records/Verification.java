package org.trammel.shop.records;

import java.util.List;
import java.util.Optional;

/**
 * What a walk over everything that is sealed found.
 *
 * @param faults what does not fit, the first one first; of each chain only its first
 * @param remarks what is worth knowing though nothing is wrong with the records
 * @param chains chains walked
 * @param records records walked
 * @param checkpoints checkpoints computed anew
 */
public record Verification(List<Fault> faults, List<String> remarks, long chains, long records, long checkpoints) {

    /**
     * A record that does not fit.
     *
     * @param chain name of the chain, or of what else is at fault: "checkpoints", "words", "files"
     * @param position its position in the chain, or its number
     * @param why one sentence
     */
    public record Fault(String chain, long position, String why) {

        /** For a line on a page or on the console. */
        public String words() {
            return "Record " + position + " of " + chain + " does not fit. " + why;
        }
    }

    public Verification {
        faults = List.copyOf(faults);
        remarks = List.copyOf(remarks);
    }

    /** Whether every record fits. */
    public boolean isIntact() {
        return faults.isEmpty();
    }

    /** The first record that does not fit. */
    public Optional<Fault> first() {
        return faults.stream().findFirst();
    }

    /** How much was walked. */
    public String walked() {
        return counted(chains, "chain") + ", " + counted(records, "record") + ", " + counted(checkpoints, "checkpoint");
    }

    private static String counted(long number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    /** The answer in one sentence. */
    public String words() {
        return walked()
                + ": "
                + first().map(fault ->
                                (faults.size() == 1 ? "one fault. " : faults.size() + " faults. ") + fault.words())
                        .orElse("every record fits.");
    }
}
