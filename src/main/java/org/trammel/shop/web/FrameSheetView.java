package org.trammel.shop.web;

import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.SideView;

/**
 * What a drawing sheet of a frame shows.
 *
 * @param side the frame from its drive side
 * @param lit the part at hand, drawn in marking blue; null for none
 * @param owner the shop
 * @param title what it is
 * @param number order or serial
 * @param letter of the revision
 * @param metal in words
 * @param state of the revision, in words
 * @param drawnOn the day the revision was begun, as it is written
 */
public record FrameSheetView(
        SideView side,
        SideView.@Nullable Part lit,
        String owner,
        String title,
        String number,
        String letter,
        String metal,
        String state,
        String drawnOn) {}
