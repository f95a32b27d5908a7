package housewright.web;

import gg.jte.TemplateOutput;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.Utf8ByteOutput;
import housewright.app.Author;
import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.ProjectStore.Revision;
import housewright.app.StoreException;
import housewright.finding.Severity;
import housewright.web.page.Frame;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** One request by somebody who may make it. */
final class Visit {
    private static final int LONGEST_FIELD = 20_000;

    final Context ctx;
    final Session session;
    final Common common;

    /** Writes a page's template. */
    @FunctionalInterface
    interface Template {
        void write(HtmlTemplateOutput output, Frame frame);
    }

    Visit(Context ctx, Session session, Common common) {
        this.ctx = ctx;
        this.session = session;
        this.common = common;
    }

    Author author() {
        return new Author(session.person, session.role);
    }

    /** The project named in the address, with what other processes have kept in it. */
    OpenProject job() throws StoreException {
        String id = ctx.pathParam("project");
        OpenProject job =
                common.projects().find(id).orElseThrow(() -> Refused.notFound("There is no project " + id + " here."));
        job.refresh();
        return job;
    }

    LocalDate today() {
        return LocalDate.ofInstant(common.projects().clock().instant(), common.zone());
    }

    /** This moment where the project is, to the minute. */
    LocalDateTime moment(Now now) {
        ZoneId zone = now.project().about().timeZone();
        return LocalDateTime.ofInstant(common.projects().clock().instant(), zone == null ? common.zone() : zone)
                .truncatedTo(ChronoUnit.MINUTES);
    }

    static String home(OpenProject job) {
        return "/p/" + job.id();
    }

    /** What was typed into a field, without blanks around it; empty where nothing was. */
    String field(String name) {
        String text = ctx.formParam(name);
        if (text == null) {
            return "";
        }
        if (text.length() > LONGEST_FIELD) {
            throw Refused.wrong("What was typed for " + name + " is longer than " + LONGEST_FIELD + " characters.");
        }
        return text.strip();
    }

    /** A field that must hold a whole number, as pages of ours send it. */
    long number(String name) {
        return number(name, field(name));
    }

    static long number(String name, String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            throw Refused.wrong(name + " must be a whole number, and is \"" + text + "\".");
        }
    }

    /** Shows a page of a project. */
    void show(OpenProject job, Now now, Page here, String title, Template template) throws StoreException {
        show(job, now, here, title, List.of(), template);
    }

    /** @param modules scripts of this page */
    void show(OpenProject job, Now now, Page here, String title, List<String> modules, Template template)
            throws StoreException {
        String name = now.project().about().name();
        Frame.Job shown = new Frame.Job(
                name,
                home(job),
                now.revision(),
                says(session.role.mayDoAll() ? job.findToUndo(author()) : Optional.empty()),
                redone(says(session.role.mayDoAll() ? job.findToRedo(author()) : Optional.empty())));
        List<Frame.Group> rail = Page.rail(home(job), here, page -> count(now, page));
        write(frame(title + " · " + name, shown, rail, modules), template);
    }

    /** Shows a page that belongs to no project. */
    void show(String title, Template template) {
        write(frame(title + " · Housewright", null, List.of(), List.of()), template);
    }

    private Frame frame(String title, Frame.@Nullable Job job, List<Frame.Group> rail, List<String> modules) {
        boolean live = ctx.header("X-Housewright-Part") != null;
        Session.Notice notice = live ? null : session.takeNotice();
        return new Frame(
                title,
                Theme.of(ctx),
                common.assets().base(),
                session.token,
                new Frame.Who(
                        session.person, session.role.word(), session.role.mayDoAll(), session.role.mayWorkOnSite()),
                job,
                rail,
                notice == null
                        ? null
                        : new Frame.Notice(
                                notice.words(),
                                notice.trouble(),
                                notice.undo() && job != null ? job.href() + "/undo" : null),
                here(),
                modules,
                Typed.of(this));
    }

    private String here() {
        String query = ctx.queryString();
        return query == null ? ctx.path() : ctx.path() + "?" + query;
    }

    private static String count(Now now, Page page) {
        long count = switch (page) {
            case FINDINGS -> // beside Feeds, which counts its own; and no page waits for mends to be found
                now.study().findingsBeyondFeeds().stream()
                        .filter(finding -> finding.severity() != Severity.NOTE)
                        .count();
            case FEEDS ->
                now.study().proofs().stream().filter(proof -> !proof.proven()).count();
            case QUESTIONS ->
                now.project().questions().values().stream()
                        .filter(question ->
                                question.answer() == null || question.answer().isBlank())
                        .count();
            case OVERVIEW,
                    VENUE,
                    EQUIPMENT,
                    CABLES,
                    PATCH,
                    SIGNAL,
                    RACKS,
                    ORDERS,
                    WORK,
                    PLAN,
                    PEOPLE,
                    CALL,
                    READY,
                    PAPERS,
                    HISTORY -> 0;
        };
        return count == 0 ? "" : Long.toString(count);
    }

    private static @Nullable String says(Optional<Revision> revision) {
        return revision.map(each -> each.what().says()).orElse(null);
    }

    /** What is done again is what was undone, not the undoing. */
    private static @Nullable String redone(@Nullable String says) {
        return says == null ? null : says.replaceFirst("^Undone: ", "");
    }

    private void write(Frame frame, Template template) {
        write(ctx, output -> template.write(output, frame));
    }

    /** What a template writes, as the answer. */
    static void write(Context ctx, Consumer<HtmlTemplateOutput> template) {
        TemplateOutput bytes = new Utf8ByteOutput();
        template.accept(new OwaspHtmlTemplateOutput(bytes));
        ctx.contentType("text/html; charset=utf-8").result(((Utf8ByteOutput) bytes).toByteArray());
    }

    /** Goes on to a page, which says what was done. */
    void goOn(String path, Session.@Nullable Notice notice) {
        if (notice != null) {
            session.say(notice);
        }
        ctx.redirect(path, HttpStatus.SEE_OTHER);
    }

    /** Goes back to the page that sent a form, which must be one of ours; what was refused is typed there still. */
    void goBack(String otherwise, Session.@Nullable Notice notice) {
        String back = field("back");
        boolean ours = back.startsWith("/")
                && !back.startsWith("//")
                && back.indexOf('\\') < 0
                && back.chars().allMatch(c -> c > 0x20 && c < 0x7f);
        String page = ours ? back : otherwise;
        boolean refused = notice != null && notice.trouble() && !notice.undo();
        goOn(refused ? Typed.with(this, ctx.path(), page) : Typed.without(page), notice);
    }

    /** Whether the page is asked for a second time, with the mends that it did not wait for. */
    boolean waitsForMends() {
        return "mends".equals(ctx.header("X-Housewright-Part"));
    }

    /** Says what came of an edit, and goes back to where it was asked for. */
    void settle(OpenProject job, Outcome outcome, String says) {
        goBack(home(job), Said.of(outcome, says));
    }
}
