package org.plumbrow.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.NewSignature;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.AskedItem;
import org.plumbrow.project.gate.GateAnswers;
import org.plumbrow.project.gate.GatePassing;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.project.gate.Given;
import org.plumbrow.project.gate.ItemAnswer;
import org.plumbrow.project.gate.ItemView;
import org.plumbrow.web.Actor;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** Walks each project along the road that people walk: evidence first, then the answers, then the gate. */
@Component
@WithDemo
class DemoRoad {

    private final Projects projects;
    private final Gates gates;
    private final GateAnswers answers;
    private final GatePassing passing;
    private final EvidenceStore evidence;
    private final List<DemoChapter> chapters;

    DemoRoad(
            Projects projects,
            Gates gates,
            GateAnswers answers,
            GatePassing passing,
            EvidenceStore evidence,
            List<DemoChapter> chapters) {
        this.projects = projects;
        this.gates = gates;
        this.answers = answers;
        this.passing = passing;
        this.evidence = evidence;
        this.chapters = chapters;
    }

    void walk(Told told, Cast cast, Story story) {
        for (Stage stage : Stage.values()) {
            Optional<Integer> daysAgo = told.row().maybe(stage.name().toLowerCase(Locale.ROOT) + "_days_ago");
            if (daysAgo.isEmpty()) {
                return;
            }
            LocalDate day = story.daysAgo(daysAgo.get());
            chapters.forEach(chapter -> chapter.before(stage, told, cast, story, day));
            Leg leg = new Leg(told, cast, story, stage, day);
            leg.answer(Integer.MAX_VALUE);
            leg.pass();
        }
    }

    /** Of the next gate the first items are in, as on a job that goes on: some six of ten. */
    void beginNext(Told told, Cast cast, Story story) {
        Arrays.stream(Stage.values())
                .filter(stage -> !told.row().has(stage.name().toLowerCase(Locale.ROOT) + "_days_ago"))
                .findFirst()
                .ifPresent(next -> new Leg(told, cast, story, next, story.daysAgo(1)).answer(6));
    }

    /** One gate of one project. */
    private final class Leg {
        private final Told told;
        private final Cast cast;
        private final Story story;
        private final Stage stage;
        private final LocalDate day;
        private final ProjectFacts facts;
        private final Random random;
        private final Map<String, UUID> papers = new HashMap<>();

        Leg(Told told, Cast cast, Story story, Stage stage, LocalDate day) {
            this.told = told;
            this.cast = cast;
            this.story = story;
            this.stage = stage;
            this.day = day;
            this.facts = projects.factsUnchecked(told.id());
            this.random = new Random(told.key().hashCode() * 31L + stage.ordinal());
        }

        /** @param ofTen how many of ten items, from the top of the list */
        void answer(int ofTen) {
            List<ItemView> missing = gates.viewUnchecked(told.id(), stage).missing();
            Map<Actor, List<ItemView>> byWhom = new LinkedHashMap<>();
            for (int i = 0; i < missing.size(); i++) {
                ItemView item = missing.get(i);
                if (i % 10 < ofTen && !item.lacking().isEmpty()) {
                    byWhom.computeIfAbsent(actor(item.asked().duty()), by -> new ArrayList<>())
                            .add(item);
                }
            }
            int step = 0;
            for (Map.Entry<Actor, List<ItemView>> turn : byWhom.entrySet()) {
                step += turn.getValue().size();
                answer(turn.getValue(), turn.getKey(), story.during(day, step));
            }
        }

        /** What one person answers in one go, as with the form that has all open items. */
        private void answer(List<ItemView> items, Actor by, Instant at) {
            StoryClock.at(
                    at,
                    () -> refused(answers.answerUnchecked(
                            told.id(),
                            items.stream().map(item -> answer(item, by)).toList(),
                            by,
                            at)));
        }

        private ItemAnswer answer(ItemView item, Actor by) {
            List<Given> parts = item.lacking().stream()
                    .filter(kind -> kind != AnswerKind.COMPUTED)
                    .flatMap(kind -> parts(item.asked(), kind, by).stream())
                    .toList();
            return new ItemAnswer(item.code(), item.version(), parts);
        }

