package org.plumbrow.project;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.web.May;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Computes a journal's chain anew and names the first line that is not as it was written. */
@Service
@Transactional(readOnly = true)
public class JournalCheck {

    private final ProjectAccess access;
    private final JdbcClient jdbc;

    JournalCheck(ProjectAccess access, JdbcClient jdbc) {
        this.access = access;
        this.jdbc = jdbc;
    }

    /**
     * What was found.
     *
     * @param sound how many lines from the first on are as they were written
     * @param broken number of the first that is not; empty when all are
     * @param why what is wrong there
     */
    public record Found(int sound, Optional<Integer> broken, String why) {}

    private record Head(int lines, byte[] hash) {}

    /** Every hash from what stands in the lines, and the end of the chain from what was kept of it. */
    public Found check(UUID projectId) {
        access.require(projectId, May.SEE_JOURNAL);
        Walk walk = new Walk();
        try (Stream<Boolean> lines = jdbc
                .sql("select * from project_journal where project_id = ? order by number")
                .param(projectId)
                .query((row, n) -> walk.takes(row))
                .stream()) {
            if (lines.allMatch(sound -> sound)) {
                walk.endsAt(head(projectId));
            }
        }
        return new Found(walk.sound, walk.broken, walk.why);
    }

    private Head head(UUID projectId) {
        return jdbc.sql("select lines, hash from project_journal_head where project_id = ?")
                .param(projectId)
                .query((row, n) -> new Head(row.getInt("lines"), row.getBytes("hash")))
                .single();
    }

    /** Goes along the chain line by line. */
    private static final class Walk {
        private int sound;
        private byte[] hash = ChainLink.beginning();
        private Optional<Integer> broken = Optional.empty();
        private String why = "";

        boolean takes(ResultSet row) throws SQLException {
            if (row.getInt("number") != sound + 1) {
                return breaks("It is not there any more.");
            }
            if (!Arrays.equals(row.getBytes("previous_hash"), hash)) {
                return breaks("It does not follow the line before it.");
            }
            byte[] anew = link(row).hashAfter(hash);
            if (!Arrays.equals(row.getBytes("hash"), anew)) {
                return breaks("What it says now is not what was written.");
            }
            hash = anew;
            sound++;
            return true;
        }

        void endsAt(Head head) {
            if (head.lines != sound || !Arrays.equals(head.hash, hash)) {
                breaks("The end of the journal is not the one that was kept.");
            }
        }

        private boolean breaks(String sentence) {
            broken = Optional.of(sound + 1);
            why = sentence;
            return false;
        }

        private static ChainLink link(ResultSet row) throws SQLException {
            return new ChainLink(
                    row.getObject("project_id", UUID.class),
                    row.getInt("number"),
                    row.getString("kind"),
                    row.getString("sentence"),
                    row.getString("facts"),
                    row.getObject("at", OffsetDateTime.class).toInstant(),
                    row.getObject("by_person_id", UUID.class),
                    row.getString("by_name"));
        }
    }
}
