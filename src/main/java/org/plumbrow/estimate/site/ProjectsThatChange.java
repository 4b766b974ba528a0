package org.plumbrow.estimate.site;

import org.plumbrow.project.ProjectChanged;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Another contract, another estimate: worked out in the change's own transaction where there was one. */
@Component
class ProjectsThatChange {

    private final YieldBook book;
    private final YieldRows rows;

    ProjectsThatChange(YieldBook book, YieldRows rows) {
        this.book = book;
        this.rows = rows;
    }

    @EventListener
    void changed(ProjectChanged event) {
        if (rows.result(event.projectId()).isPresent()) {
            book.refresh(event.projectId());
        }
    }
}
