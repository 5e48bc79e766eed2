package org.trammel.shop.routes;

/** A child as a draft names it: which part it is and which route it follows. */
record Part(String part, String name, RouteRow route) {}
