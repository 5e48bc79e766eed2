package org.trammel.shop.orders;

/**
 * Category of use of a bicycle, after the definitions of ISO 4210-1 (from memory; edition and clause are for the QA lead
 * to enter). It decides the final inspection list and the band of some design checks.
 */
public enum Category {
    CITY_AND_TREKKING("city and trekking"),
    YOUNG_ADULT("young adult"),
    MOUNTAIN("mountain"),
    RACING("racing"),
    OTHER("other");

    private final String word;

    Category(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
