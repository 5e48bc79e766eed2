package org.trammel.shop.travellers;

import java.time.Instant;
import org.trammel.shop.records.Act;

/** Books a scanned lot to the frame when the step that asks for it is ticked. The module of the lots provides it. */
public interface MaterialIssue {

    /**
     * Books the lot, or refuses it.
     *
     * @param lot code as scanned
     * @param kind kind of lot the step asks for, such as TUBE
     * @throws org.trammel.shop.records.Refusal if the lot may not go into this frame
     */
    void issue(Act act, String lot, String kind, Use use);

    /**
     * Where it goes.
     *
     * @param serial stored serial of the frame
     * @param part part of the frame, empty for the whole
     * @param metal metal of the frame
     * @param operationCode operation it is used at
     * @param begunAt when this loop of the operation began; what was used before it was used by an earlier one
     * @param position what it becomes, in the step's words
     */
    record Use(String serial, String part, String metal, String operationCode, Instant begunAt, String position) {}
}
