package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestClock;

@ShopTest
class FilesTest {

    @Autowired
    private Files files;

    private final TransactionTemplate transaction;

    @Autowired
    FilesTest(PlatformTransactionManager transactions) {
        transaction = new TransactionTemplate(transactions);
    }

    @Test
    void aFileIsFoundByItsContent() {
        byte[] pdf = certificate(3 * 1024 * 1024, 1);
        StoredFile stored = kept(pdf, "application/pdf", "C:\\scans\\Certificate 3.1.pdf");
        assertThat(stored.name()).isEqualTo("Certificate 3.1.pdf");
        assertThat(stored.sizeBytes()).isEqualTo(pdf.length);
        assertThat(files.find(stored.sha256())).contains(stored);
        assertThat(files.content(stored.sha256()))
                .hasValueSatisfying(content -> assertThat(content).isEqualTo(pdf));
        assertThat(files.find("0".repeat(64))).isEmpty();
    }

    /** NIST FIPS 180-4 example "abc". */
    @Test
    void theNameOfAFileIsItsSha256() {
        StoredFile stored = kept("abc".getBytes(StandardCharsets.US_ASCII), "text/plain; charset=utf-8", "");
        assertThat(stored.sha256()).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(stored.name()).isEqualTo("file");
        assertThat(stored.mediaType()).isEqualTo("text/plain");
    }

    @Test
    void theSameContentIsKeptOnce() {
        byte[] pdf = certificate(1000, 2);
        assertThat(kept(pdf, "application/pdf", "second.pdf").name()).isEqualTo("second.pdf");
        assertThat(kept(pdf, "application/pdf", "again.pdf").name())
                .as("as it was added this time")
                .isEqualTo("again.pdf");
        assertThat(files.find(Seal.sha256(pdf)).orElseThrow().name()).isEqualTo("second.pdf");
        assertThat(files.content(Seal.sha256(pdf)).orElseThrow()).hasSize(1000);
    }

