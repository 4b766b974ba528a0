package org.plumbrow.status.page;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.OutageState;
import org.plumbrow.project.Stage;
import org.plumbrow.status.page.CustomerView.Asked;
import org.plumbrow.status.page.CustomerView.Named;
import org.springframework.stereotype.Component;

/** The page's first sentence and what belongs to it: how long, which other day, what was answered. */
@Component
class Headline {

    private final CustomerWords words;

    Headline(CustomerWords words) {
        this.words = words;
    }

    String of(CustomerFacts facts) {
        Situation now = facts.situation();
        return switch (now.kind()) {
            case OFF -> words.say("status.h1.off");
            case OFF_LONG -> words.say("status.h1.offlong");
            case CALLED_OFF -> words.say("status.h1.calledoff");
            case ON_HOLD -> words.say("status.h1.onhold");
            case BACK -> words.say("status.h1.back");
            case REVERSED -> words.say("status.h1.reversed");
            case AHEAD -> ahead(now.outage(), facts.today());
            case LET_GO ->
                words.say("status.h1.letgo", CustomerWords.day(now.outage().day(), facts.today()));
            case STAGE -> stage(facts);
        };
    }

    private String ahead(OutageFacts window, LocalDate today) {
        String hours = words.span(window.start(), window.end());
        if (window.day().equals(today)) {
            return words.say("status.h1.today", hours);
        }
        String day = CustomerWords.day(window.day(), today);
        return window.day().equals(today.plusDays(1))
                ? words.say("status.h1.tomorrow", day, hours)
                : words.say("status.h1.ahead", day, hours);
    }

    private String stage(CustomerFacts facts) {
        Stage reached = facts.project().stage();
        if (reached == null) {
            return words.say("status.h1.new");
        }
        boolean building = reached == Stage.PERMITTED && facts.ahead().building();
        return building ? words.say("status.h1.building") : words.say("status.h1." + reached.name());
    }

    /** How long, until when, on which other day. */
    List<Named> facts(CustomerFacts facts) {
        Situation now = facts.situation();
        return switch (now.kind()) {
            case OFF, OFF_LONG -> off(now.outage(), facts);
            case BACK, REVERSED -> back(now.outage(), facts.zone());
            case AHEAD -> ahead(now.outage(), facts);
            case CALLED_OFF, ON_HOLD, LET_GO, STAGE -> List.of();
        };
    }

    private List<Named> off(OutageFacts window, CustomerFacts facts) {
        ZoneId zone = facts.zone();
        List<Named> named = new ArrayList<>();
        named.add(new Named(
                words.say("status.fact.offsince"), words.time(Objects.requireNonNull(window.powerOffAt()), zone)));
        facts.day().flatMap(day -> Optional.ofNullable(day.expectedBack())).ifPresent(back -> {
            LocalTime soonest = CustomerWords.clock(back.soonest(), zone);
            LocalTime latest = CustomerWords.clock(back.latest(), zone);
            named.add(new Named(
                    words.say("status.fact.expected"),
                    words.say("status.fact.between", words.time(soonest), words.time(latest))));
        });
        happens(facts).ifPresent(named::add);
        return named;
    }

    /** What happens now, as the log of the day has it: never who, never with what. */
    private Optional<Named> happens(CustomerFacts facts) {
        return facts.day()
                .flatMap(HappensNow::of)
                .map(now -> new Named(words.say("status.fact.now"), words.say("status.now." + now.name())));
    }

    private List<Named> back(OutageFacts window, ZoneId zone) {
        LocalTime off = CustomerWords.clock(Objects.requireNonNull(window.powerOffAt()), zone);
        LocalTime on = CustomerWords.clock(Objects.requireNonNull(window.powerOnAt()), zone);
        String lasted = window.actualMinutes().map(words::minutes).orElse("");
        return List.of(new Named(
                words.say("status.fact.wasoff"), words.say("status.fact.lasted", lasted, words.was(off, on))));
    }

    private List<Named> ahead(OutageFacts window, CustomerFacts facts) {
        List<Named> named = new ArrayList<>();
        named.add(new Named(
                words.say("status.fact.planfor"),
                words.say(
                        "status.fact.minutes",
                        words.minutes(window.outageMinutes()),
                        words.minutes(window.planForMinutes()))));
        OutageFacts.RainDate rain = window.rainDate();
        if (rain != null) {
            named.add(new Named(
                    words.say("status.fact.rain"),
                    words.say(
                            "status.fact.dayandtime",
                            CustomerWords.day(rain.day(), facts.today()),
                            words.time(rain.start()))));
        }
        happens(facts).ifPresent(named::add);
        return named;
    }

    /** Sentences under it. */
    List<String> said(CustomerFacts facts, List<String> next) {
        Situation now = facts.situation();
        return switch (now.kind()) {
            case OFF -> List.of(words.say("status.said.off"));
            case OFF_LONG -> List.of(words.say("status.said.offlong"));
            case CALLED_OFF -> List.of(words.say("status.said.calledoff"));
            case ON_HOLD -> List.of(words.say("status.said.onhold"));
            case BACK -> List.of(words.say("status.said.back"));
            case REVERSED, LET_GO -> List.of(words.say("status.said.newday"));
            case AHEAD -> moved(facts, now.outage());
            case STAGE -> next;
        };
    }

    private List<String> moved(CustomerFacts facts, OutageFacts to) {
        return movedFrom(facts.windows())
                .filter(from -> !from.day().equals(to.day()))
                .map(from -> List.of(words.say("status.said.moved", CustomerWords.day(from.day(), facts.today()))))
                .orElse(List.of());
    }

    /** The day that this customer was told of before the one that holds now. */
    private static Optional<OutageFacts> movedFrom(List<OutageFacts> windows) {
        return windows.stream()
                .filter(window -> window.state() == OutageState.MOVED && window.customerTold() != null)
                .findFirst();
    }

    /** The day that is open to an answer. */
    @Nullable
    Asked asked(CustomerFacts facts) {
        Situation now = facts.situation();
        if (!now.is(Situation.Kind.AHEAD)) {
            return null;
        }
        OutageFacts window = now.outage();
        String day = CustomerWords.day(window.day(), facts.today());
        OutageFacts.Answer answer = window.customerAnswer();
        String answered = "";
        if (answer != null) {
            LocalDate on = LocalDate.ofInstant(answer.at(), facts.zone());
            answered = words.say(
                    answer.agrees() ? "status.answered.works" : "status.answered.not",
                    CustomerWords.day(on, facts.today()));
        }
        return new Asked(window.day(), words.say("status.ask.question", day), answered);
    }
}
