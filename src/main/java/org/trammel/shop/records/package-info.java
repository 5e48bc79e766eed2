/**
 * What happened: the append-only, hash-chained log of acts, the erasable words beside it, and files kept by content.
 *
 * <p>Invariants: one act writes one record in every chain it touches, in the transaction that made the change; a
 * record is never changed; the same act id is carried out once.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(displayName = "Records")
package org.trammel.shop.records;
