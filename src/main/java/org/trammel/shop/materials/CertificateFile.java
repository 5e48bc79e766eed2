package org.trammel.shop.materials;

/** A certificate as it was sent. */
public record CertificateFile(byte[] content, String mediaType, String name) {}
