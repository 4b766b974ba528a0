package org.plumbrow.survey;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.Upload;
import org.plumbrow.web.Flash;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The photo list of a survey. */
@Controller
class PhotoPages {

    private static final String LIST = SurveyPages.BACK + "/photos";

    private final SurveyReading reading;
    private final SurveyPhotos photos;

    PhotoPages(SurveyReading reading, SurveyPhotos photos) {
        this.reading = reading;
        this.photos = photos;
    }

    /** What was refused at which item. */
    record Wrong(int item, String field, String sentence, String typed) {
        static final Wrong NOTHING = new Wrong(0, "", "", "");
    }

    @GetMapping("/projects/{projectId}/survey/photos")
    String show(@PathVariable UUID projectId, Model model) {
        return show(projectId, Wrong.NOTHING, model);
    }

    private String show(UUID projectId, Wrong wrong, Model model) {
        SurveyReading.PhotoList list = reading.photoList(projectId);
        model.addAttribute("sheet", list.title());
        model.addAttribute("list", list);
        model.addAttribute("wrong", wrong);
        if (wrong.item > 0) {
            model.addAttribute("formRefused", true);
        }
        return "survey/photos";
    }

    private static PhotoItem item(int number) {
        return PhotoItem.numbered(number).orElseThrow(NotFound::new);
    }

    @PostMapping("/projects/{projectId}/survey/photos/{photoItem}")
    String add(
            @PathVariable UUID projectId,
            @PathVariable int photoItem,
            @RequestParam(required = false) @Nullable MultipartFile photo,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        PhotoItem item = item(photoItem);
        Upload upload = photo == null ? null : Upload.of(photo, item.words());
        Optional<Refusal> refused = photos.add(projectId, item, upload);
        return answer(projectId, item, refused, "", "Photo kept: " + item.words() + ".", model, response, next);
    }

    @PostMapping("/projects/{projectId}/survey/photos/{photoItem}/absent")
    String absent(
            @PathVariable UUID projectId,
            @PathVariable int photoItem,
            @RequestParam(defaultValue = "") String reason,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        PhotoItem item = item(photoItem);
        Optional<Refusal> refused = photos.absent(projectId, item, reason);
        return answer(projectId, item, refused, reason, "Noted: it does not exist here.", model, response, next);
    }

    private String answer(
            UUID projectId,
            PhotoItem item,
            Optional<Refusal> refused,
            String typed,
            String done,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        if (refused.isPresent()) {
            response.setStatus(422);
            Refusal no = refused.get();
            return show(projectId, new Wrong(item.number(), no.field(), no.sentence(), typed), model);
        }
        Flash.done(next, done);
        return LIST;
    }

    @PostMapping("/projects/{projectId}/survey/photos/{photoItem}/needed")
    String needed(@PathVariable UUID projectId, @PathVariable int photoItem, RedirectAttributes next) {
        photos.presentAfterAll(projectId, item(photoItem));
        Flash.done(next, "A photo is needed after all.");
        return LIST;
    }
}
