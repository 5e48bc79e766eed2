/**
 * The face every module shares: the page's shell, how quantities and times are written, how a refusal becomes an
 * answer, what an act carries, the conventions of the API, and the marks drawn on a sheet.
 *
 * <p>Conventions for every module: {@code XPages} draws sheets and takes forms, {@code XApi} answers below
 * {@code /api/v1}; both take {@link org.trammel.shop.records.Act} and {@link org.trammel.shop.people.SignedOn} as
 * parameters and call the same service, which makes all checks. A refusal is thrown and not caught. Whoever throws one
 * that asks again reads the parameter {@code confirm}. Words for a broken constraint stand in
 * {@code constraints/MODULE.properties}.
 *
 * <p>Invariants: nothing here decides about work; every text that reaches a page is escaped; an answer never shows a
 * stack trace.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Web",
        allowedDependencies = {"records", "settings", "stations", "people"})
package org.trammel.shop.web;
