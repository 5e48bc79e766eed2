package org.trammel.shop.stations;

import java.util.List;
import java.util.Map;

/** Who names stations by their codes before there are any, such as routes. */
public interface StationsNamed {

    /** What is done at each code, in the order of the codes. */
    Map<String, List<String>> named();
}
