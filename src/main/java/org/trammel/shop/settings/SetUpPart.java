package org.trammel.shop.settings;

/**
 * One line of the list of what a new shop still has to enter. Every module that needs something entered before work can
 * begin offers a bean of this; the list is made from what is really there.
 */
public interface SetUpPart {

    /**
     * Place in the list: 10 stations, 15 jigs, 20 tablets, 30 people, 40 qualifications, 50 settings, 60 gauges, 62
     * ovens, 65 lots, 70 routes, 72 to 76 what routes rest on.
     */
    int place();

    State state();

    /**
     * @param name what is entered, such as "Stations"
     * @param count how many are there
     * @param enough whether work can begin with these
     * @param instead what to do next, one sentence
     * @param path the sheet where it is done
     */
    record State(String name, long count, boolean enough, String instead, String path) {}
}
