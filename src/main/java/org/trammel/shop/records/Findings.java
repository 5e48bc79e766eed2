package org.trammel.shop.records;

import java.util.ArrayList;
import java.util.List;
import org.trammel.shop.records.Verification.Fault;

/** Gathers what a verification finds. */
final class Findings {

    /** More are not listed: after a rebuild everything is at fault. */
    static final int FAULTS_AT_MOST = 50;

    private final List<Fault> faults = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private long chains;
    private long records;
    private long checkpoints;

    void fault(String chain, long position, String why) {
        if (faults.size() < FAULTS_AT_MOST) {
            faults.add(new Fault(chain, position, why));
        }
    }

    void remark(String words) {
        remarks.add(words);
    }

    void chain() {
        chains++;
    }

    void walked() {
        records++;
    }

    void checkpoint() {
        checkpoints++;
    }

    long checkpoints() {
        return checkpoints;
    }

    Verification verification() {
        return new Verification(faults, remarks, chains, records, checkpoints);
    }
}
