package org.trammel.shop.materials;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Finds the frame a piece goes to, with what decides whether it may. */
@Component
class FramePlaces {

    private final Travellers travellers;

    FramePlaces(Travellers travellers) {
        this.travellers = travellers;
    }

    /**
     * A place in the frame of a serial as it was typed.
     *
     * @param operation operation it is used at; null for the one at hand
     */
    Destination find(String typed, String position, @Nullable String operation) {
        SerialNumber serial = read(typed);
        FrameSheet.Head head = travellers.inForce(serial.frame().stored(), serial.part() == null ? "" : serial.part());
        if (!head.state().open()) {
            throw Refusal.state(
                    "The lot was not issued.",
                    head.mark() + " is " + head.state().word() + ".",
                    "Look at the serial again; nothing more goes into this frame.");
        }
        String at = operation == null || operation.isBlank() ? head.currentCode() : operation.strip();
        return new Destination(
                head.serial(), head.part(), head.metal(), Joins.as(head.kind()), at == null ? "" : at, position);
    }

    /** How the frame of a serial is joined; null if there is no such frame, as for a station's check. */
    @Nullable
    String processOf(String serial) {
        return travellers.heads(serial).stream()
                .map(head -> Joins.as(head.kind()))
                .reduce((first, last) -> last)
                .orElse(null);
    }

    static SerialNumber read(String typed) {
        SerialNumber.Result read = SerialNumber.read(typed);
        if (read instanceof SerialNumber.Result.Whole whole) {
            return whole.serial();
        }
        String why = read instanceof SerialNumber.Result.WrongCheck wrong
                ? wrong.reason()
                : read instanceof SerialNumber.Result.Unreadable unreadable
                        ? unreadable.reason()
                        : "The mark alone may belong to frames of several years.";
        throw Refusal.input("serial", "No frame was opened.", why, "Scan the tag, or type the whole serial.");
    }
}
