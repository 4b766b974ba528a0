package org.plumbrow.calc.finance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The size of a system: the whole modules, in strings that can be made, nearest the target that no limit forbids (of two
 * equally near the larger), with its neighbours and what binds it.
 *
 * @param chosen the answer; no module when there is no use or every size is forbidden
 * @param smaller the next smaller that strings allow; empty below the smallest
 * @param larger the next larger that strings allow, forbidden or not
 * @param binding the limit that keeps it from the target
 * @param why what decided, as a sentence
 */
public record SystemSize(
        SizeQuestion question,
        SizeOption chosen,
        Optional<SizeOption> smaller,
        Optional<SizeOption> larger,
        Optional<SizeLimit> binding,
        String why) {

    private static final int MOST_MODULES = 1_000_000;

    public static SystemSize of(SizeQuestion question) {
        Search search = new Search(question);
        SizeOption nearest = search.nearest(MOST_MODULES);
        SizeOption chosen = nearest.forbiddenBy().isEmpty() ? nearest : search.nearest(search.mostAllowed());
        return new SystemSize(
                question,
                chosen,
                search.below(chosen.modules()).map(search::option),
                search.above(chosen.modules()).map(search::option),
                nearest.forbiddenBy(),
                search.why(chosen, nearest));
    }

    /** Looks for module counts that strings can make. */
    private record Search(SizeQuestion question) {

        SizeOption option(int modules) {
            double kwDc = modules * question.moduleW() / 1000;
            double kwh = kwDc * question.kwhPerKw();
            Optional<Double> offset = question.useKwh() > 0 ? Optional.of(kwh / question.useKwh()) : Optional.empty();
            SizeOption free = new SizeOption(
                    modules,
                    question.stringing().lengths(modules).orElse(List.of()),
                    kwDc,
                    kwDc / question.dcToAc(),
                    kwh,
                    offset,
                    Optional.empty());
            return free.forbidden(question.limits().stream()
                    .filter(limit -> limit.forbids(free))
                    .findFirst());
        }

        SizeOption nearest(int most) {
            double exact = Math.min(question.exactModules(), most);
            return Stream.of(below((int) Math.floor(exact) + 1), above((int) Math.ceil(exact) - 1))
                    .flatMap(Optional::stream)
                    .filter(modules -> modules <= most)
                    .min(Comparator.<Integer>comparingDouble(modules -> Math.abs(modules - question.exactModules()))
                            .thenComparing(Comparator.reverseOrder()))
                    .map(this::option)
                    .orElseGet(() -> option(0));
        }

        /** Largest count below this one that strings make; 0 is one of them. */
        Optional<Integer> below(int modules) {
            for (int count = Math.min(modules, MOST_MODULES) - 1; count >= 0; count--) {
                if (question.stringing().fits(count)) {
                    return Optional.of(count);
                }
            }
            return Optional.empty();
        }

        Optional<Integer> above(int modules) {
            for (int count = modules + 1; count <= MOST_MODULES; count++) {
                if (question.stringing().fits(count)) {
                    return Optional.of(count);
                }
            }
            return Optional.empty();
        }

        /** Every limit grows with the count, so the largest that is allowed is found by halving. */
        int mostAllowed() {
            int allowed = 0;
            int forbidden = MOST_MODULES;
            while (forbidden - allowed > 1) {
                int middle = (allowed + forbidden) / 2;
                if (option(middle).forbiddenBy().isEmpty()) {
                    allowed = middle;
                } else {
                    forbidden = middle;
                }
            }
            return allowed;
        }

        String why(SizeOption chosen, SizeOption nearest) {
            if (question.useKwh() == 0) {
                return "There is no use to cover.";
            }
            if (nearest.forbiddenBy().isPresent()) {
                return "%s.".formatted(nearest.forbiddenBy().get().words());
            }
            if (Math.abs(chosen.modules() - question.exactModules()) > 0.5 + 1e-9) {
                return "%s make no number nearer to %.1f %% of the use."
                        .formatted(question.stringing().words(), 100 * question.targetOffset());
            }
            return "The whole number of modules nearest to %.1f %% of the use."
                    .formatted(100 * question.targetOffset());
        }
    }
}
