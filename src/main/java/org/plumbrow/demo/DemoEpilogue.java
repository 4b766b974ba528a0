package org.plumbrow.demo;

import java.util.List;
import java.util.UUID;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.project.ProjectCourse;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** What stands at the end of the story: the jobs that do not go on. */
@Component
@WithDemo
class DemoEpilogue {

    private final ProjectCourse course;
    private final Access access;

    DemoEpilogue(ProjectCourse course, Access access) {
        this.course = course;
        this.access = access;
    }

    void tell(List<Told> projects, Cast cast, Story story) {
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
