package org.trammel.shop.load;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.trammel.shop.outside.WrittenFrame;

/**
 * What a frame's ticks left behind, with ids, times and seals taken out: the same for two frames that were worked on
 * alike, whoever wrote the rows. Versions count the updates of a row, so a row updated more often would be seen.
 */
final class SameRows {

    private static final String[] QUESTIONS = {
        "select state, current_code, current_station, version, finished_at from traveller where id = ?",
        "select code, state, started_at, finished_at, version from operation where traveller_id = ? order by position",
        """
        select o.code, s.position, s.ticked, s.ticked_at, s.version from step s
        join operation o on o.id = s.operation_id where o.traveller_id = ? order by o.position, s.position""",
        """
        select o.code, s.position, t.untick, t.at, t.device_at, t.lot, t.reason from tick t
        join step s on s.id = t.step_id join operation o on o.id = s.operation_id
        where o.traveller_id = ? order by o.position, s.position""",
        """
        select e.position, e.kind, e.place, e.payload from log_entry e
        join traveller t on e.chain = 'frame:' || t.serial where t.id = ? order by e.position""",
        """
        select h.position from chain_head h
        join traveller t on h.chain = 'frame:' || t.serial where t.id = ?"""
    };

    private SameRows() {}

    static List<String> of(Connection connection, WrittenFrame frame) throws SQLException {
        List<String> found = new ArrayList<>();
        for (String question : QUESTIONS) {
            try (PreparedStatement asked = connection.prepareStatement(question)) {
                asked.setLong(1, frame.travellerId());
                try (ResultSet row = asked.executeQuery()) {
                    while (row.next()) {
                        found.add(alike(row));
                    }
                }
            }
        }
        return found;
    }

    private static String alike(ResultSet row) throws SQLException {
        StringBuilder line = new StringBuilder();
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
            String name = row.getMetaData().getColumnLabel(i);
            String value = String.valueOf(row.getString(i));
            if (name.endsWith("at") && !value.equals("null")) {
                value = "a time";
            } else if (name.equals("payload")) {
                value = value.replaceAll("\"act\":\"[^\"]*\",\"at\":\"[^\"]*\"", "\"act and time\"")
                        .replaceAll("\"frame:[^\"]*\"", "\"the frame\"")
                        .replaceAll("\"(by|device|operation|step)\":\\d+", "\"$1\":0")
                        .replaceAll("\"(order|subject)\":\"[^\"]*\"", "\"$1\":\"\"");
            }
            line.append(name).append('=').append(value).append(' ');
        }
        return line.toString();
    }
}
