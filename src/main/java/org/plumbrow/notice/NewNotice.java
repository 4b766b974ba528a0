package org.plumbrow.notice;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A notice to be sent. First line of the text: the fact again; then what to do; then why they get this. Lines of the
 * text that are a web address become links in the HTML part.
 *
 * @param branchId null for a notice of the firm as a whole; such are {@link NoticeKind#SIGN_IN}
 * @param about what it is about, to find it again: "reset:…", "outage:…"; empty if nobody will
 * @param to name and address; an empty address means that a person passes it on
 * @param shortText the same in at most 160 characters, for a text message; empty if there is none
 */
public record NewNotice(
        NoticeKind kind,
        @Nullable UUID branchId,
        @Nullable UUID projectId,
        String about,
        Recipient to,
        String subject,
        String text,
        String shortText,
        @Nullable CalendarPart calendar) {

    static final Recipient NOBODY = new Recipient("", "");
    private static final int SHORT_TEXT_MOST = 160;

    public NewNotice {
        if (kind != NoticeKind.SIGN_IN && branchId == null) {
            throw new IllegalArgumentException("a notice of kind " + kind + " belongs to a branch");
        }
        if (shortText.length() > SHORT_TEXT_MOST) {
            throw new IllegalArgumentException("the short text has " + shortText.length() + " characters, at most 160");
        }
    }

    /** Who gets it. */
    public record Recipient(String name, String address) {}

    /**
     * A calendar entry that travels with the notice (RFC 5545).
     *
     * @param method REQUEST, or CANCEL for an entry that no longer holds
     */
    public record CalendarPart(String fileName, String method, String ics) {}

    /** To somebody outside or inside, about one project. */
    public static NewNotice ofProject(
            NoticeKind kind, UUID branchId, UUID projectId, Recipient to, String subject, String text) {
        return new NewNotice(kind, branchId, projectId, "", to, subject, text, "", null);
    }

    /** To somebody of the branch. */
    public static NewNotice ofBranch(UUID branchId, Recipient to, String subject, String text) {
        return new NewNotice(NoticeKind.STAFF, branchId, null, "", to, subject, text, "", null);
    }

    /** Lets somebody sign in; the branch only if it is an invitation to one. */
    public static NewNotice toSignIn(@Nullable UUID branchId, String about, Recipient to, String subject, String text) {
        return new NewNotice(NoticeKind.SIGN_IN, branchId, null, about, to, subject, text, "", null);
    }

    public NewNotice about(String what) {
        return new NewNotice(kind, branchId, projectId, what, to, subject, text, shortText, calendar);
    }

    public NewNotice shortly(String inAtMost160) {
        return new NewNotice(kind, branchId, projectId, about, to, subject, text, inAtMost160, calendar);
    }

    public NewNotice with(CalendarPart entry) {
        return new NewNotice(kind, branchId, projectId, about, to, subject, text, shortText, entry);
    }
}
