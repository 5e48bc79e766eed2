package org.trammel.calc.drawing;

/**
 * What the title block of a sheet says, ready to be written; empty where there is nothing to say yet.
 *
 * @param owner the shop
 * @param title what the frame is
 * @param number serial, or the order's number while it has none
 * @param letter of the revision
 * @param metal in words
 * @param state of the revision
 * @param drawn who drew it, and when
 * @param checked who signed the design gate, and when
 * @param approved when the customer approved it, and who wrote that down
 * @param notForWork stamped on the sheet; empty where the shop may work by it
 */
public record TitleBlock(
        String owner,
        String title,
        String number,
        String letter,
        String metal,
        String state,
        String drawn,
        String checked,
        String approved,
        String notForWork) {}
