package org.trammel.shop.records;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Kinds of files the shop keeps, told by their content and not by what the sender says. */
enum FileKind {
    JPEG("image/jpeg", 0xFF, 0xD8, 0xFF),
    PNG("image/png", 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A),
    PDF("application/pdf", '%', 'P', 'D', 'F', '-'),
    CSV("text/csv"),
    TEXT("text/plain");

    private final String mediaType;
    private final int[] opening;

    FileKind(String mediaType, int... opening) {
        this.mediaType = mediaType;
        this.opening = opening;
    }

    String mediaType() {
        return mediaType;
    }

    boolean isImage() {
        return this == JPEG || this == PNG;
    }

    /**
     * The kind of a content. Text has no opening, so there the sender's word decides which, if it can be text at all.
     *
     * @param declared media type as the sender says, with or without parameters
     */
    static Optional<FileKind> of(byte[] content, String declared) {
        Optional<FileKind> byOpening =
                Stream.of(JPEG, PNG, PDF).filter(kind -> kind.opens(content)).findFirst();
        if (byOpening.isPresent()) {
            return byOpening;
        }
        String type = declared.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
        return Stream.of(CSV, TEXT)
                .filter(kind -> kind.mediaType.equals(type) && isText(content))
                .findFirst();
    }

    private boolean opens(byte[] content) {
        if (content.length < opening.length) {
            return false;
        }
        for (int i = 0; i < opening.length; i++) {
            if ((content[i] & 0xFF) != opening[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean isText(byte[] content) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .chars()
                    .noneMatch(c -> c == 0);
        } catch (CharacterCodingException e) {
            return false;
        }
    }
}
