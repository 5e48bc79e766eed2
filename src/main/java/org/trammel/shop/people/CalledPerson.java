package org.trammel.shop.people;

/** What somebody is called. */
record CalledPerson(long id, String initials, String name) {}
