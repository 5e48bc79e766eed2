package org.trammel.shop.gauges;

/** A kind of gauge a characteristic can ask for. */
public record GaugeKind(String code, String name) {}
