package org.plumbrow.notice;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.plumbrow.database.BackgroundTasks;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.Visitor;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Where everything is put that is to leave the house. A notice is part of the change it tells of, or there is none. */
@Service
public class Outbox {

    private final Notices notices;
    private final Postman postman;
    private final BackgroundTasks tasks;
    private final Access access;
    private final Clock clock;

    Outbox(Notices notices, Postman postman, BackgroundTasks tasks, Access access, Clock clock) {
        this.notices = notices;
        this.postman = postman;
        this.tasks = tasks;
        this.access = access;
        this.clock = clock;
    }

    /** Whether a mail server is set; without one notices wait to be copied. */
    public boolean canSend() {
        return postman.canSend();
    }

    /**
     * Writes the notice down in the caller's transaction; it leaves after the commit. Answers go to the person who is
     * asking, where somebody is. A notice of the firm (no branch) needs the scope {@code BranchWall.everywhere}.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public UUID post(NewNotice notice) {
        UUID id = Ids.next();
        NewNotice.Recipient answersTo = access.present().map(Outbox::recipient).orElse(NewNotice.NOBODY);
        notices.add(id, notice, answersTo, clock.instant());
        if (postman.canSend() && !notice.to().address().isBlank()) {
            tasks.soon(SendNotices.ONE.instance(id.toString()).build());
        }
        return id;
    }

    private static NewNotice.Recipient recipient(Visitor visitor) {
        return new NewNotice.Recipient(visitor.name(), visitor.email());
    }

    /** Withdraws what still waits about this: the event it tells of is overtaken. @return how many there were */
    @Transactional(propagation = Propagation.MANDATORY)
    public int withdraw(String about) {
        return notices.withdraw(about, access.present().map(Visitor::name).orElse("Plumbrow"), clock.instant());
    }

    /** Takes the text out of what was sent about this: the secret in it was used, or holds no more. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void blank(String about) {
        notices.blank(about, clock.instant());
    }

    /** What was written to anybody about a project, newest first; the caller has asked who may see it. */
    @Transactional(readOnly = true)
    public List<NoticeLine> ofProject(UUID projectId) {
        return notices.ofProject(projectId);
    }
}
