package housewright.web.page;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is around every page.
 *
 * @param title of the browser's window
 * @param theme {@code light}, {@code dim}, or {@code auto} for the system's
 * @param assets where stylesheets and scripts are found
 * @param token that every form sends along
 * @param person who looks; null where nobody is known
 * @param job the project; null on pages that belong to none
 * @param rail the pages, in the order of the job
 * @param notice what was just done
 * @param modules scripts of this page beside those of every page
 * @param typed what was typed into a form that was refused, by field, with the form's address under {@code form}
 */
public record Frame(
        String title,
        String theme,
        String assets,
        String token,
        @Nullable Who person,
        @Nullable Job job,
        List<Group> rail,
        @Nullable Notice notice,
        String path,
        List<String> modules,
        Map<String, String> typed) {
    public Frame {
        typed = Map.copyOf(typed);
        rail = List.copyOf(rail);
        modules = List.copyOf(modules);
    }

    /** What was typed into a field of a form that was refused; null where this one was not. */
    public @Nullable String was(String form, String field) {
        return form.equals(typed.get("form")) ? typed.getOrDefault(field, "") : null;
    }

    /** As {@link #was(String, String)}, or else what stands there anyway. */
    public String was(String form, String field, String otherwise) {
        String was = was(form, field);
        return was == null ? otherwise : was;
    }

    /**
     * @param role as a word
     * @param lead may do everything
     * @param site may work on site
     */
    public record Who(String name, String role, boolean lead, boolean site) {}

    /**
     * @param href where its pages begin
     * @param revision that the page shows
     * @param undo what the person's undo would take back; null where there is nothing
     * @param redo what it would do again
     */
    public record Job(
            String name,
            String href,
            long revision,
            @Nullable String undo,
            @Nullable String redo) {}

    /** Pages that belong together. */
    public record Group(List<Entry> entries) {
        public Group {
            entries = List.copyOf(entries);
        }
    }

    /**
     * @param here the page shown is this one, or belongs to it
     * @param count what waits there, such as "3"; empty where nothing does
     */
    public record Entry(String label, String href, boolean here, String count) {}

    /** @param undo where its Undo goes; null where nothing can be taken back */
    public record Notice(
            String words, boolean trouble, @Nullable String undo) {}
}
