package org.trammel.shop.designs;

import java.util.List;

/**
 * Tells what speaks against releasing a revision to the shop although it may be released. Implemented by whoever knows
 * more than the drawing, such as which gauges there are.
 */
public interface ReleaseWarnings {

    /** One sentence each; none where nothing speaks against it, or where the revision names no route. */
    List<String> of(DesignSheet revision);
}
