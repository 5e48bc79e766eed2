package org.trammel.shop.records;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Photographs, certificates and drawings, kept by their content: the same content is kept once, and its hash in the log
 * says that it is still the same. Pictures are kept small, upright and without what the camera wrote beside them.
 */
@Service
public class Files {

    /** Bytes of the largest file that is kept. */
    public static final int LARGEST_BYTES = 20 * 1024 * 1024;

    private static final int LONGEST_NAME = 120;

    private final KeptFileRepository files;
    private final KeptFilePartRepository parts;
    private final ErasureRepository erasures;
    private final ActLog log;
    private final Clock clock;

    Files(KeptFileRepository files, KeptFilePartRepository parts, ErasureRepository erasures, ActLog log, Clock clock) {
        this.files = files;
        this.parts = parts;
        this.erasures = erasures;
        this.log = log;
        this.clock = clock;
    }

    /**
     * Keeps a file in the transaction of the act it belongs to.
     *
     * @param content the bytes as they were sent
     * @param mediaType the kind the sender says it is; the content decides
     * @param name the name it had on the sender's device
     * @throws Refusal if it is empty, too large, of a kind that is not kept, or broken
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public StoredFile keep(byte[] content, String mediaType, String name) {
        if (content.length == 0 || content.length > LARGEST_BYTES) {
            throw notKept(
                    content.length == 0
                            ? "It is empty."
                            : "It has " + content.length / (1024 * 1024) + " MB; 20 MB are kept at most.",
                    content.length == 0 ? "Choose the file again." : "Make it smaller and send it again.");
        }
        FileKind kind = FileKind.of(content, mediaType).orElseThrow(() -> ofNoKind(mediaType));
        return kind.isImage() ? picture(content, kind, name) : kept(content, kind, name, null);
    }

    private static Refusal ofNoKind(String mediaType) {
        String named = mediaType.strip().toLowerCase(Locale.ROOT);
        if (named.startsWith("image/")) {
            return notKept(
                    "It is named a picture, and its content is no JPEG or PNG.",
                    "Take or save the picture as one of these.");
        }
        return named.startsWith("application/pdf")
                ? notKept("It is named a PDF, and its content is none.", "Save it as a PDF again.")
                : notKept("It is not a JPEG or PNG picture, a PDF, or a text in UTF-8.", "Save it as one of these.");
    }

    private StoredFile picture(byte[] content, FileKind kind, String name) {
        try {
            Picture picture = Picture.of(content, kind);
            return kept(picture.content(), kind, name, picture);
        } catch (IOException broken) {
            throw notKept("The picture cannot be read; it may have been cut off on the way.", "Take or send it again.");
        }
    }

    private StoredFile kept(byte[] content, FileKind kind, String name, @Nullable Picture picture) {
        String sha256 = Seal.sha256(content);
        int added = files.keep(
                sha256,
                kind.mediaType(),
                shortened(name),
                content.length,
                picture == null ? null : picture.widthPx(),
                picture == null ? null : picture.heightPx(),
                clock.instant());
        if (added == 0) {
            refuseErased(sha256);
        } else {
            for (int from = 0, part = 0; from < content.length; from += KeptFilePart.BYTES, part++) {
                int to = Math.min(content.length, from + KeptFilePart.BYTES);
                parts.save(new KeptFilePart(sha256, part, Arrays.copyOfRange(content, from, to)));
            }
        }
        return find(sha256).orElseThrow().named(shortened(name));
    }

    private void refuseErased(String sha256) {
        if (erasures.existsById(Erasure.file(sha256))) {
            throw notKept("The same file was kept before and erased.", "Take another one, if one is needed.");
        }
    }

    /** What is known of a file, its content apart. */
    @Transactional(readOnly = true)
    public Optional<StoredFile> find(String sha256) {
        return files.findById(sha256).map(KeptFile::stored);
    }

    /**
     * The content of a file, after it was checked against its hash; empty if it was erased.
     *
     * @throws IllegalStateException if the content is not what was kept
     */
    @Transactional(readOnly = true)
    public Optional<byte[]> content(String sha256) {
        List<KeptFilePart> found = parts.findByFileSha256OrderByPart(sha256);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        found.forEach(part -> content.writeBytes(part.content()));
        if (!Seal.sha256(content.toByteArray()).equals(sha256)) {
            throw new IllegalStateException("The content of file " + sha256 + " is not what was kept");
        }
        return Optional.of(content.toByteArray());
    }

    /** Erases a file's content for good. Its hash stays, and that it was erased. */
    @Transactional
    public void erase(Act act, String sha256) {
        if (!log.opens(act, "erase file", Erasure.file(sha256), Chains.SHOP)) {
            return;
        }
        if (parts.erase(sha256) == 0) {
            throw Refusal.missing(
                    "The file was not erased.",
                    "There is no such file, or it was erased before.",
                    "Go back to the record.");
        }
        erasures.save(new Erasure(Erasure.file(sha256), act));
        log.event(Chains.SHOP, "file erased", Map.of("sha256", sha256));
    }

    private static String shortened(String name) {
        String last = PlainText.of(name)
                .replaceAll(".*[/\\\\]", "")
                .replaceAll("[\\n\\t]", " ")
                .strip();
        String known = last.isEmpty() ? "file" : last;
        // Cut at the front, where the kind of the file does not stand; a letter cut in half is made whole again.
        return known.length() <= LONGEST_NAME ? known : PlainText.of(known.substring(known.length() - LONGEST_NAME));
    }

    private static Refusal notKept(String why, String instead) {
        return Refusal.input("file", "The file was not kept.", why, instead);
    }
}
