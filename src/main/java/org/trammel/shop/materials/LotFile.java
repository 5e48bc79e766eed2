package org.trammel.shop.materials;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.trammel.shop.records.Files;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.StoredFile;
import org.trammel.shop.web.CsvFile;

/** Lots as files: the list, what one went into, its certificate. */
@Controller
class LotFile {

    private static final int PAGE = 200;

    private final Lots lots;
    private final Files files;

    LotFile(Lots lots, Files files) {
        this.lots = lots;
        this.files = files;
    }

    @GetMapping("/shop/lots.csv")
    ResponseEntity<byte[]> list() {
        CsvFile file = CsvFile.of(
                "lot",
                "kind",
                "what",
                "metal",
                "class",
                "alloy and temper",
                "heat or batch",
                "kept for",
                "supplier",
                "received on",
                "last day",
                "certificate type",
                "certificate",
                "received quantity",
                "left",
                "unit",
                "state",
                "reason");
        List<Lot> page = lots.page(null, null, null, PAGE);
        while (!page.isEmpty()) {
            page.forEach(lot -> file.row(
                    lot.code(),
                    lot.kind().word(),
                    lot.what(),
                    lot.metal(),
                    lot.materialClass(),
                    lot.grade(),
                    lot.heat(),
                    lot.reservedFor() == null ? null : lot.reservedFor().word(),
                    lot.supplier(),
                    lot.receivedOn(),
                    lot.expiresOn(),
                    lot.certificateType(),
                    lot.certificate(),
                    lot.quantity(),
                    lot.quantityLeft(),
                    lot.unit(),
                    lot.state().word(),
                    lot.stateReason()));
            page = lots.page(page.get(page.size() - 1).id(), null, null, PAGE);
        }
        return file.answer("lots.csv");
    }

    @GetMapping("/shop/lots/{code}/went-into.csv")
    ResponseEntity<byte[]> wentInto(@PathVariable String code) {
        Lot lot = find(code);
        CsvFile file = CsvFile.of(
                "lot",
                "serial",
                "part",
                "operation",
                "position",
                "remnant",
                "quantity",
                "unit",
                "at (UTC)",
                "scrapped");
        lots.wentInto(lot.code())
                .forEach(place -> file.row(
                        lot.code(),
                        place.serial(),
                        place.part(),
                        place.operation(),
                        place.position(),
                        place.remnant(),
                        place.quantity(),
                        place.unit(),
                        place.at(),
                        place.scrapped() ? "scrapped" : null));
        return file.answer(lot.code() + "-went-into.csv");
    }

    @GetMapping("/shop/lots/{code}/certificate")
    ResponseEntity<byte[]> certificate(@PathVariable String code) {
        String hash = find(code).certificateFile();
        StoredFile file = stored(hash);
        byte[] content = hash == null ? new byte[0] : files.content(hash).orElseThrow(LotFile::none);
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(file.mediaType()))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(file.name(), StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(content);
    }

    private StoredFile stored(@Nullable String hash) {
        return (hash == null ? Optional.<StoredFile>empty() : files.find(hash)).orElseThrow(LotFile::none);
    }

    private Lot find(String code) {
        return lots.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The lot was not found.", "No lot carries the code " + code + ".", "Choose it from the list."));
    }

    private static Refusal none() {
        return Refusal.missing(
                "The certificate was not found.", "No file of it is kept.", "Add the file at the lot's sheet.");
    }
}
