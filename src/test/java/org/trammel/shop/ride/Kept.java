package org.trammel.shop.ride;

import java.util.HashSet;
import java.util.Set;
import org.trammel.shop.travellers.FrameSheet;

/** The pictures of the rides. */
final class Kept {

    private static final Set<String> PICTURED = new HashSet<>();

    private Kept() {}

    /** Keeps a picture of the first frame that comes to it: the sheets of the next ones differ in its number alone. */
    static void look(Tablet tablet, FrameSheet sheet, FrameSheet.OperationSheetOfFrame at, String what) {
        String part = sheet.head().part();
        String code = at.line().code();
        if (PICTURED.add(code + " " + what)) {
            Sheets.look(tablet.page(), (part.isEmpty() ? sheet.head().kind() : part) + "-" + code + "-" + what);
        }
    }
}
