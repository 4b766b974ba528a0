package org.plumbrow.calc.outage.ranking;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.outage.WindowSearch;

/** Every rule of one question, laid out once, in the order in which their factors are read. */
final class RuleBook {

    final SiteClock clock;
    final List<Rule> rules = new ArrayList<>();
    final UnitsRule crews;
    final LoadTable loads;
    final Deadlines deadlines;

    private final SiteSpans site;
    private final HourQuestion question;
    private final int planned;

    RuleBook(HourQuestion question) {
        this.question = question;
        site = SiteSpans.of(question);
        clock = site.clock();
        planned = question.work().planned();
        crews = UnitsRule.crews(site, question.hands(), planned);
        loads = new LoadTable(site, question.loads());
        SlotRule slots = SlotRule.of(
                FactorKind.SLOT, question.utility().slots(), clock, planned, WindowSearch.LEAST_MARGIN_MINUTES);
        DayRules.ByDaylight daylight = DayRules.ByDaylight.of(site, question);
        List<WeatherRules.OfHours> weather = WeatherRules.of(site, question);
        deadlines = new Deadlines(site, question, loads, slots, daylight, weather.subList(0, 3));
        utility(slots);
        branch(daylight);
        customer();
        animals();
        loads();
        rules.add(new Deadlines.Reversal(deadlines, question.wayBack().minutes()));
        rules.addAll(weather);
        question.promise().ifPresent(promise -> rules.add(DayRules.promise(site, question, promise)));
    }

    private void utility(SlotRule slots) {
        rules.add(DayRules.notice(site, question));
        rules.add(new SpanRules.Free(
                FactorKind.UTILITY_DAY, site.closed(question.utility().notice().calendar()), planned));
        rules.add(slots);
    }

    private void branch(DayRules.ByDaylight daylight) {
        rules.add(new SpanRules.Free(FactorKind.BRANCH_DAY, site.closed(question.branch()), planned));
        rules.add(DayRules.workDone(site, question));
        rules.add(DayRules.permits(site, question));
        rules.add(crews);
        rules.add(UnitsRule.people(site, question.hands(), planned));
        rules.addAll(UnitsRule.machines(site, question.hands(), planned));
        rules.add(daylight);
    }

    private void customer() {
        CustomerDays customer = question.customer();
        rules.add(new SpanRules.Free(FactorKind.BLACKOUT, site.blackouts(customer.blackouts()), planned));
        rules.add(new SpanRules.Free(FactorKind.BUSINESS_HOURS, site.blackouts(customer.business()), planned));
        if (!customer.present().isEmpty()) {
            rules.add(SlotRule.of(FactorKind.CUSTOMER_THERE, customer.present(), clock, planned, 0));
        }
        if (customer.medicalEquipment()) {
            rules.add(DayRules.medical(site, customer));
        }
    }

    private void animals() {
        AnimalDays animals = question.animals();
        if (!animals.flockEvents().isEmpty()) {
            rules.add(new SpanRules.Ahead(
                    FactorKind.FLOCK,
                    site.events(animals.flockEvents()),
                    planned,
                    AnimalDays.FREE_BEFORE_EVENT_MINUTES));
        }
        if (!animals.feeding().isEmpty()) {
            rules.add(new SpanRules.Free(FactorKind.FEEDING, site.daily(animals.feeding()), planned));
        }
        question.milk().ifPresent(milk -> {
            Spans milkings = site.daily(milk.milkings());
            rules.add(new SpanRules.Behind(FactorKind.AFTER_MILKING, milkings, MilkDay.FREE_MINUTES));
            rules.add(new SpanRules.Ahead(FactorKind.BEFORE_MILKING, milkings, planned, MilkDay.FREE_MINUTES));
            rules.add(new SpanRules.Tank(milk, milkings));
        });
    }

    private void loads() {
        if (loads.isEmpty()) {
            return;
        }
        var stand = new LoadRules.Stand(loads, planned, question.generator().isPresent());
        rules.add(stand);
        question.generator().ifPresent(generator -> rules.addAll(LoadRules.ofGenerator(stand, generator, clock)));
    }

    List<Factor> judge(int start) {
        List<Factor> factors = new ArrayList<>(rules.size());
        for (Rule rule : rules) {
            factors.add(rule.judge(start));
        }
        return factors;
    }

    /** The last start up to which no rule is broken, on the same day. */
    int latestStart(int start) {
        int until = SiteClock.endOfDay(start) - 1;
        for (Rule rule : rules) {
            until = Math.min(until, rule.keepsUntil(start));
        }
        return until;
    }
}
