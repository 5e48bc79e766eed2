package org.trammel.shop.inspection;

import java.util.HashMap;
import java.util.Map;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Evidence;

/** Keeps hands off what a record gives: it is neither keyed beside the record nor corrected by hand. */
@Service
public class GivenReadings {

    private final ObjectProvider<GivenByRecord> records;
    private final ReadingRepository readings;

    GivenReadings(ObjectProvider<GivenByRecord> records, ReadingRepository readings) {
        this.records = records;
        this.readings = readings;
    }

    /** What a record gives, by code of the characteristic. */
    @Transactional(readOnly = true)
    public Map<String, GivenByRecord.Source> at(long operationId, String operationCode) {
        Map<String, GivenByRecord.Source> sources = new HashMap<>();
        records.orderedStream()
                .forEach(one -> one.at(operationId, operationCode).forEach(sources::putIfAbsent));
        return sources;
    }

    void requireKeyed(Evidence.Wanted wanted) {
        Long newest = wanted.readingId();
        if (newest != null) {
            readings.findById(newest).ifPresent(last -> refuse(last, "read anew"));
        }
        GivenByRecord.Source source =
                at(wanted.operationId(), wanted.operationCode()).get(wanted.code());
        if (source != null) {
            throw source.refusal();
        }
    }

    void refuseCorrection(Reading reading) {
        refuse(reading, "corrected");
    }

    private static void refuse(Reading reading, String verb) {
        if (reading.record() != null) {
            throw Refusal.state(
                    reading.characteristicCode() + " is not " + verb + " by hand.",
                    "It was given by " + reading.record() + ", whose figures stand there.",
                    "A further record gives it anew; a nonconformance decides what follows from this one.");
        }
    }
}
