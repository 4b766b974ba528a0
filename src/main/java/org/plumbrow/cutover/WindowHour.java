package org.plumbrow.cutover;

import java.time.LocalDateTime;
import java.util.List;
import org.plumbrow.calc.outage.ranking.Factor;
import org.plumbrow.calc.outage.ranking.HourQuestion;
import org.plumbrow.calc.outage.ranking.HourRanking;
import org.plumbrow.cutover.ridethrough.OnSite;
import org.plumbrow.cutover.ridethrough.SiteWeathers;
import org.plumbrow.project.ProjectFacts;
import org.springframework.stereotype.Component;

/** A window's own hour, judged as the ranked page judges any hour; also when its day has gone by. */
@Component
class WindowHour {

    private final WindowFinder finder;
    private final HourQuestions questions;
    private final SiteWeathers weathers;

    WindowHour(WindowFinder finder, HourQuestions questions, SiteWeathers weathers) {
        this.finder = finder;
        this.questions = questions;
        this.weathers = weathers;
    }

    List<Factor> factors(ProjectFacts project, OutageFacts window, OnSite site) {
        return factors(project, window, site, finder.asking(project).planning(window.outageMinutes(), window.crewId()));
    }

    /** @param asking for whoever needs it, too: planned for this window */
    List<Factor> factors(ProjectFacts project, OutageFacts window, OnSite site, WindowFinder.Asking asking) {
        LocalDateTime start = window.day().atTime(window.start());
        WindowFinder.Asking then = asking.asOf(window.day());
        HourQuestion question = questions.of(
                project,
                then,
                then.question().orElseThrow(),
                site,
                weathers.of(project.id(), asking.branch().zone()),
                start);
        return HourRanking.opened(question, start).factors();
    }
}
