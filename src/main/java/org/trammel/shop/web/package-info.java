/**
 * The face every module shares: the page's shell, how quantities and times are written, how a refusal becomes an
 * answer, what an act carries, the conventions of the API, and the marks drawn on a sheet.
 *
 * <p>Invariants: nothing here decides about work; every text that reaches a page is escaped; an answer never shows a
 * stack trace.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Web",
        allowedDependencies = {"records", "settings", "stations", "people"})
package org.trammel.shop.web;
