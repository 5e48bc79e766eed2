package org.trammel.shop.outside;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/** The tables that a frame leaves rows in, parents before children. */
final class FrameTables {

    final Rows customers;
    final Rows orders;
    final Rows serials;
    final Rows travellers;
    final Rows operations;
    final Rows steps;
    final Rows characteristics;
    final Rows clocks;
    final Rows ticks;
    final Rows signatures;
    final Rows readings;
    final Rows photos;
    final Rows consignments;
    private final List<Rows> all;

    FrameTables(Connection connection) throws SQLException {
        customers = Rows.numbered(connection, "customer", "name, contact, country, version");
        orders = Rows.numbered(
                connection,
                "shop_order",
                "number, customer_id, state, description, metal, kind, category, country, country_rules,"
                        + " front_brake_lever, price_currency, serial, returned_frame, ordered_by, ordered_at,"
                        + " entered_act, began_at, shipped_at, closed_at, version");
        serials = Rows.keyed(connection, "frame_serial", "serial, order_id, given_at");
        travellers = Rows.numbered(
                connection,
                "traveller",
                "serial, part, order_id, order_number, route_revision_id, letter, copy_number, metal, kind, description,"
                        + " state, released_at, finished_at, shipped_at, current_operation_id, current_code,"
                        + " current_station, version");
        operations = Rows.numbered(
                connection,
                "operation",
                "traveller_id, position, code, name, station, point, signers, qualification, together, outside,"
                        + " irreversible, joins, repeat_limit, caution, loop_number, state, started_at, finished_at,"
                        + " version");
        steps = Rows.numbered(
                connection,
                "step",
                "operation_id, position, text, instruction, photo, irreversible, lot_kind, starts_clock, qualification,"
                        + " ticked, ticked_by, ticked_at, version");
        characteristics = Rows.numbered(
                connection,
                "characteristic",
                "operation_id, position, code, name, unit, decimals, nominal, lower_limit, upper_limit, gauge_kind,"
                        + " points, reduction, rule, signers, sided, read_back, second_person, deciding, cold_set_clock,"
                        + " cold_set_attempts, cold_set_amount, triage_tolerances, state, reading_id, version");
        clocks = Rows.numbered(
                connection,
                "frame_clock",
                "traveller_id, code, name, kind, minutes, started_by, gates, state, started_at, ends_at, version");
        ticks = Rows.numbered(connection, "tick", "step_id, operation_id, untick, person_id, device_id, at, act_id");
        signatures = Rows.numbered(
                connection,
                "signature",
                "operation_id, person_id, person_name, signer, meaning, at, device_id, act_id");
        readings = Rows.numbered(
                connection,
                "reading",
                "characteristic_id, operation_id, traveller_id, characteristic_code, raw_values, reading_value, unit, u,"
                        + " gauge_id, gauge_code, gauge_due_on, nominal, lower_limit, upper_limit, rule_asked, rule_used,"
                        + " factor, guard_band, verdict, deciding, confirmed, alike, person_id, device_id, at, act_id");
        photos = Rows.numbered(
                connection, "traveller_photo", "traveller_id, operation_id, step_id, sha256, person_id, at");
        consignments = Rows.numbered(
                connection,
                "consignment",
                "operation_id, recipient, sent_by, sent_at, back_by, back_at, certificate, version");
        all = List.of(
                customers,
                orders,
                serials,
                travellers,
                operations,
                steps,
                characteristics,
                clocks,
                ticks,
                signatures,
                readings,
                photos,
                consignments);
    }

    void send() throws SQLException {
        for (Rows rows : all) {
            rows.send();
        }
    }

    void end() throws SQLException {
        for (Rows rows : all) {
            rows.end();
        }
    }

    long count() {
        return all.stream().mapToLong(Rows::count).sum();
    }
}
