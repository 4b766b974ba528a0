package org.plumbrow.project;

import java.util.List;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;

/**
 * The answer to what a phone has sent.
 *
 * @param said stored, already, refused, conflict or not-theirs; only after the first two may the phone forget it
 * @param version of the thing now
 * @param next address of the page to go on with; empty for none
 * @param asked how many readings of it are asked about now
 * @param theirs what somebody else wrote meanwhile, where it differs
 */
public record PhoneReply(
        String said,
        long version,
        String next,
        int asked,
        List<Refusal> problems,
        String by,
        String at,
        List<Conflict.Row> theirs) {

    private static final String STORED = "stored";
    private static final String ALREADY = "already";
    private static final String REFUSED = "refused";
    private static final String CONFLICT = "conflict";
    private static final String NOT_THEIRS = "not-theirs";

    public static PhoneReply stored(long version, int asked) {
        return new PhoneReply(STORED, version, "", asked, List.of(), "", "", List.of());
    }

    /** The same sending had come before. */
    public static PhoneReply already(long version) {
        return new PhoneReply(ALREADY, version, "", 0, List.of(), "", "", List.of());
    }

    public static PhoneReply refused(List<Refusal> problems) {
        return new PhoneReply(REFUSED, 0, "", 0, problems, "", "", List.of());
    }

    static PhoneReply refused(String sentence) {
        return refused(List.of(Refusal.ofForm(sentence)));
    }

    /** Somebody else wrote it than is signed in now. */
    static PhoneReply notTheirs() {
        return new PhoneReply(NOT_THEIRS, 0, "", 0, List.of(), "", "", List.of());
    }

    /** Somebody else was faster; nothing is stored, and the same sending may come again. */
    public static PhoneReply conflict(long version, String by, String at, List<Conflict.Row> theirs) {
        return new PhoneReply(CONFLICT, version, "", 0, List.of(), by, at, theirs);
    }

    /** Where it was stored, the page to go on with. */
    public ResponseEntity<PhoneReply> leadingTo(String page) {
        return wasTaken()
                ? ResponseEntity.ok(new PhoneReply(said, version, page, asked, problems, by, at, theirs))
                : answer();
    }

    /** Now, for the first time. */
    public boolean hasStored() {
        return said.equals(STORED);
    }

    /** Now or before. */
    public boolean wasTaken() {
        return hasStored() || said.equals(ALREADY);
    }

    public ResponseEntity<PhoneReply> answer() {
        HttpStatus status = switch (said) {
            case REFUSED -> HttpStatus.UNPROCESSABLE_CONTENT;
            case CONFLICT -> HttpStatus.CONFLICT;
            case NOT_THEIRS -> HttpStatus.FORBIDDEN;
            default -> HttpStatus.OK;
        };
        return ResponseEntity.status(status).body(this);
    }
}
