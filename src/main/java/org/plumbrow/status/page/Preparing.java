package org.plumbrow.status.page;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.status.page.CustomerView.Named;
import org.springframework.stereotype.Component;

/** What to do before the power goes off, and while it is off, by what is on the site. */
@Component
class Preparing {

    private final CustomerWords words;

    Preparing(CustomerWords words) {
        this.words = words;
    }

    /** Empty when there is nothing to prepare for. */
    String title(Situation now) {
        if (now.isOffNow()) {
            return words.say("status.while.title");
        }
        return now.is(Situation.Kind.AHEAD) ? words.say("status.before.title") : "";
    }

    List<Named> of(Situation now, ProjectFacts project) {
        if (now.isOffNow()) {
            return during(project.site());
        }
        return now.is(Situation.Kind.AHEAD) ? before(project.site()) : List.of();
    }

    private List<Named> before(ProjectFacts.Site site) {
        List<Named> list = new ArrayList<>();
        list.add(named("status.before.health"));
        list.add(named("status.before.evening"));
        for (SiteLoad load : SiteLoad.values()) {
            if (site.has(load)) {
                list.add(named("status.before." + load.name()));
            }
        }
        if (site.generator()) {
            list.add(named("status.before.generator"));
        }
        list.add(named("status.before.machines"));
        list.add(named("status.before.someone"));
        list.add(named("status.before.panel"));
        return list;
    }

    private List<Named> during(ProjectFacts.Site site) {
        List<Named> list = new ArrayList<>();
        list.add(named("status.while.health"));
        for (SiteLoad load : SiteLoad.values()) {
            if (site.has(load)) {
                list.add(named("status.while." + load.name()));
            }
        }
        list.add(named("status.while.motors"));
        list.add(named("status.while.panel"));
        return list;
    }

    private Named named(String key) {
        return new Named(words.say(key + ".lead"), words.say(key + ".what"));
    }
}
