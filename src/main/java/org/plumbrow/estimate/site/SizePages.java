package org.plumbrow.estimate.site;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.finance.SizeOption;
import org.plumbrow.calc.finance.SizeQuestion;
import org.plumbrow.calc.finance.Stringing;
import org.plumbrow.calc.finance.SystemSize;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/** The size that covers a wanted share of the use: what is asked stands in the address, nothing is stored. */
@Controller
class SizePages {

    private static final Range OFFSET_PERCENT = new Range(5, 200, "% of the use");
    private static final double USUAL_MODULE_W = 550;
    private static final double USUAL_DC_TO_AC = 1.2;

    private final UseReadingDesk desk;
    private final Words words;

    SizePages(UseReadingDesk desk, Words words) {
        this.desk = desk;
        this.words = words;
    }

    /** Everything may be left out; then the contract's modules and strings count. */
    record SizeForm(
            @Nullable String offset,
            @Nullable String moduleW,
            @Nullable String fewest,
            @Nullable String most,
            @Nullable String dcToAc) {

        SizeForm filled(ProjectFacts.Contract contract, @Nullable EstimateFacts estimate) {
            double w = contract.arrays().stream()
                    .filter(array -> array.moduleW() != null)
                    .mapToDouble(array -> array.moduleW().doubleValue())
                    .findFirst()
                    .orElse(USUAL_MODULE_W);
            Integer strings = contract.strings();
            boolean known = strings != null && strings > 0 && contract.modules() >= strings;
            double ratio =
                    estimate == null ? USUAL_DC_TO_AC : Math.round(100 * estimate.kwDc() / estimate.kwAc()) / 100.0;
            return new SizeForm(
                    offset == null ? "100" : offset,
                    moduleW == null ? Entered.written(w) : moduleW,
                    fewest == null ? String.valueOf(known ? contract.modules() / strings : 1) : fewest,
                    most == null ? String.valueOf(known ? -Math.floorDiv(-contract.modules(), strings) : 1) : most,
                    dcToAc == null ? Entered.written(ratio) : dcToAc);
        }
    }

    /** @param name which of the three @param strings "12 of 15", the lengths in words @param forbidden by which limit; empty when allowed */
    record Column(String name, SizeOption option, String strings, String forbidden) {}

    @GetMapping("/projects/{projectId}/use/size")
    String show(
            @PathVariable UUID projectId,
            @ModelAttribute("sizeForm") SizeForm asked,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        UseReadingDesk.SizeBasis basis = desk.size(projectId);
        SizeForm form = asked.filled(basis.project().contract(), basis.estimate());
        SystemSize size = size(form, basis, new Entered(errors));
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        model.addAttribute("sheet", basis.title());
        model.addAttribute("basis", basis);
        model.addAttribute("form", form);
        model.addAttribute("size", size);
        if (size != null) {
            model.addAttribute("columns", columns(size));
            model.addAttribute("modules", words.number(size.chosen().modules(), 0));
            model.addAttribute("kwDc", words.number(size.chosen().kwDc(), 1));
            model.addAttribute(
                    "percent", words.number(100 * size.chosen().offset().orElse(0.0), 1));
        }
        return "estimate/size";
    }

    private static @Nullable SystemSize size(SizeForm form, UseReadingDesk.SizeBasis basis, Entered entered) {
        double offset = entered.required("offset", "the wanted share", form.offset(), OFFSET_PERCENT);
        double moduleW = entered.required("moduleW", "the power of one module", form.moduleW(), SizeQuestion.MODULE);
        int fewest = (int) entered.required("fewest", "the shortest string", form.fewest(), Stringing.LENGTH);
        int most = (int) entered.required("most", "the longest string", form.most(), Stringing.LENGTH);
        double ratio = entered.required("dcToAc", "DC over AC", form.dcToAc(), SizeQuestion.DC_TO_AC);
        if (most < fewest && !entered.errors().hasErrors()) {
            entered.refuse(
                    "most", "The longest string is at least as long as the shortest, %d modules.".formatted(fewest));
        }
        EstimateFacts estimate = basis.estimate();
        Double use = basis.useKwh();
        if (entered.errors().hasErrors() || estimate == null || use == null) {
            return null;
        }
        double kwhPerKw = Math.max(
                SizeQuestion.SPECIFIC_YIELD.least(), Math.min(SizeQuestion.SPECIFIC_YIELD.most(), estimate.kwhPerKw()));
        return SystemSize.of(new SizeQuestion(
                use,
                offset / 100,
                kwhPerKw,
                moduleW,
                new Stringing(fewest, most),
                ratio,
                basis.limits().stream().flatMap(limit -> limit.calc().stream()).toList()));
    }

    private static List<Column> columns(SystemSize size) {
        return java.util.stream.Stream.of(
                        size.smaller().map(option -> column("smaller", option)),
                        java.util.Optional.of(column("chosen", size.chosen())),
                        size.larger().map(option -> column("larger", option)))
                .flatMap(java.util.Optional::stream)
                .toList();
    }

    private static Column column(String name, SizeOption option) {
        String strings = option.strings().stream()
                .collect(Collectors.groupingBy(each -> each, java.util.TreeMap::new, Collectors.counting()))
                .descendingMap()
                .entrySet()
                .stream()
                .map(each -> each.getValue() + " of " + each.getKey())
                .collect(Collectors.joining(", "));
        boolean alone = option.strings().stream().allMatch(each -> each == 1);
        return new Column(
                name,
                option,
                alone ? "–" : strings,
                option.forbiddenBy().map(limit -> limit.words()).orElse(""));
    }
}
