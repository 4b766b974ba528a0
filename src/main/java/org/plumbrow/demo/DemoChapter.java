package org.plumbrow.demo;

import java.time.LocalDate;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.project.Stage;

/** What happens to a project before a gate, beside the answers at it: a window booked, the day of the cutover. */
interface DemoChapter {

    void before(Stage stage, Told told, Cast cast, Story story, LocalDate day);
}
