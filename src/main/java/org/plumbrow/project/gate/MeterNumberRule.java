package org.plumbrow.project.gate;

import java.util.List;
import java.util.stream.Collectors;
import org.plumbrow.project.Stage;
import org.springframework.stereotype.Component;

/**
 * Meter number equals the contract's: each number that the project's site has stands in what was read from the
 * contract's papers. Letters and digits count, blanks and dashes do not. No whole number is said: it is the customer's.
 */
@Component
class MeterNumberRule implements GateRule {

    static final String OF_THE_CONTRACT = "signed.4";
    private static final int SAID = 4;

    private final AnswerRows answers;

    MeterNumberRule(AnswerRows answers) {
        this.answers = answers;
    }

    @Override
    public String item() {
        return "surveyed.3";
    }

    @Override
    public Finding check(GateLook look) {
        AnswerRow contract = answers.of(look.projectId(), List.of(Stage.SIGNED)).get(OF_THE_CONTRACT);
        String read = contract == null
                ? ""
                : contract.parts().stream().map(AnswerPart::text).collect(Collectors.joining(" "));
        return judge(look.project().site().meterNumbers(), read);
    }

    static Finding judge(List<String> onSite, String inTheContract) {
        String papers = letters(inTheContract);
        if (papers.isEmpty()) {
            return new Finding.CannotTell(
                    "No meter number was read from the contract’s papers.", "The gate to signed asks for it.");
        }
        if (onSite.isEmpty()) {
            return new Finding.CannotTell("The site has no meter number yet.", "The surveyor reads it off the meter.");
        }
        List<String> strange = onSite.stream()
                .filter(number -> !papers.contains(letters(number)))
                .map(MeterNumberRule::end)
                .toList();
        return strange.isEmpty() ? same(onSite.size()) : other(strange);
    }

    private static Finding same(int meters) {
        return new Finding.Satisfied(
                meters == 1
                        ? "The site’s meter number is the contract’s."
                        : "All " + meters + " meter numbers of the site are the contract’s.");
    }

    private static Finding other(List<String> strange) {
        return new Finding.Broken(
                "Meter number ending in " + String.join(", ", strange) + " is not in the contract’s papers.",
                "Read the meter again; correct the site’s number, or ask the customer for the right bill.");
    }

    private static String letters(String written) {
        return written.replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(java.util.Locale.ROOT);
    }

    private static String end(String number) {
        String plain = letters(number);
        return plain.substring(Math.max(0, plain.length() - SAID));
    }
}
