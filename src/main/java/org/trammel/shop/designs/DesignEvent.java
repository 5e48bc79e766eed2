package org.trammel.shop.designs;

import org.trammel.shop.records.Act;

/** Something happened to a design revision; published in the transaction that did it. */
public sealed interface DesignEvent {

    Act act();

    long designId();

    long revisionId();

    /** Went to the customer. */
    record Sent(Act act, long designId, long revisionId) implements DesignEvent {}

    /** The customer approved it. */
    record Approved(Act act, long designId, long revisionId) implements DesignEvent {}

    /** Released to the shop; a revision released before it is superseded. */
    record Released(Act act, long designId, long revisionId) implements DesignEvent {}
}
