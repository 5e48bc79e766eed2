package org.trammel.shop.people;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.SignOnRow.End;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Device;
import org.trammel.shop.stations.Devices;
import org.trammel.shop.stations.Devices.Enrolled;

/** Writes who is signed on where. The secret was checked before. */
@Component
@Transactional
class SignOnBook {

    private final SignOnRepository signOns;
    private final PersonRepository people;
    private final Devices devices;
    private final Doorkeeper doorkeeper;
    private final LastSeen lastSeen;
    private final ActLog log;

    SignOnBook(
            SignOnRepository signOns,
            PersonRepository people,
            Devices devices,
            Doorkeeper doorkeeper,
            LastSeen lastSeen,
            ActLog log) {
        this.signOns = signOns;
        this.people = people;
        this.devices = devices;
        this.doorkeeper = doorkeeper;
        this.lastSeen = lastSeen;
        this.log = log;
    }

    /** Puts the person who acts in a place at the device they act at. */
    void enter(Act act, long deviceId, Place place) {
        if (log.opens(act, "sign-on", "device:" + deviceId + ":" + place, Chains.SHOP)) {
            put(act, deviceId, place);
        }
    }

    /**
     * Signs the person who acts on at a desk: a new one for an unknown browser, else a new token for the known one.
     *
     * @param known the desk whose token the browser has; null if it has none
     */
    Enrolled enterDesk(Act act, @Nullable Long known) {
        Enrolled desk = known == null ? devices.desk(act) : devices.renew(act, known);
        long deviceId = desk.device().id();
        Act there = new Act(act.id(), act.by(), deviceId, act.at(), act.deviceAt());
        if (log.opens(there, "sign-on", "desk:" + act.by(), Chains.SHOP)) {
            put(there, deviceId, Place.DOER);
        }
        return desk;
    }

    /** Changes doer and second over. */
    void swap(Act act, long deviceId) {
        if (!log.opens(act, "swap-places", "device:" + deviceId, Chains.SHOP)) {
            return;
        }
        List<SignOnRow> open = stillOpen(act, deviceId);
        if (open.size() != 2) {
            throw Refusal.state(
                    "The places were not changed over.",
                    "Only one person is signed on here.",
                    "Sign the second person on first.");
        }
        List<SignOnRow> turned = new ArrayList<>();
        for (SignOnRow row : open) {
            row.end(act.at(), End.SWAPPED);
            Place other = row.place() == Place.DOER ? Place.SECOND : Place.DOER;
            turned.add(new SignOnRow(deviceId, row.personId(), other, row.since(), act.at()));
        }
        signOns.flush();
        signOns.saveAll(turned);
        log.event(Chains.SHOP, "places-swapped", Map.of("device", deviceId));
    }

    /** Signs off one place, or both if none is named. A second who stays becomes the doer. */
    void leave(Act act, long deviceId, @Nullable Place place) {
        if (!log.opens(act, "sign-off", "device:" + deviceId, Chains.SHOP)) {
            return;
        }
        List<SignOnRow> open = stillOpen(act, deviceId);
        List<Long> gone = new ArrayList<>();
        Optional<SignOnRow> stays = Optional.empty();
        for (SignOnRow row : open) {
            if (place == null || row.place() == place) {
                row.end(act.at(), End.SIGNED_OFF);
                gone.add(row.personId());
            } else {
                stays = Optional.of(row);
            }
        }
        signOns.flush();
        stays.filter(row -> row.place() == Place.SECOND).ifPresent(row -> {
            row.end(act.at(), End.SWAPPED);
            signOns.flush();
            signOns.save(new SignOnRow(deviceId, row.personId(), Place.DOER, row.since(), act.at()));
        });
        if (stays.isEmpty()) {
            lastSeen.forget(deviceId);
        }
        log.event(Chains.SHOP, "signed-off", Map.of("device", deviceId, "persons", gone));
    }

    /** Ends every sign-on of somebody who leaves the shop; part of that act. */
    void endAllOf(long personId, Instant at) {
        signOns.openOf(personId).forEach(row -> row.end(at, End.LEFT));
    }

    private void put(Act act, long deviceId, Place place) {
        List<SignOnRow> open = stillOpen(act, deviceId);
        boolean doer = open.stream().anyMatch(row -> row.place() == Place.DOER);
        if (place == Place.SECOND && !doer) {
            throw Refusal.state(
                    "The second was not signed on.",
                    "Nobody is signed on here to do the work.",
                    "Sign on as the one who works first.");
        }
        for (SignOnRow row : open) {
            if (row.place() == place) {
                row.end(act.at(), End.CHANGED);
            } else if (row.personId() == act.by()) {
                throw Refusal.person(
                        "Not signed on.",
                        initials(act.by()) + " is signed on here already as the "
                                + (row.place() == Place.DOER ? "one who works" : "second")
                                + ", and the second is always another person.",
                        "Let another person sign on, or change the places over.");
            }
        }
        signOns.flush();
        signOns.save(new SignOnRow(deviceId, act.by(), place, act.at(), act.at()));
        log.event(Chains.SHOP, "signed-on", Map.of("device", deviceId, "place", place.name()));
    }

    /** Sign-ons that have not locked; those that have are ended with the time they locked at. */
    private List<SignOnRow> stillOpen(Act act, long deviceId) {
        List<SignOnRow> open = signOns.open(deviceId);
        Optional<Instant> locksAt = open.stream()
                .filter(row -> row.place() == Place.DOER)
                .findFirst()
                .map(row -> doorkeeper.locksAt(deviceId, tablet(deviceId), row.since(), row.lastSeen()));
        if (locksAt.isPresent() && act.at().isBefore(locksAt.get())) {
            return open;
        }
        open.forEach(row -> row.end(locksAt.orElse(act.at()), End.LOCKED));
        return List.of();
    }

    private boolean tablet(long deviceId) {
        return devices.byId(deviceId).map(Device::tablet).orElse(true);
    }

    private String initials(long personId) {
        return people.findById(personId).map(PersonRow::initials).orElse("This person");
    }
}
