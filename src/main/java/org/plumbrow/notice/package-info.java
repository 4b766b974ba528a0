/**
 * Notice: the outbox, and how anything leaves the house.
 * <p>Start at {@link org.plumbrow.notice.Outbox}: a notice is a row written in the transaction of the change it tells
 * of, and sent afterwards by a background task. Without a mail server it waits and can be read and copied.
 * Rules: one notice per event; the HTML part is made from the text, so that both say the same; five tries in 24 hours;
 * mails that let somebody sign in are seen by the firm's owner only and lose their text once used.
 * Tells others: {@link org.plumbrow.notice.NoticeLeft}, {@link org.plumbrow.notice.NoticeNotSent}. Never decides who is told what.
 */
@NullMarked
@ApplicationModule(
        displayName = "Notice",
        allowedDependencies = {"database", "web", "calc"})
package org.plumbrow.notice;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
