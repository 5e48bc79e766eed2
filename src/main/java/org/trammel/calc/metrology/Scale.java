package org.trammel.calc.metrology;

/** What a figure is on the scale of the gauge that read it; a calliper's jaws err inside otherwise than outside. */
enum Scale {
    /** Above the plate. */
    HEIGHT,
    /** Between two faces. */
    INSIDE,
    /** Over a part. */
    OUTSIDE
}