    @Test
    void theContentDecidesTheKindAndNotTheSender() throws IOException {
        assertThat(kept(jpeg(40, 30), "application/pdf", "x.pdf").mediaType()).isEqualTo("image/jpeg");
        for (String type : new String[] {"image/png", "image/svg+xml", "text/html", "application/octet-stream", ""}) {
            assertThatThrownBy(() -> kept("<svg onload='1'/>".getBytes(StandardCharsets.UTF_8), type, "x"))
                    .as(type)
                    .isInstanceOf(Refusal.class);
        }
        assertThatThrownBy(() -> kept(new byte[] {(byte) 0xC3, 0x28}, "text/csv", "x"))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> kept(new byte[] {'a', 0}, "text/csv", "x")).isInstanceOf(Refusal.class);
    }

    @Test
    void emptyTooLargeAndBrokenFilesAreRefused() throws IOException {
        assertThatThrownBy(() -> kept("plain words".getBytes(StandardCharsets.UTF_8), "image/png", "x.png"))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        named -> assertThat(named.why())
                                .contains("named a picture")
                                .doesNotContain("UTF-8"));
        assertThatThrownBy(() -> kept(new byte[0], "image/png", "x")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> kept(certificate(Files.LARGEST_BYTES + 1, 3), "application/pdf", "x"))
                .isInstanceOf(Refusal.class);
        byte[] cutOff = Arrays.copyOf(png(200, 100), 60);
        assertThatThrownBy(() -> kept(cutOff, "image/png", "x")).isInstanceOf(Refusal.class);
    }

    @Test
    void aPhotographIsKeptUnderTwoMillionPixels() throws IOException {
        StoredFile stored = kept(jpeg(2400, 1800), "image/jpeg", "weld.jpg");
        BufferedImage image = read(stored);
        assertThat(image.getWidth() * image.getHeight()).isBetween(1_900_000, 2_000_000);
        assertThat((double) image.getWidth() / image.getHeight()).isBetween(1.32, 1.35);
        assertThat(stored.widthPx()).isEqualTo(image.getWidth());
        assertThat(stored.heightPx()).isEqualTo(image.getHeight());
    }

    @Test
    void whatTheCameraWroteBesideThePictureIsDropped() throws IOException {
        byte[] photo = turned(jpeg(60, 40), 1);
        assertThat(new String(photo, StandardCharsets.ISO_8859_1)).contains("Exif");
        StoredFile stored = kept(photo, "image/jpeg", "x.jpg");
        assertThat(new String(files.content(stored.sha256()).orElseThrow(), StandardCharsets.ISO_8859_1))
                .doesNotContain("Exif");
    }

    /**
     * Exif 2.32 (CIPA DC-008), orientation: which corner of the scene the first row and column of the file show. The
     * picture has its upper left quarter red; where that quarter lies in the upright picture follows from the table.
     */
    @ParameterizedTest
    @CsvSource({"1, L, T", "2, R, T", "3, R, B", "4, L, B", "5, L, T", "6, R, T", "7, R, B", "8, L, B"})
    void aPictureIsKeptUpright(int orientation, String side, String height) throws IOException {
        BufferedImage image = read(kept(turned(jpeg(60, 40), orientation), "image/jpeg", "x.jpg"));
        assertThat(image.getWidth()).isEqualTo(orientation >= 5 ? 40 : 60);
        int x = side.equals("L") ? image.getWidth() / 8 : image.getWidth() * 7 / 8;
        int y = height.equals("T") ? image.getHeight() / 8 : image.getHeight() * 7 / 8;
        assertThat(new Color(image.getRGB(x, y)).getRed()).isGreaterThan(200);
        assertThat(new Color(image.getRGB(image.getWidth() - 1 - x, image.getHeight() - 1 - y)).getRed())
                .isLessThan(100);
    }

    @Test
    void anErasedFileIsGoneAndIsNotKeptAgain() {
        byte[] pdf = certificate(2000, 4);
        StoredFile stored = kept(pdf, "application/pdf", "letter.pdf");
        Act act = new Act(UUID.randomUUID(), Act.SERVICE, null, TestClock.START, null);
        files.erase(act, stored.sha256());
        files.erase(act, stored.sha256());
        assertThat(files.content(stored.sha256())).isEmpty();
        assertThat(files.find(stored.sha256())).isPresent();
        assertThatThrownBy(() -> kept(pdf, "application/pdf", "letter.pdf")).isInstanceOf(Refusal.class);
    }

    private StoredFile kept(byte[] content, String mediaType, String name) {
        return transaction.execute(status -> files.keep(content, mediaType, name));
    }

    private BufferedImage read(StoredFile stored) throws IOException {
        return ImageIO.read(
                new ByteArrayInputStream(files.content(stored.sha256()).orElseThrow()));
    }

    private static byte[] certificate(int size, long seed) {
        byte[] content = new byte[size];
        new Random(seed).nextBytes(content);
        System.arraycopy("%PDF-1.7".getBytes(StandardCharsets.US_ASCII), 0, content, 0, 8);
        return content;
    }

    private static byte[] jpeg(int width, int height) throws IOException {
        return drawn(width, height, "jpeg");
    }

    private static byte[] png(int width, int height) throws IOException {
        return drawn(width, height, "png");
    }

    private static byte[] drawn(int width, int height, String format) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.BLUE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 2, height / 2);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, format, bytes);
        return bytes.toByteArray();
    }

    /** Puts an APP1 segment with the orientation behind the start of the picture, as a camera does. */
    private static byte[] turned(byte[] jpeg, int orientation) {
        byte[] exif = {
            (byte) 0xFF,
            (byte) 0xE1,
            0,
            34,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            0x01,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            (byte) orientation,
            0,
            0,
            0,
            0,
            0,
            0
        };
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(jpeg, 0, 2);
        bytes.writeBytes(exif);
        bytes.write(jpeg, 2, jpeg.length - 2);
        return bytes.toByteArray();
    }
}
