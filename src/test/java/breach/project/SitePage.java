package breach.project;

import org.springframework.stereotype.Controller;

/** A controller that everybody may call. */
@Controller
public class SitePage {}
