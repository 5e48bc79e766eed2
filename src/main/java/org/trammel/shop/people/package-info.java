/**
 * Who works here, what each may do and until when, and how people sign on.
 *
 * <p>Invariants: a person is never deleted and initials are never given again; the log shows the name a person had
 * then; nobody signs on without a secret of their own, and being signed on is not a signature; every guess is counted
 * before it is checked; PIN and password leave the server in no form.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "People",
        allowedDependencies = {"records", "settings", "stations"})
package org.trammel.shop.people;
