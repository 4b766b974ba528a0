package org.plumbrow.estimate.guarantee;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.finance.GuaranteeBook;
import org.plumbrow.web.Csv;
import org.plumbrow.web.Entered;
import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What the branch's promises of production may cost, together: one bad year hits all. */
@Controller
class BookPages {

    private static final int ORDER = 50;
    private static final String PAGE = "/production";
    static final Range ONE_IN = new Range(2, 200, "years");
    static final Range CORRELATION = new Range(0, 1, "");

    private final BookReading reading;

    BookPages(BookReading reading) {
        this.reading = reading;
    }

    @Bean
    static Place productionPlace() {
        return Place.inTheRow(ORDER, "estimate.book.place", PAGE, May.SEE_BOOK);
    }

    /** What is asked of the book; an empty field asks the usual. */
    record BookForm(@Nullable String oneIn, @Nullable String correlation) {

        BookForm {
            oneIn = oneIn == null ? Entered.written(BookView.Question.USUAL.oneIn()) : oneIn;
            correlation = correlation == null ? Entered.written(BookView.Question.USUAL.correlation()) : correlation;
        }

        BookView.Question read(Entered typed) {
            Double years = typed.maybe("oneIn", "how rare the year is", oneIn, ONE_IN);
            Double alike = typed.maybe("correlation", "how alike the weather is", correlation, CORRELATION);
            return new BookView.Question(
                    years == null ? BookView.Question.USUAL.oneIn() : years,
                    alike == null ? BookView.Question.USUAL.correlation() : alike);
        }
    }

    @GetMapping(PAGE)
    String show(
            @ModelAttribute("bookForm") BookForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        BookView.Question question = form.read(new Entered(errors));
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        model.addAttribute("view", reading.book(question));
        return "estimate/book";
    }

    @GetMapping(PAGE + "/export")
    ResponseEntity<String> export(@ModelAttribute("bookForm") BookForm form, BindingResult errors) {
        StringBuilder text = new StringBuilder();
        Csv table = Csv.to(
                text,
                "number",
                "project",
                "weather",
                "guarantee_year",
                "expected_kwh",
                "owed_below_kwh",
                "rate_usd_per_kwh",
                "chance_short",
                "expected_usd",
                "bad_year_usd");
        reading.book(form.read(new Entered(errors))).owing().forEach(owing -> table.row(cells(owing)));
        return ResponseEntity.ok().headers(Csv.headers("guarantees.csv")).body(text.toString());
    }

    private static List<String> cells(BookView.Owing owing) {
        BookView.Line line = owing.line();
        GuaranteeBook.Contract contract = line.contract();
        return List.of(
                line.number(),
                line.project(),
                line.weather(),
                Integer.toString(line.year()),
                figure("%.0f", contract.expectedKwh()),
                figure("%.0f", contract.guaranteedKwh()),
                figure("%.4f", contract.ratePerKwh()),
                figure("%.4f", line.risk().chance()),
                figure("%.2f", line.risk().expectedPayoutUsd()),
                figure("%.2f", owing.usd()));
    }

    private static String figure(String format, double value) {
        return String.format(Locale.US, format, value);
    }
}
