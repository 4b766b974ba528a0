package org.plumbrow.demo;

import java.util.List;
import java.util.UUID;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.project.ProjectCourse;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** What stands at the end of the story: the outages to come, and the jobs that do not go on. */
@Component
@WithDemo
class DemoEpilogue {

    private final ProjectCourse course;
    private final DemoCutovers cutovers;
    private final Access access;

    DemoEpilogue(ProjectCourse course, DemoCutovers cutovers, Access access) {
        this.course = course;
        this.cutovers = cutovers;
        this.access = access;
    }

    /** The day of an outage to come. */
    void agree(Told told, Cast cast, Story story) {
        told.row().maybe("cutover_in_days").ifPresent(days -> cutovers.agree(told, cast, story, story.inDays(days)));
    }

    void stand(List<Told> projects, Cast cast) {
        projects.stream().filter(told -> told.row().has("standing")).forEach(told -> stand(told, cast));
    }

    private void stand(Told told, Cast cast) {
        UUID id = told.id();
        String reason = told.row().text("standing_reason");
        access.as(cast.manager(), () -> {
            long version = course.course(id).version();
            if (told.row().text("standing").equals("ON_HOLD")) {
                course.hold(id, version, reason, null);
            } else {
                course.callOff(id, version, reason);
            }
            return id;
        });
    }
}
