/**
 * What did not conform, who decided what becomes of it, and what it cost. Opens by itself, in the same transaction, when
 * a reading is refused at its deciding operation.
 *
 * <p>Invariants: while it is open a hold stands on the operation; nobody decides who took part in the operation at
 * fault; a decision is carried out when all who must agree have agreed.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Nonconformance",
        allowedDependencies = {"travellers", "inspection", "orders"})
package org.trammel.shop.nonconformance;
