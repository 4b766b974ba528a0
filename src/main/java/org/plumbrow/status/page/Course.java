package org.plumbrow.status.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Stage;
import org.plumbrow.project.Standing;
import org.plumbrow.status.page.CustomerView.Post;
import org.springframework.stereotype.Component;

/** Where the project is among its seven stages, and what happens next. */
@Component
class Course {

    private final CustomerWords words;

    Course(CustomerWords words) {
        this.words = words;
    }

    List<Post> posts(CustomerFacts facts) {
        Stage reached = facts.project().stage();
        boolean goesOn = facts.project().standing() == Standing.OPEN;
        Ahead ahead = facts.ahead();
        List<Post> posts = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            posts.add(
                    stage.isReachedAt(reached)
                            ? driven(stage, facts)
                            : peg(stage, reached, goesOn, ahead, facts.today()));
        }
        return posts;
    }

    private Post driven(Stage stage, CustomerFacts facts) {
        LocalDate day = facts.reached().get(stage);
        String when = day == null ? "" : CustomerWords.shortDay(day, facts.today());
        return new Post(words.say("status.post." + stage.name()), "driven", words.say("status.post.done"), when);
    }

    private Post peg(
            Stage stage,
            @org.jspecify.annotations.Nullable Stage reached,
            boolean goesOn,
            Ahead ahead,
            LocalDate today) {
        boolean next = goesOn && stage.isNextAfter(reached);
        String label = next && stage == Stage.INSTALLED && ahead.building()
                ? "status.post.building"
                : "status.post." + stage.name();
        String when = ahead.day(stage)
                .map(day -> CustomerWords.shortDay(day, today))
                .map(day -> ahead.isFixed(stage) ? day : words.say("status.post.about", day))
                .orElse("");
        return new Post(
                words.say(label), next ? "next" : "", words.say(next ? "status.post.next" : "status.post.ahead"), when);
    }

    /** What happens next, and when, as far as the published plan says. */
    List<String> next(CustomerFacts facts) {
        ProjectFacts project = facts.project();
        if (project.standing() != Standing.OPEN) {
            return List.of();
        }
        Stage reached = project.stage();
        if (reached == null) {
            return List.of(words.say("status.next.new"));
        }
        return switch (reached) {
            case PERMITTED -> building(facts);
            case COMMISSIONED -> List.of(words.say("status.next.COMMISSIONED"));
            default -> waiting(reached, facts);
        };
    }

    private List<String> waiting(Stage reached, CustomerFacts facts) {
        List<String> said = new ArrayList<>();
        said.add(words.say("status.next." + reached.name()));
        Optional<LocalDate> day =
                Stage.after(reached).flatMap(stage -> facts.ahead().day(stage));
        boolean booked = reached == Stage.INSTALLED && facts.situation().is(Situation.Kind.AHEAD);
        if (day.isPresent() && !booked) {
            said.add(words.say("status.when." + reached.name(), CustomerWords.day(day.get(), facts.today())));
        }
        return said;
    }

    private List<String> building(CustomerFacts facts) {
        Ahead ahead = facts.ahead();
        LocalDate today = facts.today();
        List<String> said = new ArrayList<>();
        if (ahead.building()) {
            said.add(words.say("status.next.building"));
        } else {
            said.add(words.say("status.next.PERMITTED"));
            ahead.buildingFrom()
                    .ifPresent(from -> said.add(words.say("status.when.begin", CustomerWords.day(from, today))));
        }
        ahead.day(Stage.INSTALLED)
                .ifPresent(day -> said.add(words.say("status.when.PERMITTED", CustomerWords.day(day, today))));
        return said;
    }
}
