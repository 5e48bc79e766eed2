package org.trammel.shop.people;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;
import org.trammel.shop.stations.Device;
import org.trammel.shop.stations.Devices;

/** Tablets for programs. The code that enrols one is in the answer, once. */
@RestController
@RequestMapping("/api/v1/tablets")
class TabletApi {

    private final Devices devices;
    private final Signatures signatures;

    TabletApi(Devices devices, Signatures signatures) {
        this.devices = devices;
        this.signatures = signatures;
    }

    record NewTablet(String name, List<String> stations, String secret) {}

    record Confirmed(String secret) {}

    record Code(Device tablet, String code, Instant expiresAt) {}

    @GetMapping
    List<Device> all() {
        return devices.tablets();
    }

    @PostMapping
    Code admit(Act act, SignedOn who, @RequestBody NewTablet tablet) {
        signatures.confirm(who, tablet.secret());
        Devices.Code made = devices.admit(act, tablet.name().strip().toUpperCase(Locale.ROOT), tablet.stations());
        return new Code(made.device(), made.code(), made.expiresAt());
    }

    @PostMapping("/{id}/withdrawal")
    Device withdraw(Act act, SignedOn who, @PathVariable long id, @RequestBody Confirmed confirmed) {
        signatures.confirm(who, confirmed.secret());
        return devices.withdraw(act, id);
    }
}
