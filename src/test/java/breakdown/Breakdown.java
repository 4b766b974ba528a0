package breakdown;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Two pages that break, to see what a person is shown then. Outside the program's packages: only who asks for it has it. */
@Controller
public class Breakdown {

    @GetMapping("/breakdown/work")
    public String atWork() {
        throw new IllegalStateException("on purpose");
    }

    /** The page asks for a run that is not in the model. */
    @GetMapping("/breakdown/page")
    public String whileThePageIsWritten() {
        return "web/run";
    }
}
