package org.trammel.shop.records;

/**
 * Words that were kept, as the log names them.
 *
 * @param id under which {@link Words} finds them
 * @param sha256 hash of the words with a salt of their own, in lower-case hexadecimal
 */
public record WordsRef(long id, String sha256) {}
