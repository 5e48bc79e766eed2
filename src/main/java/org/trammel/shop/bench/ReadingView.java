package org.trammel.shop.bench;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.GivenByRecord;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.ScaleView;

/**
 * The sheet of one characteristic: the fields to key, or the verdict and what follows from it.
 *
 * @param keying true while figures are asked for
 * @param replaces id of the reading that is corrected; null if a new one is taken
 * @param fields one for each sample point
 * @param choices gauges and set-ups that may be used, by code
 * @param gauge the one chosen; empty if the person must choose
 * @param doubts what speaks against the one chosen, although it may be used
 * @param last the newest reading that stands; null before there is one, and while it must not be seen
 * @param scale null where nothing may or can be drawn
 * @param before the reading before the frame was set straight, in words; null if there is none
 * @param coldSet what a cold-set may still do; null unless it is asked for
 * @param given the record that the figure comes from and will come from; null where it is keyed
 * @param correctable the person signed on may say that the last one was mistyped
 * @param samePerson two people read it, and the one signed on read it first
 */
record ReadingView(
        FrameView frame,
        FrameSheet.CharacteristicLine characteristic,
        String letter,
        String limits,
        boolean keying,
        @Nullable Long replaces,
        List<Field> fields,
        Map<String, String> choices,
        String gauge,
        @Nullable Means means,
        List<String> doubts,
        @Nullable ReadingLine last,
        @Nullable ScaleView scale,
        @Nullable Answer answer,
        @Nullable String before,
        ColdSets.@Nullable Room coldSet,
        GivenByRecord.@Nullable Source given,
        boolean correctable,
        boolean samePerson) {

    /** The field of one sample point. */
    record Field(int index, String label) {}

    /**
     * The verdict in words.
     *
     * @param value with the decimals it was read with, without its sign where a side says it
     * @param side drive or non-drive; empty where the characteristic has no sides
     * @param sentence why
     * @param lines smaller facts: gauge, uncertainty, raw values
     * @param action the one next thing
     * @param address where it leads
     */
    record Answer(
            String word,
            String kind,
            String value,
            String side,
            String sentence,
            List<String> lines,
            String action,
            String address) {}
}