        void pass() {
            Actor by = actor(Duty.PROJECT_MANAGER);
            Instant at = story.during(day, 60);
            StoryClock.at(at, () -> {
                // What a rule breaks without being about safety, a manager lets go, as on a real job.
                if (passed(by, at).isPresent()) {
                    waive(at);
                    refused(passed(by, at));
                }
            });
        }

        private Optional<Refusal> passed(Actor by, Instant at) {
            return passing.passUnchecked(told.id(), stage, day, by, at);
        }

        private void waive(Instant at) {
            gates.viewUnchecked(told.id(), stage).missing().stream()
                    .filter(item -> !item.asked().safety())
                    .forEach(item -> refused(answers.waiveUnchecked(
                            told.id(),
                            item.code(),
                            item.version(),
                            "Agreed with the customer.",
                            cast.actor("Ines"),
                            at)));
        }

        private List<Given> parts(AskedItem asked, AnswerKind kind, Actor by) {
            return switch (kind) {
                case CONFIRMATION -> List.of(Given.confirm());
                case READING -> readings(asked);
                case PHOTO -> photos(asked, by);
                case DOCUMENT -> List.of(Given.document(document(asked, by)));
                case DATE -> List.of(Given.date(day));
                case SIGNATURE -> List.of(Given.signature(signature(asked, by)));
                case COMPUTED -> List.of();
            };
        }

        private List<Given> readings(AskedItem asked) {
            List<Given> readings = new ArrayList<>();
            for (int n = 1; n <= Math.max(1, asked.least()); n++) {
                if (asked.readsFigures()) {
                    readings.add(Given.reading(within(asked), asked.least() > 1 ? "place " + n : "", ""));
                } else {
                    readings.add(Given.reading(String.join(", ", facts.site().meterNumbers())));
                }
            }
            return readings;
        }

        private BigDecimal within(AskedItem asked) {
            BigDecimal low = asked.low();
            BigDecimal high = asked.high();
            double share = 0.3 + 0.4 * random.nextDouble();
            if (low != null && high != null) {
                BigDecimal width = high.subtract(low);
                return low.add(width.multiply(BigDecimal.valueOf(share)))
                        .setScale(1, RoundingMode.HALF_UP)
                        .min(high)
                        .max(low);
            }
            if (low != null) {
                return low.multiply(BigDecimal.valueOf(2)).max(low);
            }
            return high == null
                    ? BigDecimal.valueOf(12)
                    : high.multiply(BigDecimal.valueOf(share)).setScale(2, RoundingMode.HALF_UP);
        }

        private List<Given> photos(AskedItem asked, Actor by) {
            List<Given> photos = new ArrayList<>();
            for (int n = 1; n <= Math.max(1, asked.least()); n++) {
                photos.add(Given.photo(kept(
                        "photo " + n % 4,
                        new Upload(
                                stage.name().toLowerCase(Locale.ROOT) + "-" + n + ".jpg",
                                DemoPictures.photo(stage.words() + " " + (char) ('A' + n % 4)),
                                asked.words()),
                        by)));
            }
            return photos;
        }

        private UUID document(AskedItem asked, Actor by) {
            return kept(
                    "document " + asked.code(),
                    new Upload(
                            asked.code().replace('.', '-') + ".pdf", DemoPictures.paper(asked.words()), asked.words()),
                    by);
        }

        private UUID kept(String once, Upload upload, Actor by) {
            return papers.computeIfAbsent(once, key -> id(evidence.keep(facts.branchId(), told.id(), upload, by)));
        }

        private UUID signature(AskedItem asked, Actor by) {
            String trade = asked.duty().words();
            return id(evidence.sign(
                    facts.branchId(), told.id(), new NewSignature(by.name(), trade, asked.words(), null), by));
        }

        private Actor actor(Duty duty) {
            return facts.inCharge(duty).map(person -> cast.actor(person.name())).orElse(Actor.PLUMBROW);
        }

        private void refused(Optional<Refusal> no) {
            no.ifPresent(refusal -> {
                throw new IllegalStateException(told.key() + ", gate to " + stage + ": " + refusal.sentence());
            });
        }
    }

    private static UUID id(Keeping keeping) {
        if (keeping instanceof Keeping.Kept kept) {
            return kept.evidence().id();
        }
        throw new IllegalStateException(((Keeping.Refused) keeping).sentence());
    }
}
