package org.trammel.shop.web;

import org.jspecify.annotations.Nullable;

/** Who knows which scribe mark a frame was given. Answered from memory: a list of frames asks once for every row. */
public interface ScribeMarks {

    /** Code of the mark on the frame's tag; null if it has none. */
    @Nullable
    String codeOf(String serial);
}
